import { type EmptyNoun, EmptyState } from "@/components/empty";
import { ButtonLink } from "@/components/ui";
import type { Role } from "@/lib/access/actor";
import { roleMay } from "@/lib/access/permissions";
import type { ClosedOfRecord, RecordPage } from "@/lib/registry/ownership/offered-here";

interface Told {
  readonly noun: EmptyNoun;
  /** where the record is looked at */
  readonly back: (id: string) => string;
  readonly look: string;
  /** what may be written instead, and where, by who enters records of their own */
  readonly own?: { readonly words: string; readonly ways: (id: string) => readonly (readonly [string, string])[] };
}

const lotOfOwn = ["/lots/new", "Enter seed of your own"] as const;

const told: Readonly<Record<RecordPage, Told>> = {
  "/lots/[id]": {
    noun: "lots",
    back: (id) => `/lots/${id}`,
    look: "Look at the lot",
    own: { words: "Seed in your own hand is a lot of your own.", ways: () => [lotOfOwn] },
  },
  "/grow-outs/[id]": {
    noun: "season",
    back: (id) => `/grow-outs/${id}`,
    look: "Look at the grow-out",
    own: {
      words: "What you grow yourself is a grow-out of your own.",
      ways: () => [["/grow-outs/new", "Plan one of your own"]],
    },
  },
  "/varieties/[id]": {
    noun: "varieties",
    back: (id) => `/varieties/${id}`,
    look: "Look at the variety",
    own: {
      words: "Your own strain, your word as a holder and seed in your own hand you can add.",
      ways: (id) => [
        [`/varieties/${id}/add/strain`, "Add your strain"],
        [`/varieties/${id}/add/word`, "Say what you hold"],
        lotOfOwn,
      ],
    },
  },
  "/tests/[id]": { noun: "tests", back: (id) => `/tests/${id}`, look: "Look at the test" },
  "/sharing/[id]": { noun: "sharing", back: (id) => `/sharing/${id}`, look: "Look at it" },
  "/pictures/[id]": { noun: "search", back: (id) => `/pictures/${id}`, look: "Look at the picture" },
  "/stewards/[id]": { noun: "search", back: () => "/stewards", look: "All stewards" },
  "/field/came-home/[record]": { noun: "season", back: () => "/field/came-home", look: "What came home" },
  "/field/same-plant/[question]": { noun: "season", back: () => "/field/came-home", look: "What came home" },
};

/** What stands in the place of a form that would only be refused: whose the record is, and what may be done. */
export function AnothersRecord({
  closed,
  page,
  id,
  role,
}: {
  closed: ClosedOfRecord;
  page: RecordPage;
  id: string;
  role: Role;
}) {
  const { noun, back, look, own } = told[page];
  const enters = own !== undefined && roleMay(role, "desk");
  return (
    <div className="sheet">
      <h1 className="heard">Not yours to write</h1>
      <EmptyState
        noun={noun}
        action={
          <div className="row">
            <ButtonLink href={back(id)}>{look}</ButtonLink>
            {enters
              ? own.ways(id).map(([href, words]) => (
                  <ButtonLink key={href} href={href} kind="quiet">
                    {words}
                  </ButtonLink>
                ))
              : null}
          </div>
        }
      >
        {notYours(closed)}
        {enters ? ` ${own.words}` : ""}
      </EmptyState>
    </div>
  );
}

/** One sentence: whose it is to write. */
function notYours({ record, whoMay }: Pick<ClosedOfRecord, "record" | "whoMay">): string {
  return `${record.charAt(0).toUpperCase()}${record.slice(1)} is not yours to write: ${whoMay}.`;
}
