import { expect, it } from "vitest";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { setOwnValue } from "@/lib/registry/crops/set-own-value";
import { listGrowOuts } from "@/lib/registry/grow-outs/list-grow-outs";
import { readGrowOut } from "@/lib/registry/grow-outs/read-grow-out";
import { listChangeSets } from "@/lib/registry/history/list-change-sets";
import { readChangeSet } from "@/lib/registry/history/read-change-set";
import { find } from "@/lib/registry/search/find";
import { seasonProgress } from "@/lib/registry/season/progress";
import { readSeasonRecords } from "@/lib/registry/season/read-season-records";
import { waitingItems } from "@/lib/registry/season/waiting";
import { addOtherName } from "@/lib/registry/varieties/add-other-name";
import { listVarieties } from "@/lib/registry/varieties/list-varieties";
import { readVariety } from "@/lib/registry/varieties/read-variety";
import { defaultSettings } from "@/lib/schemas/settings";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted } from "@/tests/setup/registry";
import { manyLots } from "../lots/many-lots";
import { owner, withSteward, withVariety } from "../varieties/with-variety";

const today = "2026-03-10";

onEveryEngine("season, varieties, history and search answer alike", (fresh) => {
  it("reads what waits, the varieties, a variety and a grow-out", async () => {
    const db = await fresh();
    const { varietyIds } = await manyLots(db, 80);
    const records = await readSeasonRecords(db, defaultSettings, today);
    expect(records.lots).toHaveLength(80);
    expect(records.lots[0]).toMatchObject({ number: "L 0", entries: 2, gramsOnHand: 90, lastInHand: "2024-02-01" });
    const rules = new Map<string, number>();
    for (const item of waitingItems(records)) rules.set(item.rule, (rules.get(item.rule) ?? 0) + 1);
    // Every lot was tested two years ago with 40 of 50; the pea's, tomato's and leek's usual lives differ, so the counts do.
    expect(rules.get("germination-below-line")).toBeUndefined();
    expect(rules.get("test-overdue")).toBeGreaterThan(0);
    expect(seasonProgress(records)[0]).toMatchObject({ key: "tests", done: 80, of: 80 });
    const list = await listVarieties(db, defaultSettings, today);
    expect(list).toHaveLength(40);
    const read = await readVariety(db, varietyIds[3] as string, defaultSettings, today);
    expect(read?.tests).toMatchObject([
      { sown: 50, normal: 40 },
      { sown: 50, normal: 40 },
    ]);
    const [growOut] = await listGrowOuts(db, varietyIds[3]);
    expect(await readGrowOut(db, growOut?.id ?? "")).toMatchObject({
      parents: [{ number: "L 3", share: 1 }],
      events: [],
    });
  });

  it("finds by other names and slips, and keeps the history with its way back", async () => {
    const db = await fresh();
    const id = await withVariety(db, "Mère Noire", "oat");
    granted(await addOtherName(db, owner, id, { name: "Old Grey" }));
    await withSteward(db);
    expect((await find(db, "mere")).found[0]?.title).toBe("Mère Noire");
    expect((await find(db, "thronwick")).found[0]).toMatchObject({ title: "Aldis Thornwick", meant: true });
    const crop = await db.read.crop.findUniqueOrThrow({ where: { key: "oat" } });
    granted(await setOwnValue(db, owner, { cropId: crop.id, field: "plantsMin", value: "9", reason: "seen here" }));
    const { sets } = await listChangeSets(db, { kind: "entry" });
    expect(sets.map((set) => set.title)).toEqual([
      "Own value for Oat",
      "Steward Aldis Thornwick",
      "Other name of Mère Noire: Old Grey",
      "Variety Mère Noire",
    ]);
    const named = await readChangeSet(db, sets[2]?.id ?? "");
    expect(named?.names.get(id)).toBe("Mère Noire");
    granted(await undoChangeSet(db, owner, sets[2]?.id ?? ""));
    expect((await find(db, "old grey")).total).toBe(0);
  });
});
