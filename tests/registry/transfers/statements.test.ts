import { beforeAll, expect, it } from "vitest";
import type { Database } from "@/lib/db";
import { readLife } from "@/lib/registry/lots/read-life";
import { readSettings } from "@/lib/registry/settings/read-settings";
import { readGiving, readStewardsToGiveTo } from "@/lib/registry/transfers/read-giving";
import { readSharing } from "@/lib/registry/transfers/read-sharing";
import { readTakingIn } from "@/lib/registry/transfers/read-taking-in";
import { readTransfer } from "@/lib/registry/transfers/read-transfer";
import { correctVariety } from "@/lib/registry/varieties/correct-variety";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { manyLots } from "../lots/many-lots";
import { owner, settings, today } from "./transfers-in-tests";

const sent: string[] = [];
let db: Database;
let lotId: string;
let varietyId: string;
let transferId: string;

beforeAll(async () => {
  db = await emptyRegistry({ onStatement: (sql) => sent.push(sql) });
  await manyLots(db, 2000);
  const lot = await db.read.lot.findFirstOrThrow({ orderBy: { id: "asc" } });
  lotId = lot.id;
  varietyId = lot.varietyId;
  const day = { on: "2026-01-01", onFirst: "2026-01-01", onLast: "2026-01-01" };
  const { id } = await db.write.transfer.create({ data: { id: "t", kind: "loan", lotId, ...day } });
  transferId = id;
  // every page is asked after a real change, so that nothing of its figures is at hand
  granted(await correctVariety(db, owner, varietyId, { note: "one more word" }));
});

async function statements(read: () => Promise<unknown>): Promise<number> {
  sent.length = 0;
  await readSettings(db.read);
  expect(await read()).not.toBeNull();
  return sent.length;
}

it("at 2,000 lots no page of sharing asks the database more than a dozen times", async () => {
  const asked = { answers: transferId, exchange: null, variety: null };
  expect(await statements(() => readSharing(db, settings, today))).toBeLessThanOrEqual(12);
  expect(await statements(() => readTakingIn(db, asked))).toBeLessThanOrEqual(12);
  expect(await statements(() => readTransfer(db, transferId))).toBeLessThanOrEqual(12);
  expect(await statements(() => readLife(db, lotId))).toBeLessThanOrEqual(12);
  expect(
    await statements(async () => {
      await readStewardsToGiveTo(db.read);
      return readGiving(db, lotId, { settings, today });
    }),
  ).toBeLessThanOrEqual(12);
});
