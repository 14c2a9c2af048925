import { describe, expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { mergeLots } from "@/lib/registry/lots/merge-lots";
import { sayTwoLots } from "@/lib/registry/lots/say-two-lots";
import { readSeasonRecords } from "@/lib/registry/season/read-season-records";
import { pairKey, perhapsOneLot } from "@/lib/registry/season/rules/perhaps-one-lot";
import { defaultSettings } from "@/lib/schemas/settings";
import { onEveryEngine } from "../../../setup/engines";
import { granted } from "../../../setup/registry";
import { aLot, aVariety } from "../../lots/lots-in-tests";
import { madeLot, madeRecords, today } from "../made-records";

const one = madeLot({ id: "a", number: "Quern 1", donorNumber: "H-07", holderId: "s" });
const other = madeLot({ id: "b", number: "Quern 9", donorNumber: "h-07", holderId: "s" });
const asked = (...lots: (typeof one)[]) => perhapsOneLot(madeRecords({ lots }));

describe("two records with the giver’s same number", () => {
  it("in one hand and of years that may be one are asked about, once", () => {
    expect(asked(other, one)).toMatchObject([{ lotId: "a", facts: { other: { id: "b", number: "Quern 9" } } }]);
    expect(asked(one, { ...other, yearFirst: null, yearLast: null })).toHaveLength(1);
  });

  it("are not asked about in two hands, of two varieties, of two years, as parts of a lot, or once they are said to be two", () => {
    expect(asked(one, { ...other, holderId: "t" })).toEqual([]);
    expect(asked(one, { ...other, varietyId: "v2" })).toEqual([]);
    expect(asked(one, { ...other, yearFirst: "2020-01-01", yearLast: "2020-12-31" })).toEqual([]);
    expect(asked(one, { ...other, kind: "split" })).toEqual([]);
    expect(asked(one, { ...other, donorNumber: null })).toEqual([]);
    expect(perhapsOneLot(madeRecords({ lots: [one, other], apart: new Set([pairKey("b", "a")]) }))).toEqual([]);
  });
});

onEveryEngine("what is asked of two records", (fresh) => {
  it("is asked no more once somebody says that they are two, or one", async () => {
    const db = await fresh();
    const owner = ownerHere();
    const varietyId = await aVariety(db);
    const ids: string[] = [];
    for (const number of ["Ham 1", "Ham 2", "Ham 3"])
      ids.push(await aLot(db, varietyId, { number, donorNumber: "77" }));
    const [first = "", second = "", third = ""] = ids;
    const pairs = async () =>
      perhapsOneLot(await readSeasonRecords(db, defaultSettings, today)).map(({ lotId, facts }) => [
        lotId,
        facts.other.id,
      ]);
    expect(await pairs()).toEqual([
      [first, second],
      [first, third],
      [second, third],
    ]);
    granted(await sayTwoLots(db, owner, { lotId: second, otherId: first, why: "two sacks" }, today));
    expect(await pairs()).toEqual([
      [first, third],
      [second, third],
    ]);
    const input = { other: "Ham 3", leads: "this" as const, parentage: false, why: "one sack" };
    granted(await mergeLots(db, owner, second, input));
    expect(await pairs()).toEqual([]);
    const outcome = await sayTwoLots(db, owner, { lotId: second, otherId: third, why: "no" }, today);
    expect(outcome.ok ? [] : outcome.refusals.map(({ code }) => code)).toEqual(["same-already"]);
  });
});
