import type { ReactNode } from "react";
import { Way } from "@/components/ui/offered";
import type { UnitSettings } from "@/lib/display/units";
import type { HarvestRead, HarvestsRead } from "@/lib/registry/harvests/read-harvests";
import { EqualTakings, EvennessView } from "./evenness-view";
import { furtherWords, namedAmounts } from "./harvest-words";
import { TakeSome } from "./take-some";

/** One harvest below the table: what each plant gave and what that makes of it, what was lost, what looks odd, where to go on. */
export function HarvestPart({
  read,
  harvest,
  units,
  title,
}: {
  read: HarvestsRead;
  harvest: HarvestRead;
  units: UnitSettings;
  title: ReactNode;
}) {
  const { evenness, given, bulked, warnings, lotId, detasselled } = harvest;
  const further = furtherWords(harvest);
  const unit = { unit: given?.unit ?? "g", units };
  const named = namedAmounts(harvest);
  const apart = bulked === "kept apart";
  const equal = bulked === "equal weight" || bulked === "equal seeds";
  const told = warnings.length > 0 || (evenness !== null && !equal) || further.length > 0;
  return (
    <div className={told ? "stack-near" : "stack-near not-on-paper"}>
      {title}
      {warnings.length > 0 ? (
        <ul className="waits measure" aria-label="What looks odd">
          {warnings.map(({ code, text }) => (
            <li key={code}>
              {text.charAt(0).toUpperCase()}
              {text.slice(1)}.
            </li>
          ))}
        </ul>
      ) : null}
      {evenness && !equal ? (
        <>
          <EvennessView even={evenness} named={named} unit={unit} done={!apart} inbreeding={read.plot.inbreeding} />
          {apart ? (
            <>
              <EqualTakings even={evenness} unit={unit} />
              <details className="not-on-paper">
                <summary>Another amount of seed</summary>
                <TakeSome named={named} plot={read.plot} detasselled={detasselled} unit={unit} />
              </details>
            </>
          ) : null}
        </>
      ) : null}
      {further.map((sentence) => (
        <p key={sentence} className="measure">
          {sentence}
        </p>
      ))}
      <p className="row not-on-paper">
        {lotId === null ? null : (
          <>
            {apart && evenness ? (
              <Way href={`/grow-outs/${read.growOut.id}/harvest/${harvest.id}/together`}>put the bags together</Way>
            ) : null}
            <Way href={`/lots/${lotId}/weigh`}>count and weigh its seeds</Way>
            <Way href={`/lots/${lotId}/dry`}>dry it</Way>
          </>
        )}
        <Way href={`/grow-outs/${read.growOut.id}/harvest/${harvest.id}`}>put this harvest right</Way>
      </p>
    </div>
  );
}
