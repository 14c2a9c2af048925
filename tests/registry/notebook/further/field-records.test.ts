import { uuidv7 } from "uuidv7";
import { expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { correctFlowering, recordFlowering } from "@/lib/registry/grow-outs/record-flowering";
import { correctRoguePass, recordRogueWalk } from "@/lib/registry/grow-outs/record-rogue-walk";
import { correctStageCount, recordStageCounts } from "@/lib/registry/grow-outs/record-stage-counts";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted } from "@/tests/setup/registry";
import { aGrowOut, numbersOf, on } from "../../grow-outs/a-grow-out";
import { aLot } from "../../lots/lots-in-tests";

const owner = ownerHere();
const today = "2026-09-01";
const note = null;

onEveryEngine("what was corrected in the field", (fresh) => {
  it("goes out once, as it stands, and comes in again with the grow-out's numbers", async () => {
    const db = await fresh();
    const id = await aGrowOut(db);
    const { varietyId } = await db.read.growOut.findUniqueOrThrow({ where: { id } });
    const lotId = await aLot(db, varietyId, { number: "Sallow 1" });
    await db.write.growOutParent.create({ data: { id: uuidv7(), growOutId: id, lotId, share: 1 } });
    const count = { stage: "standing" as const, males: null, on: on("2026-06-10"), thinnedBy: null, note };
    const counted = await recordStageCounts(
      db,
      owner,
      id,
      { counts: [{ ...count, plants: 84 }], stewardId: null },
      today,
    );
    const [wrongCount = ""] = granted(counted).value.ids;
    granted(await correctStageCount(db, owner, wrongCount, { ...count, plants: 48, why: "turned round" }, today));
    const walk = { on: on("2026-07-01"), stage: "leaf", timing: "before" as const, looked: 48, left: null, note };
    const pulled = [{ reason: "sick" as const, plants: 5 }];
    const [wrongPass = ""] = granted(await recordRogueWalk(db, owner, id, { ...walk, pulled, stewardId: null }, today))
      .value.ids;
    granted(
      await correctRoguePass(db, owner, wrongPass, { ...walk, pulled: 3, reason: "sick", why: "two lived" }, today),
    );
    const seen = { organ: "silk" as const, moment: "first" as const };
    const noted = { notes: [{ ...seen, on: on("2026-07-20") }], note, stewardId: null };
    const [wrongNote = ""] = granted(await recordFlowering(db, owner, id, noted, today)).value.ids;
    granted(
      await correctFlowering(db, owner, wrongNote, { ...seen, on: on("2026-07-24"), note, why: "misread" }, today),
    );

    const out = await exportFolder(db);
    const lines = (file: string) => new TextDecoder().decode(out.get(file)).trim().split("\r\n").slice(1);
    expect(lines("stage_counts.csv")).toEqual(["Sallow 2026,standing,48,,2026-06-10,,,"]);
    expect(lines("rogue_passes.csv")).toEqual(["Sallow 2026,2026-07-01,leaf,before,48,3,sick,,,"]);
    expect(lines("flowering.csv")).toEqual(["Sallow 2026,silk,first,2026-07-24,,"]);

    const other = await fresh();
    granted(await importFolder(other, owner, out));
    const again = await other.read.growOut.findFirstOrThrow();
    expect(await numbersOf(other, again.id)).toMatchObject({ plantsStanding: 48, roguedBeforePollen: 3 });
    expect(granted(await importFolder(other, owner, out)).value.nothingNew).toBe(true);
  });
});
