import { Section } from "@/components/frame";
import { type Column, DataTable, type Row } from "@/components/tables";
import { plainNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { PlantOfGrowOut } from "@/lib/registry/grow-outs/plants-of-grow-out";
import type { GrowOutRead } from "@/lib/registry/grow-outs/read-grow-out";

const firstColumns: readonly Column[] = [
  { key: "plant", name: "Plant", kind: "words", phone: "lead" },
  { key: "cell", name: "Cell", kind: "words" },
  { key: "kept", name: "Kept", kind: "words" },
  { key: "seed", name: "Seed", kind: "count", phone: "aside" },
  { key: "marks", name: "Marks", kind: "words", phone: "none" },
];

/** Plants with their tags and scores, a column a trait. What was not scored is open, never nought. */
export function PlantsSection({
  read: { plants, traits, growOut },
  units,
}: {
  read: GrowOutRead;
  units: UnitSettings;
}) {
  if (plants.length === 0) return null;
  const marked = plants.some((plant) => plant.marks.length > 0);
  const columns: readonly Column[] = [
    ...firstColumns.filter((column) => column.key !== "marks" || marked),
    ...traits.map(
      (trait): Column => ({ key: `score:${trait}`, name: trait, kind: "count", phone: "under", phoneName: trait }),
    ),
  ];
  const kept = plants.filter((plant) => plant.kept).length;
  return (
    <Section id="plants" title="Plants and scores" aside={`${counted(plants.length, "plant")}, ${kept} kept`}>
      <DataTable
        caption="Plants and scores"
        noun="plant"
        columns={columns}
        rows={plants.map((plant) => plantRow(plant, traits, units))}
        path={`/grow-outs/${growOut.id}`}
        address={{ sort: null, columns: null, filter: "" }}
        filterLabel="Find a plant"
      />
    </Section>
  );
}

function plantRow(plant: PlantOfGrowOut, traits: readonly string[], units: UnitSettings): Row {
  const scores = traits.map((trait) => {
    const score = plant.scores.get(trait);
    const cell =
      score === undefined
        ? null
        : score.value === null
          ? (score.text ?? "")
          : {
              kind: "count" as const,
              words: `${plainNumber(score.value, 2)}${score.unit ? `\u00a0${score.unit}` : ""}`,
              sort: score.value,
            };
    return [`score:${trait}`, cell] as const;
  });
  return {
    id: plant.id,
    cells: {
      plant: plant.name,
      cell: plant.cell ?? "",
      kept: plant.kept === null ? null : plant.kept ? "yes" : "no",
      seed:
        plant.seedGrams === null
          ? null
          : { kind: "count", words: weight(plant.seedGrams, units), sort: plant.seedGrams },
      marks: plant.marks.map((mark) => [mark.tag, mark.intent, mark.words].filter(Boolean).join(" ")).join("; "),
      ...Object.fromEntries(scores),
    },
  };
}
