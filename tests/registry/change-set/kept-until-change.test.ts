import { beforeEach, expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { keptUntilChange } from "@/lib/registry/change-set/kept-until-change";
import { recordVariety } from "@/lib/registry/varieties/record-variety";
import { emptyRegistry, granted } from "@/tests/setup/registry";

let db: Database;
let reads = 0;

beforeEach(async () => {
  db = await emptyRegistry();
  reads = 0;
});

const enterOne = async () => granted(await recordVariety(db, ownerHere(), { name: "Mere", crop: "pea" }));

const numbers = keptUntilChange(async (from: Database) => {
  reads += 1;
  return from.read.variety.count();
});

it("is read once while nothing changes, and again after a change", async () => {
  expect([await numbers(db), await numbers(db)]).toEqual([0, 0]);
  expect(reads).toBe(1);
  await enterOne();
  expect([await numbers(db), await numbers(db)]).toEqual([1, 1]);
  expect(reads).toBe(2);
});

it("is read once for all who ask at the same moment", async () => {
  expect(await Promise.all([numbers(db), numbers(db), numbers(db)])).toEqual([0, 0, 0]);
  expect(reads).toBe(1);
});

it("is kept for each registry apart", async () => {
  await enterOne();
  const other = await emptyRegistry();
  expect([await numbers(db), await numbers(other)]).toEqual([1, 0]);
});

it("is not kept where it failed", async () => {
  let fails = true;
  const once = keptUntilChange(async () => {
    if (fails) throw new Error("the disk is gone");
    return 7;
  });
  await expect(once(db)).rejects.toThrow("the disk is gone");
  fails = false;
  expect(await once(db)).toBe(7);
});
