import { MixedJar, type MixedLayer } from "@/components/jar";
import { Explained, Measured } from "@/components/numbers";
import { effectiveSize, percent, percentSpan, plainNumber, seedsAbout, span } from "@/lib/display/numbers";
import { counted, listed } from "@/lib/display/plurals";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { BlendGround } from "@/lib/registry/lots/read-blend-ground";
import { descentOfMix, isForeign, standingOfMix } from "../_mix/kept-of-mix";
import { type PartOfForm, sharesOf, sumOfParts } from "../_mix/mix-of-form";
import { inbreedingExplanation, liveExplanation, seedWeightExplanation } from "../_words/explain-mix";
import type { AboutBlend } from "./blending";
import styles from "./blending.module.css";

/** The jar with its layers, and all that would be true of the blend. */
export function MixOutcome({
  ground,
  about,
  parts,
  units,
}: {
  ground: BlendGround;
  about: AboutBlend;
  parts: readonly PartOfForm[];
  units: UnitSettings;
}) {
  const shares = sharesOf(parts);
  const sum = sumOfParts(parts);
  if (parts.length === 0) return <p className="quiet">Nothing is ticked yet.</p>;
  const layers: MixedLayer[] =
    shares === null
      ? []
      : parts.map((part, i) => ({
          name: part.lot.number,
          share: shares[i] ?? 0,
          grade: part.living?.grade ?? "unknown",
        }));
  const { live } = sum;
  const alive = live && live.high - live.low > 1 ? span(Math.round(live.low), Math.round(live.high), "", 3) : null;
  return (
    <div className={styles.outcome}>
      <MixedJar layers={layers} />
      <div className={styles.figures}>
        <Explained explanation={liveExplanation(parts, sum)}>
          <span>
            Living seeds{" "}
            <Measured value={live ? seedsAbout(live.value) : null} span={alive} grade={live?.grade ?? "unknown"} />
          </span>
        </Explained>
        <p>
          In all <Measured value={sum.grams === null ? null : weight(sum.grams, units)} grade="counted" />
          {sum.seeds === null ? "" : `, ${seedsAbout(sum.seeds)}`}
          {live && sum.seeds ? (
            <>
              , of which{" "}
              <Measured
                value={percent(live.value / sum.seeds, 0)}
                span={percentSpan(live.low / sum.seeds, live.high / sum.seeds)}
                grade={live.grade}
              />{" "}
              should come up
            </>
          ) : null}
        </p>
        <Explained explanation={seedWeightExplanation(parts, sum)}>
          <span>
            A thousand seeds of it weigh{" "}
            <Measured value={sum.thousandSeedGrams === null ? null : weight(sum.thousandSeedGrams, units)} />
          </span>
        </Explained>
        <Lineage ground={ground} about={about} parts={parts} shares={shares} />
      </div>
    </div>
  );
}

function Lineage({
  ground,
  about,
  parts,
  shares,
}: {
  ground: BlendGround;
  about: AboutBlend;
  parts: readonly PartOfForm[];
  shares: readonly number[] | null;
}) {
  const lots = parts.map((part) => part.lot);
  const shareOf = new Map(parts.map((part, i) => [part.lot.id, shares?.[i] ?? 0]));
  const native = lots.some(isForeign);
  if (shares === null) return <p className="quiet">Generations and founders show once the amounts stand there.</p>;
  const figures = descentOfMix(ground, (lot) => shareOf.get(lot.id) ?? 0);
  if (figures === null)
    return <p className="quiet">Up the line of one of them nobody wrote in what shares its lots were sown or mixed.</p>;
  const counts = standingOfMix(ground, lots, about.matingSystem) === "counted";
  return (
    <>
      {counts ? (
        <Explained explanation={inbreedingExplanation(ground, parts, figures)}>
          <span>
            Inbreeding of its seed <Measured value={plainNumber(figures.inbreeding, 3)} />
            {about.matingSystem !== "selfing" && figures.inbreeding > figures.coancestry + 1e-9
              ? ", higher than one free flowering of the mix would leave it"
              : ""}
          </span>
        </Explained>
      ) : null}
      <p>
        {figures.shortestLine === figures.longestLine
          ? `${counted(figures.longestLine, "generation")} from its founders along every line`
          : `${counted(figures.shortestLine, "generation")} from its founders along the shortest line, ${figures.longestLine} along the longest`}
      </p>
      <p>
        Founders’ parts: {listed(figures.founders.map(({ id, part }) => `${id} ${percent(part)}`))}
        {counts && figures.coancestry > 0
          ? `; as much as ${effectiveSize(1 / (2 * figures.coancestry))} unrelated plants would bring`
          : ""}
      </p>
      {native ? (
        <p className="waits">
          {percent(figures.foreignAncestry)} of its genes from foreign pollen: once mixed in, it cannot be taken out
          again.
        </p>
      ) : null}
    </>
  );
}
