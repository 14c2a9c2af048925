import { expect, it } from "vitest";
import type { Database } from "@/lib/db";
import { plantsOfGrowOut } from "@/lib/registry/grow-outs/plants-of-grow-out";
import { changeTrait, removeTrait } from "@/lib/registry/traits/change-trait";
import { defineTrait } from "@/lib/registry/traits/define-trait";
import { listTraits } from "@/lib/registry/traits/list-traits";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aVariety } from "../lots/lots-in-tests";
import { aGrowOut, owner, row, save } from "../plants/a-grow-out";

const scale = { name: "vigour", kind: "scale", direction: "higher", steps: "1 = weak\n9 = strong" };
const reversed = { name: "vigour", kind: "scale", direction: "lower", steps: "1 = strong\n9 = weak" };

async function scored(db: Database) {
  const grown = await aGrowOut(db);
  granted(await save(db, grown.id, [row("n", { tag: "1", [grown.vigour]: "7" }, {}, true)]));
  const plant = (await db.read.plant.findFirstOrThrow()).id;
  return { ...grown, plant };
}

onEveryEngine("traits", (fresh) => {
  it("are defined for a variety, for every variety of the crop, or for all", async () => {
    const db = await fresh();
    const flint = await aVariety(db, "Mere Flint", "maize-field");
    const dent = await aVariety(db, "Quern Dent", "maize-field");
    const bean = await aVariety(db, "Hamble Long");
    const define = (scope: string, name: string) =>
      defineTrait(db, owner, flint, { scope, name, kind: "count" }).then(granted);
    await define("variety", "ears");
    await define("crop", "tillers");
    await define("all", "pods");
    const names = async (id: string) => (await listTraits(db, id)).map((trait) => trait.newest.name);
    expect(await names(flint)).toEqual(["ears", "tillers", "pods"]);
    expect(await names(dent)).toEqual(["tillers", "pods"]);
    expect(await names(bean)).toEqual(["pods"]);
    const again = await defineTrait(db, owner, flint, { scope: "variety", name: "EARS", kind: "count" });
    expect(again.ok ? [] : again.refusals.map((each) => each.sentence)).toEqual([
      '"EARS" is a trait already; give it another name, or change the trait ears',
    ]);
    granted(await defineTrait(db, owner, dent, { scope: "variety", name: "ears", kind: "count" }));
  });

  it("that were used get a new version, and old scores keep the one that they were given by", async () => {
    const db = await fresh();
    const { id, varietyId, vigour, vigourId, plant } = await scored(db);
    const changed = granted(await changeTrait(db, owner, varietyId, vigourId, reversed)).value;
    expect(changed.version).toBe(2);
    expect(await db.read.trait.findUniqueOrThrow({ where: { id: changed.traitId } })).toMatchObject({
      ...{ previousId: vigourId, direction: "lower", varietyId },
    });
    const line = (await listTraits(db, varietyId))[0];
    expect(line?.versions.map((version) => version.direction)).toEqual(["higher", "lower"]);
    expect([...(line?.scores.values() ?? [])]).toEqual([1, 0]);
    granted(await save(db, id, [row("m", { tag: "2", [vigour]: "weak" }, {}, true)]));
    const { plants } = await plantsOfGrowOut(db, id);
    // "weak" was 1 in the first version, and is 9 in the second
    expect(plants.map((each) => each.scores.get(vigourId)?.map((score) => [score.value, score.traitId]))).toEqual([
      [[7, vigourId]],
      [[9, changed.traitId]],
    ]);
    granted(await save(db, id, [row(plant, { [vigour]: "3" }, { [vigour]: "7" })]));
    expect((await plantsOfGrowOut(db, id)).plants[0]?.scores.get(vigourId)).toMatchObject([
      { value: 3, traitId: changed.traitId },
    ]);
    const older = await changeTrait(db, owner, varietyId, vigourId, scale);
    expect(older.ok ? [] : older.refusals.map((each) => each.code)).toEqual(["older-version"]);
  });

  it("that nobody used are changed in place, and can be taken away", async () => {
    const db = await fresh();
    const { varietyId, vigourId, silkId } = await aGrowOut(db);
    expect(granted(await changeTrait(db, owner, varietyId, vigourId, reversed)).value).toEqual({
      ...{ traitId: vigourId, version: 1 },
    });
    granted(await removeTrait(db, owner, varietyId, silkId));
    expect((await listTraits(db, varietyId)).map((trait) => trait.newest.name)).toEqual(["vigour"]);
  });

  it("that were used cannot be taken away, even where the score was taken back", async () => {
    const db = await fresh();
    const { id, varietyId, vigour, vigourId, plant } = await scored(db);
    granted(await save(db, id, [row(plant, { [vigour]: "" }, { [vigour]: "7" })]));
    const outcome = await removeTrait(db, owner, varietyId, vigourId);
    expect(outcome.ok ? [] : outcome.refusals.map((each) => each.code)).toEqual(["trait-used"]);
  });

  it("take a new name in all their versions; what is the same changes nothing", async () => {
    const db = await fresh();
    const { varietyId, vigourId } = await scored(db);
    const { traitId } = granted(await changeTrait(db, owner, varietyId, vigourId, reversed)).value;
    granted(await changeTrait(db, owner, varietyId, traitId, { ...reversed, name: "strength" }));
    const named = await db.read.trait.findMany({ where: { nameKey: "strength" }, orderBy: { version: "asc" } });
    expect(named.map((trait) => trait.version)).toEqual([1, 2]);
    const same = granted(await changeTrait(db, owner, varietyId, traitId, { ...reversed, name: "strength" }));
    expect(same.changeSetId).toBeNull();
    const taken = await changeTrait(db, owner, varietyId, traitId, { ...reversed, name: "Silk red" });
    expect(taken.ok ? [] : taken.refusals.map((each) => each.path)).toEqual([["name"]]);
    expect((await changeTrait(db, owner, varietyId, "none", scale)).ok).toBe(false);
  });
});
