import { expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { recordContainer } from "@/lib/registry/containers/record-container";
import { recordHistory } from "@/lib/registry/history/record-history";
import { correctLedgerEntry } from "@/lib/registry/ledger/correct-ledger-entry";
import { recordLedgerEntry } from "@/lib/registry/ledger/record-ledger-entry";
import { listLots } from "@/lib/registry/lots/list-lots";
import { idsOfLot } from "@/lib/registry/lots/lot-history";
import { readLot } from "@/lib/registry/lots/read-lot";
import { recordLot } from "@/lib/registry/lots/record-lot";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { LotListQuerySchema } from "@/lib/schemas/lots/list-query";
import { containerSchema } from "@/lib/schemas/lots/record-container";
import { recordLotSchema } from "@/lib/schemas/lots/record-lot";
import { defaultSettings } from "@/lib/schemas/settings";
import { parseDate } from "@/lib/science/dates/parse-date";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aLot, aTest, aVariety } from "./lots-in-tests";

const owner = ownerHere();
const today = "2026-11-24";

onEveryEngine("a lot", (fresh) => {
  it("is entered, weighed, put right, listed and read alike", async () => {
    const db = await fresh();
    const varietyId = await aVariety(db, "Hamble Long", "bean-broad", { plantsWanted: 20 });
    const typed = {
      variety: "Hamble Long",
      origin: "received",
      giver: "Aunt Sela",
      number: "Ham 3",
      year: "2024",
      newHolder: "Oda Fenlight",
      thousandSeedGrams: "500",
      amount: "220",
      amountKind: "received",
      amountOn: "2024-10-01",
      story: "From the well garden.",
    };
    const made = granted(await recordLot(db, owner, granted(parseForm(recordLotSchema("north"), typed))));
    const { lotId } = made.value;
    const entry = { kind: "given" as const, unit: "seeds" as const, on: granted(parseDate("2025-10-01")) };
    const wrong = { ...entry, amount: 140, other: null, notes: null };
    const { entryId } = granted(await recordLedgerEntry(db, owner, lotId, wrong, today)).value;
    const right = { ...wrong, amount: 40, reason: "read 40 as 140" };
    granted(await correctLedgerEntry(db, owner, entryId, right, today));
    const jar = granted(parseForm(containerSchema("north"), { unit: "g", place: "Loft", kind: "jar", amount: "200" }));
    granted(await recordContainer(db, owner, lotId, jar));
    await aTest(db, lotId, "T1", "2025-02-01", 20, 18);
    await db.write.seedWeighing.create({ data: { id: "w", lotId, seeds: 100, grams: 50 } });
    await aLot(db, varietyId, { number: "Ham 4", kind: "split" }).then((child) =>
      db.write.lotParent.create({ data: { id: "p", lotId: child, parentLotId: lotId, share: 1 } }),
    );

    const lot = await readLot(db, lotId, { settings: defaultSettings, today });
    // 220 g less 40 seeds at 500 g a thousand (20 g) are 200 g, 400 seeds
    expect(lot?.figures?.gramsOnHand).toBe(200);
    expect(lot?.seeds?.value).toBe(400);
    expect(lot?.give).toMatchObject({ answer: "yes", keptBack: 218 });
    expect(lot?.entries.map((each) => each.takenBack)).toEqual([false, false, false]);
    expect(lot?.containers).toMatchObject([{ kind: "jar", place: "Loft", amount: 200 }]);
    expect(lot?.kin).toMatchObject([{ kinship: "split off it", number: "Ham 4", share: 1 }]);
    expect(lot?.notes.map((note) => [note.what, note.value, note.second])).toEqual(
      expect.arrayContaining([
        ["story", null, null],
        ["weighing", 100, 50],
      ]),
    );
    expect(lot?.tests[0]?.germination?.share).toBe(0.9);

    const list = await listLots(db, LotListQuerySchema.parse({ filter: "loft fen" }), defaultSettings);
    expect([list.all, list.found]).toEqual([2, 0]);
    const found = await listLots(db, LotListQuerySchema.parse({ place: "Loft" }), defaultSettings);
    expect(found.rows.map((row) => [row.number, row.holder, row.grams])).toEqual([["Ham 3", "Oda Fenlight", 200]]);

    const history = await recordHistory(db, await idsOfLot(db.read, lotId));
    expect(history.entries.map((each) => each.title)).toEqual([
      "Lot Ham 3: a container in Loft",
      "Lot Ham 3: ledger entry corrected",
      "Lot Ham 3: given 140 seeds, 2025-10-01",
      "A lot of Hamble Long: Ham 3",
    ]);
    expect(lot?.lot.crop).toMatchObject({ cropKey: "bean-broad", clonal: false, dryStorage: true });

    // how it is kept, as the constants of its kind ask for it, with an own value among them
    const maizeId = await aVariety(db, "Ash Flint", "maize-field");
    const flint = await aLot(db, maizeId, { number: "Ash 1", year: "2024" });
    const reading = { lotId: flint, on: "2025-01-05", onFirst: "2025-01-05", onLast: "2025-01-05", percent: 10.5 };
    await db.write.moistureReading.create({ data: { id: "m", ...reading } });
    await db.write.place.create({ data: { id: "c", name: "Cellar", nameKey: "cellar", temperatureC: 12 } });
    await db.write.container.create({ data: { id: "k", code: "K", lotId: flint, placeId: "c" } });
    const own = { table: "viability-constants", row: "Maize", field: "KE", value: "9.5", reason: "a flour type" };
    await db.write.tableOverride.create({ data: { id: "o", ...own } });
    const kept = await readLot(db, flint, { settings: defaultSettings, today });
    expect(kept?.keeping).toMatchObject({
      kept: {
        ...{ moisture: { percent: 10.5 }, temperature: { place: "Cellar", celsius: 12 } },
        store: { constants: { KE: 9.5, CW: 5.993 }, own: [{ field: "KE", instead: 9.993 }] },
      },
    });
  });
});
