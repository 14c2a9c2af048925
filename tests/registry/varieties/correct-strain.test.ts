import { beforeEach, expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { addStrain } from "@/lib/registry/varieties/add-strain";
import { correctStrain } from "@/lib/registry/varieties/correct-strain";
import { readStrain } from "@/lib/registry/varieties/read-strain";
import type { Outcome } from "@/lib/science/outcome";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aLot, aSteward, aVariety } from "../lots/lots-in-tests";

const owner = ownerHere();
const faultsOf = (outcome: Outcome<unknown>) =>
  outcome.ok ? [] : outcome.refusals.map((each) => `${each.code} at ${each.path.join(".")}`);

onEveryEngine("a strain", (fresh) => {
  let db: Database;
  let varietyId: string;
  let strainId: string;
  const typed = { name: "Rin’s keeping", relation: "possibly the same", keptFrom: "1991~" };

  beforeEach(async () => {
    db = await fresh();
    varietyId = await aVariety(db);
    strainId = granted(await addStrain(db, owner, varietyId, typed)).value.strainId;
  });

  test("grown side by side is said to be the same; what was said before stays in the history", async () => {
    await aSteward(db, "Rin Olderwick");
    const lotId = await aLot(db, varietyId, { number: "Ham 8", strainId });
    const right = { ...typed, relation: "same", steward: "Rin Olderwick", reason: "grown side by side in 2026" };
    const { changeSetId } = granted(await correctStrain(db, owner, strainId, right));
    expect(await readStrain(db, strainId)).toMatchObject({
      ...{ relation: "same", keeper: "Rin Olderwick", variety: "Hamble Long" },
      lots: [{ id: lotId, number: "Ham 8" }],
    });
    const change = await db.read.change.findFirstOrThrow({ where: { changeSetId: changeSetId ?? "" } });
    expect(JSON.parse(change.before ?? "{}").relation).toBe("possibly the same");
  });

  test("keeps a keeper whose name was erased, and lets go of one that is taken out of the form", async () => {
    const keeper = await aSteward(db, "Rin Olderwick");
    const named = { ...typed, steward: "Rin Olderwick", reason: "looked" };
    const keeperOf = async () => (await db.read.strain.findUniqueOrThrow({ where: { id: strainId } })).stewardId;
    granted(await correctStrain(db, owner, strainId, named));
    granted(await correctStrain(db, owner, strainId, { ...typed, reason: "nobody kept it" }));
    expect(await keeperOf()).toBeNull();
    granted(await correctStrain(db, owner, strainId, named));
    await db.write.person.delete({ where: { stewardId: keeper } });
    granted(await correctStrain(db, owner, strainId, { ...typed, reason: "a year put right" }));
    expect(await keeperOf()).toBe(keeper);
  });

  test("is not put right without a reason, under a name that another has, or with years that cross", async () => {
    granted(await addStrain(db, owner, varietyId, { name: "Osk’s keeping" }));
    const reason = "looked";
    expect(faultsOf(await correctStrain(db, owner, strainId, typed))).toEqual(["reason-missing at reason"]);
    expect(faultsOf(await correctStrain(db, owner, strainId, { ...typed, name: "osk's keeping", reason }))).toEqual([
      "name-taken at name",
    ]);
    expect(faultsOf(await correctStrain(db, owner, strainId, { ...typed, keptTo: "1980", reason }))).toEqual([
      "dates-crossed at keptTo",
    ]);
    expect(faultsOf(await correctStrain(db, owner, "none", { ...typed, reason }))).toEqual(["unknown-strain at "]);
  });
});
