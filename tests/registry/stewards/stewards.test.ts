import { describe, expect, it } from "vitest";
import { correctSteward } from "@/lib/registry/stewards/correct-steward";
import { listStewards } from "@/lib/registry/stewards/list-stewards";
import { recordSteward } from "@/lib/registry/stewards/record-steward";
import { confirmHolder } from "@/lib/registry/varieties/confirm-holder";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { owner, withLot, withSteward, withVariety } from "../varieties/with-variety";

describe("a steward", () => {
  it("keeps the name apart from the rest, so that a person can be erased", async () => {
    const db = await emptyRegistry();
    granted(await recordSteward(db, owner, { name: "Aldis Thornwick", kind: "grower", place: "Low Tarvish" }));
    const steward = await db.read.steward.findFirstOrThrow({ include: { person: true } });
    expect(steward).toMatchObject({ kind: "grower", place: "Low Tarvish", person: { name: "Aldis Thornwick" } });
  });

  it("is refused under a name that another has", async () => {
    const db = await emptyRegistry();
    await withSteward(db);
    const outcome = await recordSteward(db, owner, { name: "ALDIS THORNWICK" });
    expect(outcome.ok ? "" : outcome.refusals[0]?.code).toBe("name-taken");
  });

  it("is corrected, the own name included", async () => {
    const db = await emptyRegistry();
    const id = await withSteward(db);
    await withSteward(db, "Odalind Fenn");
    granted(await correctSteward(db, owner, id, { name: "Aldis Thornwick", place: "Nether Row" }));
    const outcome = await correctSteward(db, owner, id, { name: "odalind fenn" });
    expect(outcome.ok ? "" : outcome.refusals[0]?.code).toBe("name-taken");
    const gone = await correctSteward(db, owner, "none", { name: "x" });
    expect(gone.ok ? "" : gone.refusals[0]?.code).toBe("unknown-steward");
  });
});

describe("the list of stewards", () => {
  it("gives each by name with lots and the last word, and one without a name last", async () => {
    const db = await emptyRegistry();
    const [second, first] = [await withSteward(db, "Odalind Fenn"), await withSteward(db, "Aldis Thornwick")];
    const erased = await withSteward(db, "Somebody");
    await db.write.person.deleteMany({ where: { stewardId: erased } });
    const varietyId = await withVariety(db);
    await withLot(db, varietyId, "Quern 1", { holderId: second });
    for (const on of ["2020", "2024"]) {
      granted(await confirmHolder(db, owner, varietyId, { steward: "Odalind Fenn", still: "yes", on }, "2026-01-01"));
    }
    const list = await listStewards(db);
    expect(list.map((each) => each.id)).toEqual([first, second, erased]);
    expect(list[1]).toMatchObject({ lots: 1, lastWord: { on: "2024", variety: "Hollow Pea" } });
    expect(list[2]?.name).toBeNull();
  });
});
