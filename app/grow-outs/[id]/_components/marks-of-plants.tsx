import { SimpleTable } from "@/components/tables";
import { counted, listed } from "@/lib/display/plurals";
import type { MarksInShort } from "@/lib/registry/plants/marks-in-short";
import { intents } from "@/lib/schemas/plants/plant-cells";

const columns = [
  { key: "cell", name: "Cell" },
  { key: "plants", name: "Plants", kind: "count" },
  { key: "keep", name: "Marked keep", kind: "count" },
] as const;

const mostCells = 24;

/** How many plants are marked keep, watch and pull, whether that is enough, and how those to be kept are spread over the plot. */
export function MarksOfPlants({
  marks,
  kept,
  wanted,
}: {
  marks: MarksInShort;
  /** plants of which seed was kept */
  kept: number;
  /** seed parents that are planned, or that the variety should have */
  wanted: number | null;
}) {
  const { keep } = marks.intents;
  const told = [
    ...intents.map((intent) => `${marks.intents[intent]} ${intent}`),
    ...(marks.unmarked > 0 ? [`${marks.unmarked} not marked`] : []),
  ];
  const marked = marks.unmarked < marks.plants;
  const cells = marks.cells.filter((cell) => cell.cell !== null);
  const withKeep = cells.filter((cell) => cell.keep > 0);
  const blocks = cells.length > 1 && cells.length <= mostCells && cells.some((cell) => cell.plants > 1);
  return (
    <>
      <p className="counts">
        {counted(marks.plants, "plant")} on record{marked ? `: ${listed(told)}` : ", none marked yet"}.
        {kept > 0 ? ` Seed of ${kept} was kept.` : ""}
      </p>
      {keep > 0 && wanted !== null ? (
        <p className={keep < wanted ? "waits" : undefined}>
          {keep < wanted
            ? `${wanted - keep} more to be marked keep for the ${wanted} seed parents that are wanted; mark some to spare, a few are always lost.`
            : `As many as the ${wanted} seed parents that are wanted${keep > wanted ? `, and ${keep - wanted} to spare` : ""}.`}
        </p>
      ) : null}
      {marks.disputed.length > 0 ? (
        <p className="waits">
          {counted(marks.disputed.length, "plant")} {marks.disputed.length === 1 ? "is" : "are"} marked otherwise by two
          people; the newest mark is counted.
        </p>
      ) : null}
      {keep > 0 && cells.length > 1 ? (
        <p>
          Those to be kept stand in {withKeep.length} of {counted(cells.length, "cell")}.
          {withKeep.length * 2 < cells.length && keep > withKeep.length
            ? " Kept from a corner only, they may be the best fed and not the best."
            : ""}
        </p>
      ) : null}
      {keep > 0 && blocks ? (
        <SimpleTable
          columns={columns}
          rows={marks.cells.map((cell) => ({
            id: cell.cell ?? "",
            cells: { cell: cell.cell ?? "not written", plants: cell.plants, keep: cell.keep },
          }))}
        />
      ) : null}
    </>
  );
}
