import { Figure } from "@/components/numbers";
import { percent } from "@/lib/display/numbers";
import { ownKept } from "@/lib/registry/varieties/own-kept";
import type { LotOfVariety } from "@/lib/registry/varieties/read-variety";
import { whyNotKept } from "../../../_words/kept-words";
import { figuresOfLot } from "../_words/explain-figures";
import { ownKeptInWords } from "../_words/kept-in-words";

/** How much of its own diversity the variety's lot keeps: the figure of the page. */
export function KeptFigure({ lot, clonal }: { lot: LotOfVariety | null; clonal: boolean }) {
  if (clonal) return <Figure value="No such figure">{whyNotKept("clonal") ?? "It is kept by division."}</Figure>;
  if (lot === null)
    return (
      <Figure value="Unknown">is what is kept: no lot of it is on record yet. Enter the jar that you have.</Figure>
    );
  const { standing, figures } = lot;
  if (standing === "uniform" || standing === "lines not known")
    return (
      <Figure value={standing === "uniform" ? "Uniform" : "Unknown"}>
        {standing === "uniform" ? "" : "is what is kept. "}
        {whyNotKept(standing)}
      </Figure>
    );
  const kept = ownKept(figures, standing);
  if (kept.value === null && kept.low === null)
    return (
      <Figure value="Unknown">
        is what lot {lot.number} keeps. {whyNotKept("plants not known")}
      </Figure>
    );
  const [own] = figuresOfLot(lot);
  return (
    <Figure value={ownKeptInWords(lot)} explanation={own?.explanation}>
      of the {kept.foreign ? "variety’s own" : "founders’"} diversity is still in lot {lot.number}.
      {kept.foreign
        ? ` ${percent(figures?.foreignAncestry ?? null)} of its genes are foreign, and are not counted as a gain.`
        : ""}
      {kept.value === null ? " What was not written down leaves it between these two." : ""}
    </Figure>
  );
}
