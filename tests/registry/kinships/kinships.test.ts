import { beforeEach, expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { correctKinship, takeKinshipAway } from "@/lib/registry/kinships/correct-kinship";
import { readFounders } from "@/lib/registry/kinships/read-founders";
import { recordKinship } from "@/lib/registry/kinships/record-kinship";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { CorrectKinshipSchema, KinshipSchema } from "@/lib/schemas/lots/lineage-claims";
import type { Outcome } from "@/lib/science/outcome";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aLot, aVariety } from "../lots/lots-in-tests";

const owner = ownerHere();
const faultsOf = (outcome: Outcome<unknown>) =>
  outcome.ok ? [] : outcome.refusals.map((each) => `${each.code} at ${each.path.join(".")}`);
const usual = { first: "Ham 1", second: "Ham 2", kind: "same source", how: "two packets of one bag" };

onEveryEngine("how founder lots are related", (fresh) => {
  let db: Database;
  let varietyId: string;
  const record = (more: Record<string, string> = {}) =>
    recordKinship(db, owner, granted(parseForm(KinshipSchema, { ...usual, ...more })));

  beforeEach(async () => {
    db = await fresh();
    varietyId = await aVariety(db);
    await aLot(db, varietyId, { number: "Ham 1" });
    await aLot(db, varietyId, { number: "Ham 2" });
    await aLot(db, varietyId, { number: "Ham 3" });
    await aLot(db, varietyId, { number: "Ham 4", kind: "split" });
  });

  test("is open for every pair until somebody writes it", async () => {
    const open = async () => (await readFounders(db, varietyId))?.open.map((two) => two.map(({ number }) => number));
    expect(await open()).toEqual([
      ["Ham 1", "Ham 2"],
      ["Ham 1", "Ham 3"],
      ["Ham 2", "Ham 3"],
    ]);
    granted(await record({ first: "Ham 3", second: "ham 1", kind: "unrelated" }));
    expect(await open()).toEqual([
      ["Ham 1", "Ham 2"],
      ["Ham 2", "Ham 3"],
    ]);
    expect((await readFounders(db, varietyId))?.kinships).toMatchObject([
      { first: "Ham 3", second: "Ham 1", kind: "unrelated", coancestry: null },
    ]);
    expect(await readFounders(db, "nobody")).toBeNull();
  });

  test("is put right with a reason, taken back and taken away", async () => {
    const { kinshipId } = granted(await record()).value;
    const right = { kind: "coancestry", coancestry: "0.125", how: "half sibs, by the papers", why: "papers found" };
    const correct = (more: Record<string, string> = {}) =>
      correctKinship(db, owner, kinshipId, granted(parseForm(CorrectKinshipSchema, { ...right, ...more })));
    const done = granted(await correct());
    expect(await db.read.founderKinship.findFirst()).toMatchObject({ kind: "coancestry", coancestry: 0.125 });
    expect(faultsOf(await correct())).toEqual(["as-it-is at kind"]);
    granted(await undoChangeSet(db, owner, done.changeSetId ?? ""));
    expect(await db.read.founderKinship.findFirst()).toMatchObject({ kind: "same source", coancestry: null });
    granted(await takeKinshipAway(db, owner, kinshipId, "she was not sure"));
    expect(await db.read.founderKinship.count()).toBe(0);
    expect(faultsOf(await takeKinshipAway(db, owner, kinshipId, "again"))).toEqual(["unknown at kinship"]);
  });

  test("is refused for a pair that stands, one lot twice, no founder, another crop, a coancestry out of place", async () => {
    granted(await record());
    const pea = await aVariety(db, "Mere Pea", "pea");
    await aLot(db, pea, { number: "Pea 1" });
    expect(faultsOf(await record({ first: "Ham 2", second: "Ham 1" }))).toEqual(["recorded-already at second"]);
    const three = await db.read.lot.findFirstOrThrow({ where: { number: "Ham 3" } });
    await db.write.lot.updateMany({ where: { number: "Ham 2" }, data: { sameAsId: three.id } });
    expect(faultsOf(await record({ second: "Ham 3" }))).toEqual(["recorded-already at second"]);
    await db.write.lot.updateMany({ where: { number: "Ham 2" }, data: { sameAsId: null } });
    expect(faultsOf(await record({ second: "Ham 1" }))).toEqual(["of-itself at second"]);
    expect(faultsOf(await record({ second: "Ham 4" }))).toEqual(["no-founder at second"]);
    expect(faultsOf(await record({ second: "Ham 77" }))).toEqual(["unknown-lot at second"]);
    expect(faultsOf(await record({ second: "Pea 1" }))).toEqual(["other-crop at second"]);
    expect(faultsOf(await record({ second: "Ham 3", coancestry: "0.2" }))).toEqual([
      "coancestry-misplaced at coancestry",
    ]);
    expect(faultsOf(await record({ second: "Ham 3", kind: "coancestry" }))).toEqual(["missing at coancestry"]);
    expect(faultsOf(parseForm(KinshipSchema, { ...usual, how: "", coancestry: "3" }))).toEqual([
      "too-large at coancestry",
      "missing at how",
    ]);
  });
});
