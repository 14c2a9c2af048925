import type { Metadata } from "next";
import Link from "next/link";
import { EmptyState } from "@/components/empty";
import { PageHead, Section } from "@/components/frame";
import { Icon } from "@/components/icons/icon";
import { Figure } from "@/components/numbers";
import { DataTable, readTableAddress, type SearchParameters } from "@/components/tables";
import { ButtonLink } from "@/components/ui";
import { counted } from "@/lib/display/plurals";
import { readSharing, type SharingRead } from "@/lib/registry/transfers/read-sharing";
import type { Settings } from "@/lib/schemas/settings";
import { current } from "../_session/current";
import { unitsOf } from "../lots/_words/units-of";
import { ruleWords } from "../season/_words/rule-words";
import { heldColumns, heldRow } from "./_list/held-rows";
import { handOf } from "./_list/transfer-rows";
import { InQuarantine } from "./_parts/in-quarantine";
import { OutOnLoan } from "./_parts/out-on-loan";
import { PromiseLine } from "./_parts/promise-line";
import { Years } from "./_parts/years";

export const metadata: Metadata = { title: "Sharing" };

export default async function Sharing({ searchParams }: { searchParams: Promise<SearchParameters> }) {
  const { db, settings, today } = await current("desk");
  const parameters = await searchParams;
  const read = await readSharing(db, settings, today);
  const { loans, promises, quarantine, held, years, transfers, records } = read;
  const units = unitsOf(settings);
  const takeIn = (
    <ButtonLink href="/sharing/take-in" kind="chief">
      Take seed in
    </ButtonLink>
  );
  if (held.length === 0 && transfers.length === 0) {
    return (
      <div className="sheet">
        <h1 className="heard">Sharing</h1>
        <EmptyState noun="sharing" action={takeIn}>
          Nothing went from hand to hand yet. What stands in one house alone can burn with it: give a part of it away,
          and write down to whom.
        </EmptyState>
      </div>
    );
  }
  return (
    <div className="sheet stack">
      <PageHead
        title="Sharing"
        mark={<Icon name="hand-over" size={32} />}
        figure={<SharingFigure read={read} settings={settings} />}
        actions={takeIn}
      />
      <Section id="loans" title="Out on loan" aside={loans.length > 0 ? counted(loans.length, "loan") : undefined}>
        <OutOnLoan read={read} units={units} />
      </Section>
      <Section
        id="promises"
        title="Promised"
        aside={promises.length > 0 ? counted(promises.length, "promise") : undefined}
      >
        {promises.length === 0 ? <p className="quiet">No promise is open.</p> : null}
        {promises.map(({ promise, transfer, late }) => (
          <PromiseLine
            key={promise.id}
            promise={promise}
            who={handOf(promise.stewardId, transfer?.toWords ?? null, records.names)}
            of={records.varieties.get(promise.varietyId ?? "")?.name ?? null}
            late={late}
            today={today}
            leadsTo="/sharing#promises"
          />
        ))}
      </Section>
      <Section
        id="quarantine"
        title="In quarantine"
        aside={quarantine.length > 0 ? counted(quarantine.length, "lot") : undefined}
      >
        <InQuarantine read={read} />
      </Section>
      <Section
        id="holders"
        title="Who holds what"
        aside={
          <a href="/sharing/holders/csv" download>
            every holder as CSV
          </a>
        }
      >
        <DataTable
          caption="Who holds what, sole copies first"
          noun="variety"
          columns={heldColumns}
          rows={held.map((each) => heldRow(each, records.names))}
          path="/sharing"
          address={readTableAddress(parameters, heldColumns)}
          filterLabel="Find a variety or a holder"
        />
        <p className="quiet">(?): does not count as confirmed.</p>
      </Section>
      <Section
        id="years"
        title="By year"
        aside={
          <a href="/sharing/years/csv" download>
            as CSV, without names
          </a>
        }
      >
        <Years years={years} units={units} />
      </Section>
      <p>
        <Link href="/sharing/given">{counted(transfers.length, "hand-over")} in all</Link>, one by one.
      </p>
      <p className="quiet measure">
        Names stand here for the circle alone. Before seed is sold, posted abroad or given out in packets, look at your
        local rule. <Link href="/stewards">The stewards</Link>
      </p>
    </div>
  );
}

/** The one figure: what is lone, else what is late, else what is out. */
function SharingFigure({ read: { held, loans, promises }, settings }: { read: SharingRead; settings: Settings }) {
  const lone = held.filter((each) => each.places < 2).length;
  const late =
    promises.filter((each) => each.late).length +
    loans.filter((each) => each.late && each.promises.length === 0).length;
  const rest = [
    loans.length > 0
      ? `${counted(loans.length, "loan")} ${loans.length === 1 ? "is" : "are"} out`
      : "nothing is out on loan",
    late > 0 ? `${counted(late, "answer")} ${late === 1 ? "is" : "are"} late` : null,
  ].filter(Boolean);
  return (
    <Figure
      value={`${lone} of ${counted(held.length, "variety")}`}
      waiting={lone > 0 || late > 0}
      explanation={ruleWords["one-place-only"].explanation(settings, lone)}
    >
      {lone === 1 ? "stands" : "stand"} in one place only, or in none for certain; {rest.join(", ")}.
    </Figure>
  );
}
