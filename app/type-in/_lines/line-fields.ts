import { dateInWords } from "@/lib/display/dates";
import { percent } from "@/lib/display/numbers";
import type { LineProposal, UnknownField } from "@/lib/exchange/notebook-lines/proposal";
import type { Certainty, Count, FactKind } from "@/lib/exchange/notebook-lines/reading";
import { numberShown } from "./told-numbers";
import type { ReadLine } from "./typed-line";

/** One thing that a line says, as it stands beside the words: it can be changed, and most can be left out. */
export interface LineField {
  /** names it among the fixes */
  readonly key: string;
  readonly label: string;
  /** null: not said; it can be said here */
  readonly text: string | null;
  readonly certainty: Certainty;
  readonly kind: "year" | "date" | "count" | "amount" | "words" | "lot" | "share" | "shares" | "test" | "kept";
  readonly canDrop: boolean;
}

const labels: Readonly<Record<string, string>> = {
  seedsSown: "seeds sown",
  emerged: "came up",
  plantsStanding: "plants standing",
  roguedBefore: "pulled before pollen",
  roguedAfter: "pulled after pollen",
  roguedUntimed: "pulled, when not said",
  seedParents: "seed parents",
};

/** What a line says, in the order of the year: when, from what, how many, what was kept, what came of it. `nameOf` gives a lot's number. */
export function lineFields(line: ReadLine, nameOf: (lot: string) => string = (lot) => lot): LineField[] {
  const { proposal } = line;
  const growing = proposal.kind === "grow-out" || proposal.kind === "failed";
  const certain = (kind: FactKind): Certainty =>
    line.understood.find((fact) => fact.kind === kind)?.certainty ?? "likely";
  return [
    {
      key: "year",
      label: "year",
      text: proposal.year === null ? null : dateInWords(proposal.year),
      certainty: proposal.yearCertainty ?? "likely",
      kind: "year",
      canDrop: true,
    },
    ...receivedFields(proposal, certain("received")),
    ...proposal.from.map(
      (parent, place): LineField => ({
        key: `from.${place}`,
        label: proposal.kind === "blend" ? "mixed in" : proposal.kind === "split" ? "part of" : "sown from",
        text: parent.lot,
        certainty: parent.assumed ? "doubtful" : "sure",
        kind: "lot",
        canDrop: false,
      }),
    ),
    ...(proposal.from.length > 1 ? proposal.from.map((parent, place) => shareField(parent, place, nameOf)) : []),
    ...(growing ? growingFields(proposal, certain) : []),
    ...stockFields(proposal, certain),
  ];
}

function receivedFields({ received, lots }: LineProposal, certainty: Certainty): LineField[] {
  const founder = lots.find((lot) => lot.kind === "founder" && !lot.assumed);
  return [
    ...(received
      ? [
          {
            key: "received",
            label: `how much from ${received.from}`,
            text: received.amount?.words ?? null,
            certainty,
            kind: "amount" as const,
            canDrop: true,
          },
        ]
      : []),
    ...(founder
      ? [
          {
            key: "lotYear",
            label: "that seed’s harvest",
            text: founder.year === null ? null : dateInWords(founder.year),
            certainty: "sure" as const,
            kind: "date" as const,
            canDrop: true,
          },
        ]
      : []),
  ];
}

function shareField(parent: LineProposal["from"][number], place: number, nameOf: (lot: string) => string): LineField {
  const text = parent.share === null ? null : percent(parent.share);
  return {
    key: `share.${place}`,
    label: `share of ${nameOf(parent.lot)}`,
    text,
    certainty: "sure",
    kind: "share",
    canDrop: true,
  };
}

function growingFields(proposal: LineProposal, certain: (kind: FactKind) => Certainty): LineField[] {
  const rogued = (timing: "before" | "after" | null) =>
    proposal.rogues.find((pass) => pass.timing === timing)?.count ?? null;
  const harvest = proposal.lots.some((lot) => lot.kind === "harvest");
  const count = (key: string, told: Count | null, kind: FactKind, always: boolean): LineField[] =>
    told === null && !always
      ? []
      : [
          {
            key,
            label: labels[key] ?? key,
            text: told === null ? null : numberShown(told),
            certainty: certain(kind),
            kind: "count",
            canDrop: true,
          },
        ];
  const parents =
    proposal.allKept && proposal.seedParents === null
      ? { words: "all", value: null, low: null, high: null, approximate: false }
      : proposal.seedParents;
  const counted = proposal.seedParentsCounted;
  const seedParents = count("seedParents", parents, "seed-parents", harvest).map((field) =>
    counted && counted !== "plants" && field.text !== null
      ? { ...field, text: `${field.text} ${counted}`, certainty: "doubtful" as const }
      : field,
  );
  return [
    ...(proposal.sown === null
      ? []
      : [
          {
            key: "sown",
            label: "sown on",
            text: dateInWords(proposal.sown),
            certainty: certain("sown-on"),
            kind: "date" as const,
            canDrop: true,
          },
        ]),
    ...count("seedsSown", proposal.seedsSown, "seeds-sown", false),
    ...(proposal.sownAmount
      ? [
          {
            key: "sownAmount",
            label: "sown",
            text: proposal.sownAmount.words,
            certainty: certain("sown-amount"),
            kind: "amount" as const,
            canDrop: true,
          },
        ]
      : []),
    ...count("emerged", proposal.emerged, "emerged", false),
    ...count("plantsStanding", proposal.plantsStanding, "plants", true),
    ...count("roguedBefore", rogued("before"), "rogued", harvest && proposal.rogues.length === 0),
    ...count("roguedAfter", rogued("after"), "rogued", false),
    ...(proposal.rogues.some((pass) => pass.timing === null)
      ? count(
          "roguedUntimed",
          rogued(null) ?? { words: "some", value: null, low: null, high: null, approximate: false },
          "rogued",
          true,
        )
      : []),
    ...(proposal.kind === "grow-out"
      ? [
          {
            key: "seedKept",
            label: "seed kept",
            text: harvest ? "yes" : "no",
            certainty: proposal.assumed.some((each) => each.code === "seed-kept")
              ? ("doubtful" as const)
              : ("sure" as const),
            kind: "kept" as const,
            canDrop: false,
          },
        ]
      : []),
    ...(harvest ? seedParents : []),
    ...(harvest
      ? [
          {
            key: "seedShares",
            label: "seed from each",
            text: proposal.seedShares === null ? null : proposal.seedShares === "equal" ? "the same" : "not the same",
            certainty: certain("shares"),
            kind: "shares" as const,
            canDrop: true,
          },
          {
            key: "harvested",
            label: "seed harvested",
            text: proposal.harvested.length > 0 ? proposal.harvested.map((amount) => amount.words).join(" and ") : null,
            certainty: certain(
              proposal.assumed.some((each) => each.code === "amount-taken-as-harvest") ? "amount" : "harvested",
            ),
            kind: "amount" as const,
            canDrop: true,
          },
        ]
      : []),
    ...(proposal.failure === null
      ? []
      : [
          {
            key: "failure",
            label: "no seed",
            text: proposal.failure === "" ? null : proposal.failure,
            certainty: certain("failed"),
            kind: "words" as const,
            canDrop: true,
          },
        ]),
  ];
}

function stockFields(proposal: LineProposal, certain: (kind: FactKind) => Certainty): LineField[] {
  return [
    ...proposal.germination.flatMap((test, place): LineField[] =>
      test.isTest
        ? [
            {
              key: `test.${place}`,
              label: "tested",
              text: test.up && test.of ? `${numberShown(test.up)} of ${numberShown(test.of)}` : test.words,
              certainty: certain("germination"),
              kind: "test",
              canDrop: true,
            },
            ...(test.lot
              ? [
                  {
                    key: `testLot.${place}`,
                    label: "of lot",
                    text: test.lot.lot,
                    certainty: test.lot.assumed ? ("doubtful" as const) : ("sure" as const),
                    kind: "lot" as const,
                    canDrop: false,
                  },
                ]
              : []),
          ]
        : [],
    ),
    ...proposal.given.flatMap((gift, place): LineField[] => [
      {
        key: `given.${place}`,
        label: `given to ${gift.to}`,
        text: gift.amount?.words ?? null,
        certainty: certain("given"),
        kind: "amount",
        canDrop: true,
      },
      ...(gift.lot
        ? [
            {
              key: `givenLot.${place}`,
              label: "of lot",
              text: gift.lot.lot,
              certainty: gift.lot.assumed ? ("doubtful" as const) : ("sure" as const),
              kind: "lot" as const,
              canDrop: false,
            },
          ]
        : []),
    ]),
    ...(proposal.onHand
      ? [
          {
            key: "onHand",
            label: "in the jar",
            text: proposal.onHand.words,
            certainty: certain("on-hand"),
            kind: "amount" as const,
            canDrop: true,
          },
        ]
      : []),
    ...(proposal.discarded.length > 0
      ? [
          {
            key: "discarded",
            label: "thrown away",
            text: proposal.discarded[0]?.words ?? null,
            certainty: certain("discarded"),
            kind: "amount" as const,
            canDrop: true,
          },
        ]
      : []),
  ];
}

const unknownWords: Readonly<Partial<Record<UnknownField, string>>> = {
  seedsSown: "how many seeds were sown",
  foreignPollen: "what else flowered near",
  seedsTested: "how many seeds were tested",
};

/** What the registry would like to know and the line leaves open, beside the fields that stand open already. */
export function leftOpen({ proposal }: ReadLine): string[] {
  return proposal.unknown.flatMap((field) => unknownWords[field] ?? []);
}
