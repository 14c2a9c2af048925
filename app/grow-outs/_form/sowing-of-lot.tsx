"use client";

import { ExplainedHere } from "@/components/numbers";
import { seedsCounted } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { type UnitSettings, weight } from "@/lib/display/units";
import { gramsLeft, type LotToSow, type ProposedSowing } from "@/lib/registry/grow-outs/sowing-plan";
import { sowingExplanation } from "../_words/explain-sowing";
import { jarInALine, noProposalInWords } from "../_words/lot-words";
import { leftInWords } from "../_words/reserve-words";
import styles from "./plan-fields.module.css";

/** What a lot's jar holds, and how many of its seeds the plants wanted ask for. */
export function SowingOfLot({
  lot,
  proposed,
  units,
}: {
  lot: LotToSow;
  proposed: ProposedSowing | null;
  units: UnitSettings;
}) {
  return (
    <div className={styles.says}>
      <p>{jarInALine(lot, units)}</p>
      {lot.objections.map((words) => (
        <p key={words} className="waits">
          Lot {lot.number} {words}. It can be planned; sown it is only with a reason.
        </p>
      ))}
      {proposed ? <Proposal lot={lot} proposed={proposed} units={units} /> : null}
    </div>
  );
}

function Proposal({ lot, proposed, units }: { lot: LotToSow; proposed: ProposedSowing; units: UnitSettings }) {
  const { sowing, grams, plants } = proposed;
  const none = noProposalInWords(lot, proposed);
  if (none !== null || !sowing) return <p>{none}</p>;
  const taken = { amount: sowing.seeds, unit: "seeds" } as const;
  const left = gramsLeft(lot, taken);
  return (
    <div>
      For {counted(plants, "plant")} sow{" "}
      <ExplainedHere explanation={sowingExplanation(lot, proposed)}>{seedsCounted(sowing.seeds)}</ExplainedHere>
      {grams === null ? (
        "; what they weigh is not known: nobody has weighed seeds of this lot."
      ) : (
        <>, which weigh {weight(grams, units)}.</>
      )}{" "}
      {leftInWords(left, weight(left, units))}
    </div>
  );
}
