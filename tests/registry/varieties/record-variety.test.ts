import { describe, expect, it } from "vitest";
import { recordVariety } from "@/lib/registry/varieties/record-variety";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { owner, withVariety } from "./with-variety";

describe("a new variety", () => {
  it("is kept under its name as written, with its crop found by key or common name", async () => {
    const db = await emptyRegistry();
    const byKey = await withVariety(db, "  Hollow   Pea ", "pea");
    const byName = await withVariety(db, "Mere Flint", "MAIZE, FIELD AND FLOUR");
    const rows = await db.read.variety.findMany({ include: { crop: true }, orderBy: { name: "asc" } });
    expect(rows.map((row) => [row.id, row.name, row.crop.key])).toEqual([
      [byKey, "Hollow Pea", "pea"],
      [byName, "Mere Flint", "maize-field"],
    ]);
  });

  it("keeps empty fields as not known", async () => {
    const db = await emptyRegistry();
    const id = await withVariety(db, "Hollow Pea", "pea", { story: "  ", aim: "", typeDescription: "tall" });
    expect(await db.read.variety.findUniqueOrThrow({ where: { id } })).toMatchObject({
      story: null,
      aim: null,
      typeDescription: "tall",
      sensitivity: "circle",
    });
  });

  it("is refused without a name and without a crop, each at its field", async () => {
    const db = await emptyRegistry();
    const outcome = await recordVariety(db, owner, { name: " ", crop: "" });
    expect(outcome.ok ? [] : outcome.refusals.map((each) => each.path)).toEqual([["name"], ["crop"]]);
  });

  it("is refused under the name of another, written a little differently", async () => {
    const db = await emptyRegistry();
    await withVariety(db, "Ferryman's Pea");
    const outcome = await recordVariety(db, owner, { name: "FERRYMAN’S  pea", crop: "oat" });
    expect(outcome.ok ? null : outcome.refusals[0]).toMatchObject({ code: "name-taken", path: ["name"] });
    expect(await db.read.variety.count()).toBe(1);
  });

  it("is refused for a crop that is not on the list, with the nearest names", async () => {
    const db = await emptyRegistry();
    const outcome = await recordVariety(db, owner, { name: "Mere", crop: "Parsnp" });
    expect(outcome.ok ? "" : outcome.refusals[0]?.sentence).toContain('did you mean "Parsnip"?');
    expect(await db.read.crop.count({ where: { own: true } })).toBe(0);
  });

  it("makes a crop of the steward's own where that is said, with an empty profile", async () => {
    const db = await emptyRegistry();
    granted(await recordVariety(db, owner, { name: "Mere", crop: "Sea kale", ownCrop: "yes" }));
    const crop = await db.read.crop.findFirstOrThrow({ where: { own: true } });
    expect(crop).toMatchObject({ commonName: "Sea kale", matingSystem: null, plantsMin: null });
  });

  it("is refused to somebody who may only read", async () => {
    const db = await emptyRegistry();
    const outcome = await recordVariety(db, { ...owner, role: "reader" }, { name: "Mere", crop: "pea" });
    expect(outcome.ok ? "" : outcome.refusals[0]?.code).toBe("not-allowed");
  });
});
