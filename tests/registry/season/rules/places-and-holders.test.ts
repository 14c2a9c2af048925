import { describe, expect, it } from "vitest";
import { holderNotConfirmed } from "@/lib/registry/season/rules/holder-not-confirmed";
import { onePlaceOnly } from "@/lib/registry/season/rules/one-place-only";
import type { Holder } from "@/lib/registry/varieties/holders";
import { madeRecords } from "../made-records";

const held = (patch: Partial<Holder> = {}): Holder => ({
  stewardId: "s1",
  lots: [],
  confirmed: true,
  why: null,
  last: { day: "2025-06-01", how: "word" },
  places: 1,
  ...patch,
});
const records = (...holders: Holder[]) =>
  madeRecords({ holders: new Map([["v1", holders]]), names: new Map([["s1", "Aldis"]]) });
const silent = held({ stewardId: "s2", confirmed: false, why: "heard too long ago" });

describe("a variety in one place only", () => {
  it("waits with one confirmed place, not with two", () => {
    expect(onePlaceOnly(records(held()))[0]?.facts).toEqual({ places: 1, notConfirmed: 0 });
    expect(onePlaceOnly(records(held(), held({ stewardId: "s2" })))).toEqual([]);
    expect(onePlaceOnly(records(held({ places: 2 })))).toEqual([]);
  });

  it("does not count a holder who is not confirmed, and says how many there are", () => {
    expect(onePlaceOnly(records(held(), silent))[0]?.facts).toEqual({ places: 1, notConfirmed: 1 });
  });

  it("does not count one who said that it is gone among the holders", () => {
    const gone = held({ stewardId: "s3", confirmed: false, why: "said no" });
    expect(onePlaceOnly(records(held(), gone))[0]?.facts).toEqual({ places: 1, notConfirmed: 0 });
  });

  it("cannot wait where no place is confirmed at all", () => {
    expect(onePlaceOnly(records(silent))[0]?.urgency).toBe(0);
  });

  it("is no matter where nobody has seed on record", () => {
    expect(onePlaceOnly(records())).toEqual([]);
  });
});

describe("a holder who is not confirmed", () => {
  it("waits when nothing was heard or too long ago", () => {
    expect(holderNotConfirmed(records(held()))).toEqual([]);
    expect(holderNotConfirmed(records(silent))[0]?.facts.holder.stewardId).toBe("s2");
    expect(holderNotConfirmed(records({ ...silent, why: "nothing heard" }))).toHaveLength(1);
  });

  it("does not wait after a clear no, nor where the seed is too old: that is another rule", () => {
    expect(holderNotConfirmed(records({ ...silent, why: "said no" }))).toEqual([]);
    expect(holderNotConfirmed(records({ ...silent, why: "seed past its usual life" }))).toEqual([]);
  });

  it("is never the keeper of this registry, who can look into the jar", () => {
    expect(holderNotConfirmed(records({ ...silent, stewardId: null }))).toEqual([]);
  });
});
