import { describe, expect, it } from "vitest";
import { furtherSpecs } from "@/lib/registry/notebook/further/specs";
import { notebookTables } from "@/lib/schemas/notebook/columns";
import { SeedCoatSchema } from "@/lib/schemas/varieties/seed-coat";
import { cropList } from "@/lib/science/crops/crop-profile";
import { scenarioFolder } from "@/seed-scenario/scenario-folder";
import { type CsvRow, rowsOf } from "./circle-folder";

const namesOf = (file: string, column: string) => new Set(rowsOf(file).map((row) => row[column] ?? ""));
const stewards = namesOf("stewards.csv", "steward");
const varieties = namesOf("varieties.csv", "variety");
const growOuts = namesOf("grow_outs.csv", "grow_out");
const lots = namesOf("lots.csv", "lot");
const tests = namesOf("tests.csv", "test");
const places = new Set(rowsOf("places.csv").map(({ name, steward }) => `${name} (${steward})`));
const crops = new Set(cropList().map(({ key }) => key));

/** Columns that name a record, in whatever file they stand. */
const naming: Readonly<Record<string, ReadonlySet<string>>> = {
  steward: stewards,
  holder: stewards,
  from_steward: stewards,
  to_steward: stewards,
  variety: varieties,
  grow_out: growOuts,
  lot: lots,
  new_lot: lots,
  test: tests,
  crop: crops,
  place: places,
};

function lotsNamedIn(text: string): string[] {
  return text.split(";").map((part) => part.replace(/:[\d.]+$/, ""));
}

describe("every file of the demonstration circle", () => {
  const files = [...scenarioFolder().keys()];

  it("has columns that a reader of the folder knows", () => {
    const known = new Map<string, readonly string[]>([
      ...Object.values(notebookTables).map(({ file, columns }) => [file, Object.keys(columns)] as const),
      ...furtherSpecs.map(({ file, columns }) => [file, columns.map(({ column }) => column)] as const),
    ]);
    for (const file of files) {
      const columns = Object.keys(rowsOf(file)[0] ?? {}).filter((column) => !column.startsWith("score:"));
      expect(known.get(file), file).toEqual(expect.arrayContaining(columns));
    }
    expect(files.length).toBeGreaterThan(20);
  });

  it("names only what stands in the folder", () => {
    const lost: string[] = [];
    // A village stands in the column "place" of these.
    const villages = new Set(["stewards.csv", "plots.csv", "strains.csv"]);
    for (const file of files) {
      for (const row of rowsOf(file)) {
        for (const [column, names] of Object.entries(naming)) {
          const name = row[column] ?? "";
          if (column === "place" && villages.has(file)) continue;
          if (name !== "" && !names.has(name)) lost.push(`${file}: ${column} ${name}`);
        }
      }
    }
    expect(lost).toEqual([]);
  });

  it("says each name once", () => {
    for (const [file, column] of [
      ["stewards.csv", "steward"],
      ["varieties.csv", "variety"],
      ["grow_outs.csv", "grow_out"],
      ["lots.csv", "lot"],
      ["containers.csv", "code"],
      ["variety_details.csv", "variety"],
      ["grow_out_details.csv", "grow_out"],
      ["test_details.csv", "test"],
    ] as const) {
      expect(namesOf(file, column).size, file).toBe(rowsOf(file).length);
    }
  });
});

describe("what is said of a record beside its row", () => {
  it("of a variety is a seed coat that can be drawn", () => {
    const coats = rowsOf("variety_details.csv").map(({ seed_coat = "" }) =>
      SeedCoatSchema.safeParse(JSON.parse(seed_coat)),
    );
    expect(coats.filter(({ success }) => !success)).toEqual([]);
  });

  it("of a lot is of a lot that is there, said once", () => {
    const said = rowsOf("lot_details.csv").map(({ lot = "" }) => lot);
    expect(said.length).toBeGreaterThan(10);
    expect(new Set(said).size).toBe(said.length);
    expect(said.filter((lot) => !lots.has(lot))).toEqual([]);
  });
});

describe("where a lot comes from", () => {
  const byName = new Map(rowsOf("lots.csv").map((row) => [row.lot ?? "", row]));

  function parentsOf({ kind, from = "" }: CsvRow): string[] {
    if (kind === "founder") return [];
    if (kind !== "harvest") return lotsNamedIn(from);
    const growOut = rowsOf("grow_outs.csv").find(({ grow_out }) => grow_out === from);
    return growOut ? lotsNamedIn(growOut.parents ?? "") : ["missing"];
  }

  it("stands in the folder, is of the same variety, and never leads back to itself", () => {
    const settled = new Set<string>();
    // The rows stand parents first: a lot whose parents all stand before it can have no ring above it.
    for (const [name, row] of byName) {
      for (const parent of parentsOf(row)) {
        expect(settled.has(parent), `${name} from ${parent}`).toBe(true);
        expect(byName.get(parent)?.variety).toBe(row.variety);
      }
      settled.add(name);
    }
  });

  it("has shares of sum 1 where there are several parents", () => {
    const texts = [...byName.values()].filter(({ kind }) => kind === "blend").map(({ from }) => from ?? "");
    texts.push(
      ...rowsOf("grow_outs.csv")
        .map(({ parents = "" }) => parents)
        .filter((text) => text.includes(":")),
    );
    expect(texts.length).toBeGreaterThan(8);
    for (const text of texts) {
      const sum = text.split(";").reduce((total, part) => total + Number(part.split(":")[1]), 0);
      expect(sum, text).toBeCloseTo(1, 9);
    }
  });
});
