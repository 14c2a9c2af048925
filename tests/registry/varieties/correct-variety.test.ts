import { describe, expect, it } from "vitest";
import { correctVariety } from "@/lib/registry/varieties/correct-variety";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { owner, withVariety } from "./with-variety";

describe("a correction of a variety", () => {
  it("changes what is given and leaves the rest", async () => {
    const db = await emptyRegistry();
    const id = await withVariety(db, "Hollow Pea", "pea", { story: "From the mill.", aim: "improved" });
    granted(await correctVariety(db, owner, id, { plantsWanted: "40", isolationWantedM: "12,5" }));
    expect(await db.read.variety.findUniqueOrThrow({ where: { id } })).toMatchObject({
      name: "Hollow Pea",
      story: "From the mill.",
      aim: "improved",
      sensitivity: "circle",
      plantsWanted: 40,
      isolationWantedM: 12.5,
    });
  });

  it("fills an empty field without a reason, and asks for one where words are replaced", async () => {
    const db = await emptyRegistry();
    const id = await withVariety(db);
    granted(await correctVariety(db, owner, id, { story: "From the mill." }));
    const outcome = await correctVariety(db, owner, id, { story: "From the weir." });
    expect(outcome.ok ? null : outcome.refusals[0]).toMatchObject({ code: "reason-missing", path: ["reason"] });
    granted(await correctVariety(db, owner, id, { story: "From the weir.", reason: "the teller said so" }));
    const set = await db.read.changeSet.findFirstOrThrow({ orderBy: { number: "desc" } });
    expect(set.reason).toBe("the teller said so");
  });

  it("takes words out where the field is sent empty, with a reason", async () => {
    const db = await emptyRegistry();
    const id = await withVariety(db, "Hollow Pea", "pea", { story: "From the mill." });
    granted(await correctVariety(db, owner, id, { story: "", reason: "told of another" }));
    expect((await db.read.variety.findUniqueOrThrow({ where: { id } })).story).toBeNull();
  });

  it("may give the name another spelling, but not the name of another variety", async () => {
    const db = await emptyRegistry();
    const id = await withVariety(db, "hollow pea");
    await withVariety(db, "Mere Pea");
    granted(await correctVariety(db, owner, id, { name: "Hollow Pea", reason: "capitals" }));
    const outcome = await correctVariety(db, owner, id, { name: "MERE PEA", reason: "x" });
    expect(outcome.ok ? "" : outcome.refusals[0]?.code).toBe("name-taken");
  });

  it("names the number that is none, and keeps what stood", async () => {
    const db = await emptyRegistry();
    const id = await withVariety(db);
    const outcome = await correctVariety(db, owner, id, { plantsWanted: "about forty" });
    expect(outcome.ok ? null : outcome.refusals[0]?.path).toEqual(["plantsWanted"]);
  });

  it("that changes nothing leaves no entry in the history", async () => {
    const db = await emptyRegistry();
    const id = await withVariety(db);
    const before = await db.read.changeSet.count();
    expect(granted(await correctVariety(db, owner, id, { name: "Hollow Pea" })).changeSetId).toBeNull();
    expect(await db.read.changeSet.count()).toBe(before);
  });

  it("is refused for a variety that is not there", async () => {
    const db = await emptyRegistry();
    const outcome = await correctVariety(db, owner, "none", { note: "x" });
    expect(outcome.ok ? "" : outcome.refusals[0]?.code).toBe("unknown-variety");
  });
});
