"use client";

import { memo, useState } from "react";
import { cellRole, groupRole, headRole, rowHeadRole, rowRole, tableRole } from "@/components/tables/roles";
import { ScrollFrame } from "@/components/tables/scroll-frame";
import { Button } from "@/components/ui/button";
import { percent } from "@/lib/display/numbers";
import { scoreInWords } from "@/lib/display/scores";
import type { ChoiceGround, PlantToChoose, TraitToWeigh } from "@/lib/schemas/plants/choice-ground";
import type { ChoiceOfPlants, StandingPlant } from "@/lib/science/selection/choice-of-plants";
import { standsAt } from "./choice-words";
import { LeaveOut } from "./leave-out";
import styles from "./ranked-list.module.css";
import type { Setting } from "./setting";

/** The first plant below the cut. */
const cutId = "below-the-cut";

/** What a hand can do with a plant of the list; plants are told by their name. */
export interface Deeds {
  readonly leaveOut: (name: string, reason: string) => void;
  readonly putBack: (name: string) => void;
  readonly take: (name: string) => void;
  readonly byRank: (name: string) => void;
}

/** The plants, the best first, with the cut drawn where it falls; below them those that nothing could be compared with, and those that cannot be chosen. */
export function RankedList({
  ground,
  setting,
  choice,
  deeds,
}: {
  ground: ChoiceGround;
  setting: Setting;
  choice: ChoiceOfPlants;
  deeds: Deeds;
}) {
  const [asking, setAsking] = useState<string | null>(null);
  const byId = new Map(ground.plants.map((plant) => [plant.id, plant]));
  const traits = ground.traits.filter((trait) => trait.better !== null);
  const taken = new Set(setting.taken);
  const cut = choice.ranked.findIndex(({ standing, rank }) => standing === "left" && rank !== null);
  return (
    <div className="stack-near">
      {cut > 0 ? (
        <p className="not-on-paper">
          <Button kind="quiet" onClick={() => document.getElementById(cutId)?.scrollIntoView({ block: "center" })}>
            Go to the cut
          </Button>
        </p>
      ) : null}
      <ScrollFrame className={styles.frame} label="The plants, ranked">
        <table className={styles.list} {...tableRole}>
          <thead {...groupRole}>
            <tr {...rowRole}>
              <th scope="col" {...headRole} data-kind="count">
                Rank
              </th>
              <th scope="col" {...headRole}>
                Plant
              </th>
              <th scope="col" {...headRole}>
                Here
              </th>
              <th scope="col" {...headRole}>
                Cell
              </th>
              <th scope="col" {...headRole} data-kind="count">
                Stands at
              </th>
              {traits.map((trait) => (
                <th key={trait.key} scope="col" {...headRole} data-kind="count">
                  {trait.name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody {...groupRole}>
            {choice.ranked.map((standing, place) => {
              const plant = byId.get(standing.id);
              if (!plant) return null;
              return (
                <PlantRow
                  key={plant.id}
                  plant={plant}
                  {...standing}
                  traits={traits}
                  reason={setting.leftOut[plant.name]}
                  byHand={taken.has(plant.name)}
                  cutAbove={place === cut}
                  asking={asking === plant.id}
                  ask={setAsking}
                  deeds={deeds}
                />
              );
            })}
          </tbody>
        </table>
      </ScrollFrame>
    </div>
  );
}

const PlantRow = memo(function PlantRow({
  plant,
  rank,
  index,
  weightCompared,
  standing,
  traits,
  reason,
  byHand,
  cutAbove,
  asking,
  ask,
  deeds,
}: StandingPlant & {
  plant: PlantToChoose;
  traits: readonly TraitToWeigh[];
  reason: string | undefined;
  byHand: boolean;
  cutAbove: boolean;
  asking: boolean;
  ask: (id: string | null) => void;
  deeds: Deeds;
}) {
  const compared = rank !== null;
  return (
    <tr {...rowRole} id={cutAbove ? cutId : undefined} data-standing={standing} data-cut={cutAbove || undefined}>
      <td {...cellRole} data-kind="count" data-name="Rank">
        {rank ?? "–"}
      </td>
      <th scope="row" {...rowHeadRole}>
        {plant.tag}
      </th>
      <td {...cellRole} data-name="Here" className={styles.here}>
        <span className={styles.standing}>{standingInWords(standing, { plant, reason, byHand })}</span>
        <Deed
          plant={plant}
          standing={standing}
          reason={reason}
          byHand={byHand}
          asking={asking}
          ask={ask}
          deeds={deeds}
        />
      </td>
      <td {...cellRole} data-name="Cell">
        {plant.cell ?? "not written"}
      </td>
      <td {...cellRole} data-kind="count" data-name="Stands at">
        {compared && index !== null ? standsAt(index) : "not compared"}
        {compared && weightCompared < 1 ? (
          <span className={styles.part}> by {percent(weightCompared, 0)} of what counts</span>
        ) : null}
      </td>
      {traits.map((trait) => (
        <td {...cellRole} key={trait.key} data-kind="count" data-name={trait.name}>
          {saidOf(trait, plant)}
        </td>
      ))}
    </tr>
  );
});

function saidOf(trait: TraitToWeigh, plant: PlantToChoose): string {
  const said = plant.said[trait.key];
  if (said === undefined) return "not scored";
  const own = plant.scores[trait.key] ?? [];
  if (own.length !== 1 || trait.days || trait.share) return said;
  return scoreInWords(
    { ...trait.definition, wording: { ...trait.definition.wording, steps: {} } },
    {
      value: own[0]?.value ?? null,
      text: null,
    },
  );
}

function standingInWords(
  standing: StandingPlant["standing"],
  { plant, reason, byHand }: { plant: PlantToChoose; reason: string | undefined; byHand: boolean },
): string {
  if (plant.gone !== null) return plant.gone;
  if (reason !== undefined) return `left out: ${reason}`;
  if (byHand) return "kept, by hand";
  switch (standing) {
    case "kept":
      return "kept";
    case "tied":
      return "shares the cut";
    case "not-compared":
      return whyNotCompared(plant);
    default:
      return plant.intent === "keep" ? "marked keep by now" : "";
  }
}

/** Nothing of it was compared: no score that counts, no cell, or no neighbour in it. */
function whyNotCompared(plant: PlantToChoose): string {
  if (Object.keys(plant.scores).length === 0) return "could not be compared: not scored";
  if (plant.cell === null) return "could not be compared: no cell is written";
  return "could not be compared: alone in its cell, or not scored by what counts";
}

function Deed({
  plant,
  standing,
  reason,
  byHand,
  asking,
  ask,
  deeds,
}: {
  plant: PlantToChoose;
  standing: StandingPlant["standing"];
  reason: string | undefined;
  byHand: boolean;
  asking: boolean;
  ask: (id: string | null) => void;
  deeds: Deeds;
}) {
  const { name, tag } = plant;
  const of = <span className="heard"> plant {tag}</span>;
  if (plant.gone !== null) return null;
  if (reason !== undefined)
    return (
      <button type="button" className={styles.press} onClick={() => deeds.putBack(name)}>
        Put back{of}
      </button>
    );
  if (asking)
    return (
      <LeaveOut
        tag={tag}
        leave={(why) => {
          deeds.leaveOut(name, why);
          ask(null);
        }}
        cancel={() => ask(null)}
      />
    );
  if (byHand)
    return (
      <button type="button" className={styles.press} onClick={() => deeds.byRank(name)}>
        By rank again{of}
      </button>
    );
  if (standing === "kept")
    return (
      <button type="button" className={styles.press} onClick={() => ask(plant.id)}>
        Leave out{of}
      </button>
    );
  return (
    <span className={styles.both}>
      <button type="button" className={styles.press} onClick={() => deeds.take(name)}>
        Keep it{of}
      </button>
      {standing === "tied" || standing === "left" ? (
        <button type="button" className={styles.press} onClick={() => ask(plant.id)}>
          Leave out{of}
        </button>
      ) : null}
    </span>
  );
}
