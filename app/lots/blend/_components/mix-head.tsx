import { Figure } from "@/components/numbers";
import { percent } from "@/lib/display/numbers";
import { listed } from "@/lib/display/plurals";
import type { BlendGround } from "@/lib/registry/lots/read-blend-ground";
import { bestSingle, isForeign, keptOfMix, standingOfMix } from "../_mix/kept-of-mix";
import { type PartOfForm, sharesOf } from "../_mix/mix-of-form";
import { keptExplanation } from "../_words/explain-mix";
import type { AboutBlend } from "./blending";

/** What the mix would keep, against the best of its lots alone: the figure of the page. */
export function MixHead({
  ground,
  about,
  parts,
}: {
  ground: BlendGround;
  about: AboutBlend;
  parts: readonly PartOfForm[];
}) {
  const lots = parts.map((part) => part.lot);
  const standing = standingOfMix(ground, lots, about.matingSystem);
  if (parts.length < 2)
    return <Figure value="Which lots?">Tick two or more: what they would make together stands here.</Figure>;
  if (standing === "uniform")
    return <Figure value="Uniform">All of them are one pure line: mixing them adds and loses nothing.</Figure>;
  if (standing === "lines not known")
    return (
      <Figure value="Unknown">
        is what the mix would keep: of a crop that sets seed with its own pollen somebody must say whether each founder
        lot is one line or many.
      </Figure>
    );
  const unknown = lots.filter((lot) => !lot.lineageKnown).map((lot) => lot.number);
  if (unknown.length > 0)
    return (
      <Figure value="Unknown">
        is what the mix would keep: somewhere up the line of lot {listed(unknown)} the plants were not written down.
      </Figure>
    );
  const shares = sharesOf(parts);
  const native = lots.some(isForeign);
  const shareOf = new Map(parts.map((part, i) => [part.lot.id, shares?.[i] ?? 0]));
  const kept = shares === null ? null : keptOfMix(ground, (lot) => shareOf.get(lot.id) ?? 0, native);
  const best = bestSingle(ground, lots, native);
  if (kept === null || kept.share === null || best === null)
    return (
      <Figure value={best ? percent(best.kept.share, 0) : "Unknown"}>
        {best
          ? `of the ${native ? "variety’s own " : ""}diversity is in lot ${best.lot.number} alone, the best of them. Write amounts to see what the mix keeps.`
          : "is what they would keep together."}
      </Figure>
    );
  return (
    <Figure
      value={percent(kept.share, 1)}
      explanation={keptExplanation({ ground, parts, kept, best })}
      waiting={kept.share < (best.kept.share ?? 0) - 1e-9}
    >
      of the {native ? "variety’s own " : ""}diversity would be in the mix. Lot {best.lot.number} alone, the best of
      them, holds {percent(best.kept.share, 1)}
      {kept.share < (best.kept.share ?? 0) - 1e-9 ? ": in these shares the mix keeps less." : "."}
    </Figure>
  );
}
