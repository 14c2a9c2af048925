import { useState } from "react";
import { plainNumber } from "@/lib/display/numbers";
import { newId } from "@/lib/field/new-record";
import type { PlantShown, TakenShown } from "@/lib/field/screen-state";
import { type Bulking, bulkings, type FateOfSeed, fatesOfSeed } from "@/lib/schemas/harvests/harvest-kinds";
import { go, placeOf } from "../_components/place";
import controls from "./controls.module.css";
import { NumberPad } from "./number-pad";
import styles from "./screens.module.css";
import { Choice } from "./trait-control";
import type { Work } from "./work";

const lostBy = fatesOfSeed.filter((fate) => fate.startsWith("lost: "));

/** What is asked of one plant: how much its seed weighs or counts, or why it is lost. */
type Asks = { readonly of: "grams" | "seeds" | "lost" | "done"; readonly plantId: string };

/** Marked plants taken in, one by one: ticked, weighed or counted if one can, or lost with why; then how their seed is put together. */
export function HarvestScreen({ work }: { work: Work }) {
  const { growOutId, state } = work;
  const [begins] = useState(newId);
  const [asks, setAsks] = useState<Asks | null>(null);
  const harvestId = state.harvest?.harvestId ?? begins;
  const taken = new Map(state.harvest?.taken.map((each) => [each.plant.id, each]));
  const plants = state.plants
    .filter((each) => taken.has(each.plant.id) || (each.mark?.intent === "keep" && each.fate === null))
    .sort((a, b) => (a.tag ?? a.plant.name).localeCompare(b.tag ?? b.plant.name, "en", { numeric: true }));
  const kept = [...taken.values()].filter((each) => each.fate === "kept").length;
  const take = async ({ plant, tag }: PlantShown, told: Partial<Pick<TakenShown, "fate" | "grams" | "seeds">>) => {
    const before = taken.get(plant.id);
    const fate = told.fate ?? "kept";
    const seed = fate === "kept" ? { ...before, ...told } : {};
    const { grams = null, seeds = null } = seed;
    const body = { harvestId, plant, fate, grams, seeds, replaces: before?.record ?? null };
    if (await work.record("taken", body, `${tag ?? plant.name}: ${takenInWords(body)}`)) setAsks(null);
  };
  const done = async (bulked: Bulking) => {
    const parts = [...taken.values()].map((each) => each.record);
    if (await work.record("harvest", { harvestId, parts, bulked, note: null }, `Harvest, ${kept} plants, ${bulked}`))
      go(placeOf(growOutId));
  };
  const asked = plants.find((each) => each.plant.id === asks?.plantId);
  return (
    <>
      <h1>Harvest</h1>
      {plants.length === 0 ? (
        <p className={styles.lead}>No plant to keep is marked here that was not taken in already. Mark plants first.</p>
      ) : (
        <p className={styles.quietNear}>
          {kept} of {plants.length} taken in. Tie each tag to its ears, fruits or bag.
        </p>
      )}
      <ul className={styles.takes}>
        {plants.map((each) => {
          const told = taken.get(each.plant.id);
          const name = each.tag ?? each.plant.name;
          return (
            <li key={each.plant.id} className={styles.take}>
              <span className={styles.takeTag}>{name}</span>
              {told ? (
                <span className={styles.takeSays}>{takenInWords(told)}</span>
              ) : (
                <button
                  type="button"
                  className={controls.choice}
                  aria-label={`${name}: taken in`}
                  onClick={() => void take(each, {})}
                >
                  Taken in
                </button>
              )}
              <button
                type="button"
                className={controls.quietChoice}
                aria-label={`${name}: ${told?.fate === "kept" ? "weight" : "lost"}`}
                onClick={() => setAsks({ of: told?.fate === "kept" ? "grams" : "lost", plantId: each.plant.id })}
              >
                {told?.fate === "kept" ? "Weight" : "Lost"}
              </button>
            </li>
          );
        })}
      </ul>
      <section className={styles.thumb} aria-label="What is asked now">
        {asks && asks.of !== "done" && asked ? (
          <>
            <p className={controls.asks}>
              {asked.tag ?? asked.plant.name}: {asks.of === "lost" ? "lost, why?" : "its seed"}
            </p>
            {asks.of === "lost" ? (
              <div className={controls.grid} data-columns="2">
                {lostBy.map((fate) => (
                  <Choice
                    key={fate}
                    small
                    on={taken.get(asks.plantId)?.fate === fate}
                    onTap={() => void take(asked, { fate })}
                  >
                    {fate.slice("lost: ".length)}
                  </Choice>
                ))}
              </div>
            ) : (
              <>
                <div className={controls.grid} data-columns="3">
                  <Choice small on={asks.of === "grams"} onTap={() => setAsks({ ...asks, of: "grams" })}>
                    grams
                  </Choice>
                  <Choice small on={asks.of === "seeds"} onTap={() => setAsks({ ...asks, of: "seeds" })}>
                    seeds
                  </Choice>
                  <Choice small on={false} onTap={() => setAsks({ ...asks, of: "lost" })}>
                    lost
                  </Choice>
                </div>
                <NumberPad
                  key={asks.of}
                  label={asks.of === "grams" ? "Seed of this plant, grams" : "Seeds of this plant"}
                  unit={asks.of === "grams" ? "g" : null}
                  decimals={asks.of === "grams"}
                  least={asks.of === "grams" ? 0.001 : 1}
                  confirm="Record"
                  onConfirm={(value) =>
                    void take(
                      asked,
                      asks.of === "grams" ? { grams: value, seeds: null } : { seeds: value, grams: null },
                    )
                  }
                />
              </>
            )}
            <button type="button" className={controls.quietChoice} onClick={() => setAsks(null)}>
              Leave as it was
            </button>
          </>
        ) : asks?.of === "done" ? (
          <>
            <p className={controls.asks}>How is the seed put together?</p>
            <div className={controls.grid} data-columns="2">
              {bulkings.map((bulked) => (
                <Choice key={bulked} small on={false} onTap={() => void done(bulked)}>
                  {bulked}
                </Choice>
              ))}
            </div>
            <button type="button" className={controls.quietChoice} onClick={() => setAsks(null)}>
              Not done yet
            </button>
          </>
        ) : taken.size > 0 ? (
          <button type="button" className={styles.confirm} onClick={() => setAsks({ of: "done", plantId: "" })}>
            This harvest is done
          </button>
        ) : null}
      </section>
    </>
  );
}

function takenInWords({
  fate,
  grams,
  seeds,
}: {
  fate: FateOfSeed;
  grams: number | null;
  seeds: number | null;
}): string {
  if (fate !== "kept") return fate;
  if (grams !== null) return `taken in, ${plainNumber(grams, 3)} g`;
  return seeds === null ? "taken in" : `taken in, ${plainNumber(seeds)} seeds`;
}
