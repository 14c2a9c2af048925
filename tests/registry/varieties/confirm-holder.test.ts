import { describe, expect, it } from "vitest";
import { confirmHolder } from "@/lib/registry/varieties/confirm-holder";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { owner, withLot, withSteward, withVariety } from "./with-variety";

const today = "2026-03-10";

describe("a holder's word", () => {
  it("is of today where no day is said, and may name a lot", async () => {
    const db = await emptyRegistry();
    const id = await withVariety(db);
    const stewardId = await withSteward(db);
    const lotId = await withLot(db, id);
    const typed = { steward: "Aldis Thornwick", still: "yes", lot: "quern 1", grams: "12.5" };
    granted(await confirmHolder(db, owner, id, typed, today));
    expect(await db.read.holderConfirmation.findFirstOrThrow()).toMatchObject({
      stewardId,
      lotId,
      on: today,
      onFirst: today,
      still: "yes",
      grams: 12.5,
    });
  });

  it("may be as vague as it is known", async () => {
    const db = await emptyRegistry();
    const id = await withVariety(db);
    await withSteward(db);
    granted(await confirmHolder(db, owner, id, { steward: "Aldis Thornwick", still: "no", on: "2024~" }, today));
    expect(await db.read.holderConfirmation.findFirstOrThrow()).toMatchObject({ on: "2024~", onLast: "2024-12-31" });
  });

  it("cannot be of a day to come, of nobody, nor of a lot of another variety", async () => {
    const db = await emptyRegistry();
    const id = await withVariety(db);
    await withSteward(db);
    await withLot(db, await withVariety(db, "Mere Pea"), "Quern 9");
    const said = async (patch: Record<string, string>) => {
      const outcome = await confirmHolder(db, owner, id, { steward: "Aldis Thornwick", still: "yes", ...patch }, today);
      return outcome.ok ? null : outcome.refusals[0]?.code;
    };
    expect(await said({ on: "2026-03-11" })).toBe("in-the-future");
    expect(await said({ steward: "Nobody Here" })).toBe("unknown-steward");
    expect(await said({ lot: "Quern 9" })).toBe("unknown-lot");
    expect(await said({ still: "perhaps" })).toBe("not-one-of");
    expect(await db.read.holderConfirmation.count()).toBe(0);
  });
});
