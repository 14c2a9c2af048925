import { uuidv7 } from "uuidv7";
import { expect, it } from "vitest";
import type { Database } from "@/lib/db";
import { savePlants } from "@/lib/registry/plants/save-plants";
import { changeTrait } from "@/lib/registry/traits/change-trait";
import { defineTrait } from "@/lib/registry/traits/define-trait";
import { checksOfTraits, historiesOfTraits } from "@/lib/registry/traits/history-of-trait";
import { readTraitRows, readTraitYears, type ScoredGrowOut } from "@/lib/registry/traits/read-trait-years";
import { pointsOfTrait, yearsCompared } from "@/lib/registry/traits/trait-over-years";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { savePlantsSchema, traitColumn } from "@/lib/schemas/plants/save-plants";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aSteward, aVariety } from "../lots/lots-in-tests";
import { owner, row } from "../plants/a-grow-out";

/** Two plants a grow-out, one below and one above the mean, in one cell. */
async function grown(db: Database, varietyId: string, name: string, year: number, column: string, mean: number) {
  const id = uuidv7();
  const sown = { sown: `${year}-05`, sownFirst: `${year}-05-01`, sownLast: `${year}-05-31` };
  await db.write.growOut.create({ data: { id, name, nameKey: name.toLowerCase(), varietyId, ...sown } });
  const rows = [mean - 1, mean + 1].map((value, at) =>
    row(`n${at}`, { tag: String(at + 1), cell: "A", [column]: String(value) }, {}, true),
  );
  const input = granted(parseForm(savePlantsSchema("north"), { on: `${year}-08`, stewardId: "", rows }));
  granted(await savePlants(db, owner, id, input, "north"));
  return id;
}

async function heights(db: Database) {
  const own = await aVariety(db, "Mere Flint", "maize-field");
  const check = await aVariety(db, "Stone Check", "maize-field");
  const of = { scope: "all", name: "height", kind: "measure", unit: "cm", direction: "lower" } as const;
  const traitId = granted(await defineTrait(db, owner, own, of)).value.traitId;
  return { own, check, traitId, column: traitColumn(traitId) };
}

onEveryEngine("a trait over the years", (fresh) => {
  it("is each grow-out's plants by the year of its sowing, with the check that was scored by the same trait", async () => {
    const db = await fresh();
    const { own, check, traitId, column } = await heights(db);
    // Means and differences of a worked example: the weather hides a decline of 2 1 −2 −3.
    for (const [year, mean, beside] of [
      [2001, 62, 60],
      [2008, 71, 70],
      [2015, 58, 60],
      [2024, 66, 69],
    ] as const) {
      await grown(db, own, `Mere ${year}`, year, column, mean);
      await grown(db, check, `Check ${year}`, year, column, beside);
    }
    const read = await readTraitYears(db, own, null);
    expect(read?.trait?.id).toBe(traitId);
    expect(read?.growOuts.map(({ name, year, plants }) => [name, year, plants.length])).toEqual([
      ["Mere 2001", 2001, 2],
      ["Mere 2008", 2008, 2],
      ["Mere 2015", 2015, 2],
      ["Mere 2024", 2024, 2],
    ]);
    expect(read?.checks).toEqual([{ varietyId: check, variety: "Stone Check", years: [2001, 2008, 2015, 2024] }]);
    const bare = yearsCompared(read?.growOuts ?? [], []);
    expect(bare?.outcome.ok && bare.outcome.value.trend).toBeNull();
    const compared = granted(
      yearsCompared(read?.growOuts ?? [], read?.others ?? [])?.outcome ?? { ok: false, refusals: [] },
    );
    expect(compared.years.map(({ mean, toCheck }) => [mean, toCheck?.difference])).toEqual([
      [62, 2],
      [71, 1],
      [58, -2],
      [66, -3],
    ]);
    expect(compared.trend?.s).toBe(-6);
    const rows = await readTraitRows(db, own);
    const [bareHistory] = rows ? historiesOfTraits(rows, null) : [];
    const histories = rows ? historiesOfTraits(rows, check) : [];
    expect(bareHistory).toMatchObject({ check: null, cycles: null });
    expect(histories.map(({ trait, check: beside }) => [trait.id, beside?.variety])).toEqual([
      [traitId, "Stone Check"],
    ]);
    expect(histories[0]?.compared?.outcome).toEqual({ ok: true, value: compared });
    expect(checksOfTraits(histories)).toEqual(read?.checks);
  });

  it("knows the kept by the plant or by its harvest, takes two people's scores of one plant as one, and mixes no versions", async () => {
    const db = await fresh();
    const { own, traitId, column } = await heights(db);
    const first = await grown(db, own, "Mere 2001", 2001, column, 62);
    const [low, high] = await db.read.plant.findMany({ where: { growOutId: first }, orderBy: { name: "asc" } });
    await db.write.plant.update({ where: { id: high?.id ?? "" }, data: { kept: true } });
    const scorer = await aSteward(db, "Osk Tarn");
    await db.write.score.create({
      data: { id: uuidv7(), plantId: low?.id ?? "", traitId, value: 67, on: "2001-08", stewardId: scorer },
    });
    granted(await changeTrait(db, owner, own, traitId, { name: "height", kind: "measure", unit: "m" }));
    await grown(db, own, "Mere 2008", 2008, column, 1.5);
    const read = await readTraitYears(db, own, traitId);
    const points = pointsOfTrait(read?.growOuts ?? []);
    expect(
      points.map(({ year, version, mean, kept, differential }) => [
        year,
        version.version,
        mean?.mean,
        kept?.mean,
        differential,
      ]),
    ).toEqual([
      // (61 + 67)/2 = 64 and 63; the kept 63 stands 0.5 below their mean
      [2001, 1, 63.5, 63, -0.5],
      [2008, 2, 1.5, undefined, null],
    ]);
    const compared = yearsCompared(read?.growOuts ?? [], []);
    expect(compared?.input.years.map(({ year }) => year)).toEqual([2008]);
  });

  it("compares with the check what stood beside it: on one plot, else with one steward, and nothing that stood apart", () => {
    const version = { id: "t", version: 1 } as ScoredGrowOut["version"];
    const growOut = (id: string, year: number, value: number, plots: string[], stewardId: string | null) =>
      ({
        ...{ id, year, version, place: { plots, stewardId } },
        plants: [value - 1, value + 1].map((each) => ({ value: each, kept: false, cell: null })),
      }) as unknown as ScoredGrowOut;
    const own = [
      growOut("on the plot", 2001, 62, ["p"], "one"),
      growOut("on another", 2001, 80, ["q"], "one"),
      growOut("with the same steward", 2002, 62, ["q"], "one"),
      growOut("far away", 2003, 62, ["r"], "two"),
      growOut("nobody knows", 2004, 62, [], null),
    ];
    const check = [2001, 2002, 2003, 2004].map((year) => growOut(`check ${year}`, year, 60, ["p"], "one"));
    const compared = yearsCompared(own, check);
    expect([...(compared?.beside ?? [])]).toEqual(["on the plot", "with the same steward", "nobody knows"]);
    const years = granted(compared?.outcome ?? { ok: false, refusals: [] }).years;
    expect(years.map(({ mean, toCheck }) => [mean, toCheck?.difference ?? null])).toEqual([
      [62, 2],
      [62, 2],
      [62, null],
      [62, 2],
    ]);
  });

  it("has off-type passes and no trait where none was scored; null where there is no such variety", async () => {
    const db = await fresh();
    const own = await aVariety(db, "Mere Flint", "maize-field");
    expect(await readTraitYears(db, own, null)).toMatchObject({ trait: null, growOuts: [], traits: [], passes: [] });
    expect(await readTraitYears(db, "nowhere", null)).toBeNull();
  });
});
