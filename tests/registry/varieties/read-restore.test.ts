import { expect, test } from "vitest";
import { readSettings } from "@/lib/registry/settings/read-settings";
import { readRestore } from "@/lib/registry/varieties/read-restore";
import { readVariety } from "@/lib/registry/varieties/read-variety";
import { parseDate } from "@/lib/science/dates/parse-date";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aLot, anEntry, aSteward, aTest, aVariety } from "../lots/lots-in-tests";

onEveryEngine("what a variety is restored with", (fresh) => {
  test("living lots in any hands, what stands against each, and the living seeds that go beyond what their holder keeps", async () => {
    const db = await fresh();
    const varietyId = await aVariety(db, "Rain Flint", "maize-field", { plantsWanted: 100 });
    const jar = async (number: string, germinated: number, more: object = {}) => {
      const holderId = await aSteward(db, `Holder of ${number}`);
      const id = await aLot(db, varietyId, {
        ...{
          number,
          year: "2020",
          inbreeding: 0,
          founderLines: "many",
          treatment: "none",
          thousandSeedGrams: 250,
          holderId,
          ...more,
        },
      });
      await anEntry(db, id, "harvested", 500, "2020-10-01");
      await aTest(db, id, `T ${number}`, "2024-02-01", 50, germinated);
      return id;
    };
    const seen = await jar("Seen", 40, { identityGrade: "same harvest year after year" });
    await jar("Guessed", 45, { identityGrade: "guessed from seed" });
    await jar("Waits", 45, { status: "hold" });
    await jar("Dead", 0);
    const settings = await readSettings(db.read);
    const today = granted(parseDate("2026-03-01")).first;
    const variety = await readVariety(db, varietyId, settings, today);
    if (!variety) throw new Error("no such variety");
    const { lots, seedsWanted } = await readRestore(db, variety, { settings, today });
    const against = Object.fromEntries(lots.map((lot) => [lot.number, lot.against.map(({ code }) => code)]));
    expect(against).toMatchObject({ Seen: [], Guessed: ["identity-not-verified"], Waits: ["on-hold"] });
    expect(against.Dead).toContain("nothing-lives");
    // 500 g of seeds of 0.25 g are 2,000; 40 of 50 came up: 1,600 live.
    expect(lots.find((lot) => lot.id === seen)).toMatchObject({ living: 1600, livingPerGram: 3.2 });
    expect(seedsWanted?.plants).toBe(100);
  });
});
