"use client";

import { Explained } from "@/components/numbers/explained";
import { wholeNumber } from "@/lib/display/numbers";
import { counted, listed } from "@/lib/display/plurals";
import { refusalSentence } from "@/lib/display/refusals";
import type { ChoiceGround } from "@/lib/schemas/plants/choice-ground";
import type { EffectiveSizeSpan } from "@/lib/science/effective-size/effective-size-span";
import { sizeOfCut } from "@/lib/science/effective-size/size-of-cut";
import type { Outcome } from "@/lib/science/outcome";
import type { ChoiceOfPlants } from "@/lib/science/selection/choice-of-plants";
import { againstFloor, againstWanted, costInWords, sizeInWords, standsAt } from "./choice-words";
import styles from "./choose-plants.module.css";
import { explainCost, explainRanks, explainSize } from "./explain";
import { GainAndBreadth } from "./gain-and-breadth";
import { Ruler } from "./ruler";
import { keepOf, mayBeKept, pollenOf, type Setting } from "./setting";
import type { SizesOfCuts } from "./worked";

/** How many are kept, and what that means: seed parents, effective size, what it costs and how far they stand above their neighbours. */
export function CutPanel({
  ground,
  setting,
  choice,
  sizes,
  change,
}: {
  ground: ChoiceGround;
  setting: Setting;
  choice: ChoiceOfPlants;
  sizes: SizesOfCuts;
  change: (part: Partial<Setting>) => void;
}) {
  const kept = choice.kept.length;
  const size = sizes[kept - 1] ?? null;
  const wanted = againstWanted(kept, ground);
  const pollen = pollenOf(setting, ground);
  return (
    <div className={styles.panel}>
      <Ruler
        label="How many to keep"
        large
        value={keepOf(setting, ground)}
        least={1}
        most={Math.max(1, mayBeKept(ground))}
        set={(keep) => change({ keep })}
        spoken={spokenOf(kept, size)}
      />
      <p className="heard" role="status" aria-live="polite">
        {spokenOf(kept, size)}
      </p>
      <div className={styles.figures}>
        <Explained explanation={explainRanks(ground, setting, choice)}>
          <span className={styles.figure}>
            <b data-waiting={wanted?.waits || undefined}>{wholeNumber(kept)}</b>{" "}
            {kept === 1 ? "seed parent" : "seed parents"}, of {wholeNumber(choice.rankable)} ranked
          </span>
        </Explained>
        {choice.placesLeft > 0 ? (
          <p className="waits">
            {counted(choice.placesLeft, "place")} {choice.placesLeft === 1 ? "is" : "are"} left for{" "}
            {counted(choice.tied.length, "plant")} that stand alike: keep of them whom you choose.{" "}
            {tiedInWords(ground, choice)}
          </p>
        ) : null}
        {wanted ? <p className={wanted.waits ? "waits" : "quiet"}>{wanted.words}</p> : null}
        <Sizes ground={ground} setting={setting} kept={kept} size={size} />
        {choice.gain === null ? null : (
          <p className={styles.figure}>
            stand at <b>{standsAt(choice.gain)}</b> standard deviations above their neighbours
          </p>
        )}
      </div>
      {ground.plot === null || ground.plot.sexes === "separate" ? null : (
        <fieldset className={styles.pollen}>
          <legend>Whose pollen there was</legend>
          {(["all", "kept"] as const).map((whose) => (
            <label key={whose}>
              <input
                type="radio"
                name="pollen"
                checked={pollen === whose}
                onChange={() =>
                  change({ pollen: whose === (ground.chosenBeforeFlower ? "kept" : "all") ? null : whose })
                }
              />
              {whose === "all"
                ? "of all that stand: seed alone is chosen"
                : "of the kept alone: the others were pulled before they shed"}
            </label>
          ))}
        </fieldset>
      )}
      <Trade choice={choice} sizes={sizes} ground={ground} kept={kept} />
    </div>
  );
}

/** Those that share the cut, from the cells with the fewest kept first. */
function tiedInWords({ plants }: ChoiceGround, { kept, tied }: ChoiceOfPlants): string {
  const inside = new Set(kept);
  const keptIn = (cell: string | null) => plants.filter((plant) => plant.cell === cell && inside.has(plant.id)).length;
  const told = plants
    .filter(({ id }) => tied.includes(id))
    .map(({ tag, cell }) => ({ tag, cell, beside: keptIn(cell) }))
    .sort((one, other) => one.beside - other.beside)
    .map(({ tag, cell, beside }) => `${tag} (${cell === null ? "no cell" : `cell ${cell}`}, ${beside} kept there)`);
  const more = told.length - mostTied;
  return `From the cells with the fewest kept first: ${listed(more > 0 ? [...told.slice(0, mostTied), `${more} more`] : told)}.`;
}

const mostTied = 6;

function spokenOf(kept: number, size: Outcome<EffectiveSizeSpan> | null): string {
  const counts = size?.ok ? `, counts as ${sizeInWords(size.value)}, costs ${costInWords(size.value)}` : "";
  return `${kept} kept${counts}`;
}

function Sizes({
  ground,
  setting,
  kept,
  size,
}: {
  ground: ChoiceGround;
  setting: Setting;
  kept: number;
  size: Outcome<EffectiveSizeSpan> | null;
}) {
  if (ground.plot === null)
    return (
      <p className="quiet">The crop is kept by division, so no seed mixes the plants and there is no effective size.</p>
    );
  if (kept === 0) return null;
  if (!size?.ok) return <p className="waits">No effective size: {size?.refusals.map(refusalSentence).join(" ")}</p>;
  const tipped = sizeOfCut(ground.plot, { kept, pollen: pollenOf(setting, ground), shares: "unknown" });
  const floor = againstFloor(size.value, ground.floor);
  const equal = explainSize(ground, setting, kept, size.value, "equal");
  const asTheyBear = tipped.ok ? explainSize(ground, setting, kept, tipped.value, "unknown") : null;
  return (
    <>
      {equal ? (
        <Explained explanation={equal}>
          <span className={styles.figure}>
            counts as <b data-waiting={floor?.waits || undefined}>{sizeInWords(size.value)}</b>, seed alike from each
          </span>
        </Explained>
      ) : null}
      {floor ? <p className={floor.waits ? "waits" : "quiet"}>{floor.words}</p> : null}
      {tipped.ok && asTheyBear && kept > 1 ? (
        <Explained explanation={asTheyBear}>
          <span className={styles.figure}>
            counts as <b>{sizeInWords(tipped.value)}</b>, all tipped together
          </span>
        </Explained>
      ) : null}
      <Explained explanation={explainCost(ground, size.value)}>
        <span className={styles.figure}>
          costs <b>{costInWords(size.value)}</b> of the diversity, this year
        </span>
      </Explained>
    </>
  );
}

function Trade({
  choice,
  sizes,
  ground,
  kept,
}: {
  choice: ChoiceOfPlants;
  sizes: SizesOfCuts;
  ground: ChoiceGround;
  kept: number;
}) {
  const points = choice.gains.flatMap((gain, place) => {
    const size = sizes[place];
    return size?.ok ? [{ kept: place + 1, size: size.value, gain }] : [];
  });
  const size = sizes[kept - 1];
  if (points.length < 2 || !size?.ok || choice.gain === null) return null;
  return (
    <GainAndBreadth
      points={points}
      now={{ kept, size: size.value, gain: choice.gain }}
      floor={ground.floor}
      wanted={ground.wanted?.count ?? null}
    />
  );
}
