import { Figure } from "@/components/numbers";
import { dateInWords } from "@/lib/display/dates";
import { effectiveSize, wholeNumber } from "@/lib/display/numbers";
import type { GrowOutRead } from "@/lib/registry/grow-outs/read-grow-out";
import { sizeExplanation } from "../../_words/size-explanation";

/** The effective size and what it means; for a crop kept by division, why there is none. */
export function SizeFigure({ read }: { read: GrowOutRead }) {
  const { growOut, harvested, variety } = read;
  const sown = growOut.sown === null ? "" : `Sown ${dateInWords(growOut.sown)}. `;
  if (variety.crop.clonal) {
    return (
      <Figure value={growOut.plantsStanding === null ? "unknown" : wholeNumber(growOut.plantsStanding)}>
        plants stood. {sown}The crop is kept by division, so no seed mixed them and there is no effective size.
      </Figure>
    );
  }
  if (harvested.length === 0) {
    return (
      <Figure value="no seed">
        came of it on record. {sown}
        {growOut.outcome ?? "Nobody wrote why."}
      </Figure>
    );
  }
  const size = harvested[0]?.figures?.effectiveSize ?? null;
  const floor = variety.crop.plantsMin;
  const narrow = size !== null && floor !== null && size < floor;
  const against =
    floor === null
      ? ""
      : narrow
        ? ` The crop’s floor is ${floor}: it was a bottleneck.`
        : ` The crop’s floor is ${floor}.`;
  return (
    <Figure value={effectiveSize(size)} waiting={narrow} explanation={sizeExplanation(read)}>
      {size === null
        ? `is what this grow-out counts as, in plants that all gave alike. ${sown}What is missing is written below.`
        : `plants that all gave alike would have passed on as much. ${sown}${against}`}
    </Figure>
  );
}
