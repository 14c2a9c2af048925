import { Explained } from "@/components/numbers";
import type { LotRead } from "@/lib/registry/lots/read-lot";
import { diversityExplanation, diversityInWords, diversitySentence } from "../_words/explain-lineage";
import { KinOfLotPart } from "./kin-of-lot";

/** What a lot still holds of its variety's diversity, where it comes from, and what came of it. */
export function LineageOfLot({ read }: { read: LotRead }) {
  const diversity = diversityExplanation(read);
  const counted = read.standing === "counted";
  return (
    <div className="stack">
      {diversity ? (
        <Explained explanation={diversity}>
          {diversityInWords(read)} {counted ? diversitySentence(read) : "what is kept of the diversity"}
        </Explained>
      ) : null}
      {counted ? null : <p>{diversitySentence(read)}</p>}
      <KinOfLotPart read={read} />
    </div>
  );
}
