import { describe, expect, it } from "vitest";
import { addOtherName } from "@/lib/registry/varieties/add-other-name";
import { lineageStanding } from "@/lib/registry/varieties/lineage-standing";
import { listVarieties } from "@/lib/registry/varieties/list-varieties";
import { readVariety } from "@/lib/registry/varieties/read-variety";
import { defaultSettings } from "@/lib/schemas/settings";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { manyLots } from "../lots/many-lots";
import { owner, withLot, withVariety } from "./with-variety";

const today = "2026-03-10";

describe("how a lineage stands", () => {
  const lot = { lineageFigures: true, diversityRetained: 0.9, founders: ["A"] };
  const lines = (line: string | null) => new Map([["A", line]]);

  it("is no figure for a crop kept by division", () => {
    expect(lineageStanding({ ...lot, lineageFigures: false }, "clonal", new Map())).toBe("clonal");
  });

  it("asks of a selfer's founder whether it is one line or many", () => {
    expect(lineageStanding(lot, "selfing", lines(null))).toBe("lines not known");
    expect(lineageStanding(lot, "selfing", lines("one"))).toBe("uniform");
    expect(lineageStanding(lot, "selfing", lines("many"))).toBe("counted");
  });

  it("does not ask it of a crosser, and is counted for a mixture of lines", () => {
    expect(lineageStanding(lot, "outcrossing", lines(null))).toBe("counted");
    const two = new Map([
      ["A", "one"],
      ["B", "one"],
    ]);
    expect(lineageStanding({ ...lot, founders: ["A", "B"] }, "selfing", two)).toBe("counted");
  });

  it("is not known where plants were not counted", () => {
    expect(lineageStanding({ ...lot, diversityRetained: null }, "outcrossing", new Map())).toBe("plants not known");
  });
});

describe("the list of varieties", () => {
  it("sums what is known and says how many are unknown", async () => {
    const db = await emptyRegistry();
    const { varietyIds } = await manyLots(db, 80);
    const first = varietyIds[0] as string;
    granted(await addOtherName(db, owner, first, { name: "Old Grey" }));
    await withLot(db, first, "Extra");
    const row = (await listVarieties(db, defaultSettings, today)).find((each) => each.id === first);
    // Two lots of 100 g less a gift of 10 g each, and one of which nothing is known; 40 of 50 seeds came up.
    expect(row).toMatchObject({ lots: 3, grams: 180, balancesUnknown: 1, otherNames: ["Old Grey"] });
    expect(row?.bestTest).toMatchObject({ normal: 40, sown: 50 });
  });

  it("keeps a variety without lots, with everything unknown or none", async () => {
    const db = await emptyRegistry();
    await withVariety(db);
    expect(await listVarieties(db, defaultSettings, today)).toMatchObject([
      { lots: 0, grams: null, places: 0, bestTest: null, diversityRetained: null, waiting: 0 },
    ]);
  });

  it("says clonal of garlic, and no percentage of a pea of unknown lines", async () => {
    const db = await emptyRegistry();
    await withLot(db, await withVariety(db, "Rook Garlic", "garlic"), "R1");
    await withLot(db, await withVariety(db), "Quern 1");
    const rows = await listVarieties(db, defaultSettings, today);
    expect(rows.map((row) => [row.name, row.standing, row.diversityRetained])).toEqual([
      ["Hollow Pea", "lines not known", null],
      ["Rook Garlic", "clonal", null],
    ]);
  });
});

describe("one variety", () => {
  it("is read with its lots, tests, holders and what waits", async () => {
    const db = await emptyRegistry();
    const { varietyIds } = await manyLots(db, 80);
    const read = await readVariety(db, varietyIds[3] as string, defaultSettings, today);
    expect(read?.lots.map((lot) => lot.number)).toEqual(["L 3", "L 43"]);
    expect(read?.tests).toMatchObject([
      { lot: "L 3", sown: 50, normal: 40, germination: 0.8 },
      { lot: "L 43", sown: 50, normal: 40 },
    ]);
    // Clopper & Pearson for 40 of 50, as tables give it: 0.6628 to 0.8997.
    expect(read?.tests[0]?.low).toBeCloseTo(0.6628, 4);
    expect(read?.tests[0]?.high).toBeCloseTo(0.8997, 4);
    expect(read?.growOuts).toMatchObject([{ name: "G43", lots: [{ number: "L 43" }] }]);
    expect(read?.holders).toHaveLength(2);
  });

  it("is null where there is none", async () => {
    expect(await readVariety(await emptyRegistry(), "none", defaultSettings, today)).toBeNull();
  });
});
