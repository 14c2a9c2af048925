import { Way } from "@/components/ui/offered";
import type { LotRead } from "@/lib/registry/lots/read-lot";
import { groupedLabelCode } from "@/lib/science/codes/label-code";

/** Other records that are read as this lot, each with the way back; and the way to name one. */
export function OtherRecords({ read: { lot, otherRecords } }: { read: LotRead }) {
  return (
    <div className="stack-near">
      {otherRecords.map(({ id, number, code }) => (
        <p key={id}>
          Also on record as lot {number}, label {groupedLabelCode(code)}: read as one.{" "}
          <Way className="not-on-paper" href={`/lots/${lot.id}/same?record=${id}`}>
            Let it stand for itself again
          </Way>
        </p>
      ))}
      <p className="not-on-paper">
        <Way href={`/lots/${lot.id}/same`}>The same lot stands here under another number</Way>
      </p>
    </div>
  );
}
