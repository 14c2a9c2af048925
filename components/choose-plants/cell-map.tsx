import { useId } from "react";
import { Hatch } from "@/components/doubt/hatch";
import { counted } from "@/lib/display/plurals";
import type { PlantToChoose } from "@/lib/schemas/plants/choice-ground";
import type { Standing } from "@/lib/science/selection/choice-of-plants";
import { placesInCell } from "./cell-layout";
import styles from "./drawings.module.css";
import type { CellOfChoice } from "./worked";

const side = 10;
const pitch = 13;

/** The cells of the plot, each with its plants where they stand: full those that are kept, hatched those that share the cut, crossed out those that cannot be. */
export function CellMap({
  cells,
  standings,
}: {
  cells: readonly CellOfChoice[];
  standings: ReadonlyMap<string, Standing>;
}) {
  const hatch = useId();
  return (
    <div className="stack-near">
      <ul className={styles.cells}>
        {cells.map(({ cell, plants, kept }) => (
          <li key={cell ?? ""} className={styles.cell} data-none={cell === null || undefined}>
            <span className={styles.cellHead}>
              <span>{cell === null ? "no cell written" : `Cell ${cell}`}</span>
              <span>
                <b>{kept}</b> of {plants.length}
              </span>
            </span>
            <PlantsOfCell
              plants={plants}
              standings={standings}
              hatch={hatch}
              label={`${kept} of ${counted(plants.length, "plant")} kept`}
            />
          </li>
        ))}
      </ul>
      <ul className={styles.key} aria-label="How to read the cells">
        {(["kept", "tied", "left", "barred", "not-compared"] as const).map((standing) => (
          <li key={standing}>
            <svg width="14" height="14" aria-hidden="true">
              {standing === "kept" ? (
                <defs>
                  <Hatch id={hatch} gap={3.5} />
                </defs>
              ) : null}
              <PlantMark x={2} y={2} standing={standing} hatch={hatch} />
            </svg>
            {keyWords[standing]}
          </li>
        ))}
      </ul>
    </div>
  );
}

const keyWords: Readonly<Record<Standing, string>> = {
  kept: "kept",
  tied: "shares the cut",
  left: "not among them",
  barred: "left out, pulled or lost",
  "not-compared": "not compared",
};

function PlantsOfCell({
  plants,
  standings,
  hatch,
  label,
}: {
  plants: readonly PlantToChoose[];
  standings: ReadonlyMap<string, Standing>;
  hatch: string;
  label: string;
}) {
  const { columns, rows, placed } = placesInCell(plants);
  return (
    <svg
      className={styles.plants}
      viewBox={`0 0 ${columns * pitch + 1} ${rows * pitch + 1}`}
      style={{ maxInlineSize: `${(columns * pitch + 1) / 10}rem` }}
      role="img"
      aria-label={label}
    >
      {placed.map(({ plant, column, row }) => (
        <PlantMark
          key={plant.id}
          x={column * pitch + 2}
          y={row * pitch + 2}
          standing={standings.get(plant.id) ?? "not-compared"}
          hatch={hatch}
          name={plant.tag}
        />
      ))}
    </svg>
  );
}

function PlantMark({
  x,
  y,
  standing,
  hatch,
  name,
}: {
  x: number;
  y: number;
  standing: Standing;
  hatch: string;
  name?: string;
}) {
  return (
    <g>
      {name === undefined ? null : <title>{`${name}: ${keyWords[standing]}`}</title>}
      <rect
        className={styles.plant}
        data-standing={standing}
        x={x}
        y={y}
        width={side}
        height={side}
        style={standing === "tied" ? { fill: `url(#${hatch})` } : undefined}
      />
      {standing === "barred" ? (
        <path className={styles.cross} d={`M${x} ${y}l${side} ${side}M${x + side} ${y}l-${side} ${side}`} />
      ) : null}
    </g>
  );
}
