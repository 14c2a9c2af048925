import Link from "next/link";
import { Notice } from "@/components/ui";
import { listed } from "@/lib/display/plurals";
import type { GroundToGrowOn } from "@/lib/registry/varieties/read-grown-otherwise";
import type { PlanReckoned } from "../_plan/reckon-plan";
import { isSpan, sentence } from "../_words/plan-words";

/** What stands against the lots that are sown, and what the figure does not know. */
export function Doubts({ ground, plan }: { ground: GroundToGrowOn; plan: PlanReckoned }) {
  const against = plan.lots.filter(({ objections }) => objections.length > 0);
  const span = isSpan(plan.left);
  const unknown = plan.fromNow ? plan.lots.filter(({ standing }) => standing !== "counted") : [];
  const founders = [...new Set(plan.lots.flatMap((lot) => lot.founders))];
  const kin = founders.length > 1 && unknown.length === 0 && !span;
  if (against.length === 0 && unknown.length === 0 && !kin && !span && !plan.evenShares) return null;
  return (
    <Notice title="Before you trust it">
      {unknown.length > 0 ? (
        <p>
          Of lot {listed(unknown.map(({ number }) => number))} the lineage is not known throughout: everything is
          counted from the seed that is sown now, as if nothing had been lost before.
          {plan.lots.length > 1 ? " How near these lots are to each other does not show so." : ""}
        </p>
      ) : null}
      {against.map((lot) => (
        <p key={lot.id}>
          Lot <Link href={`/lots/${lot.id}`}>{lot.number}</Link> {listed(lot.objections)}.
        </p>
      ))}
      {kin ? (
        <p>
          Its founders, {listed(founders)}, are counted as unrelated to each other; if they are kin, less is left than
          this says. See <Link href={`/varieties/${ground.variety.id}/diversity`}>what is kept today</Link>.
        </p>
      ) : null}
      {span ? <BetweenEnds ground={ground} plan={plan} /> : null}
      {plan.evenShares ? <p>No shares were written: the plants are counted as coming evenly from the lots.</p> : null}
    </Notice>
  );
}

/** Why it lies between two ends, and where that can be narrowed. */
function BetweenEnds({ ground, plan }: { ground: GroundToGrowOn; plan: PlanReckoned }) {
  const lots = plan.lots.filter(({ between }) => between !== null);
  const assumed = [...new Set(lots.flatMap(({ between }) => between?.assumed ?? []))];
  return (
    <>
      <p>
        Up the line of lot {listed(lots.map(({ number }) => number))} not all was written down. Which record would
        narrow the span most stands with each lot:{" "}
        {lots.map(({ id, number }, at) => (
          <span key={id}>
            {at === 0 ? "" : ", "}
            <Link href={`/varieties/${ground.variety.id}/diversity?lot=${id}`}>{number}</Link>
          </span>
        ))}
        .
      </p>
      {assumed.length > 0 ? (
        <details className="whole-on-paper">
          <summary>What its ends were taken from</summary>
          <ul>
            {assumed.map((each) => (
              <li key={each}>{sentence(each)}</li>
            ))}
          </ul>
        </details>
      ) : null}
    </>
  );
}
