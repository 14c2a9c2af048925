import type { Database } from "@/lib/db";
import { isWaiting } from "@/lib/registry/field/stored-record";
import { standingOf } from "@/lib/registry/grow-outs/field-records";

/**
 * What stands of some grow-outs, in an order of its own: without ids that the registry makes, without when it came, and without the "(2)" that a
 * second plant of one tag gets beside its name.
 */
export async function asItStands(db: Database, growOutIds: readonly string[]) {
  const where = { growOutId: { in: [...growOutIds] } };
  const ofPlant = { plant: where };
  const { read } = db;
  const lines = (rows: readonly object[]) => rows.map((row) => JSON.stringify(row)).sort();
  const plants = (await read.plant.findMany({ where })).map(({ nameKey: _key, name, ...row }) => ({
    ...row,
    name: name.replace(/ \(\d+\)$/, ""),
  }));
  const marks = standingOf(await read.mark.findMany({ where: ofPlant })).map(({ replacesId: _old, ...row }) => row);
  const scores = standingOf(await read.score.findMany({ where: ofPlant })).map(({ replacesId: _old, ...row }) => row);
  const counts = await read.stageCount.findMany({ where });
  const passes = (await read.roguePass.findMany({ where })).map(({ id: _id, ...row }) => row);
  const flowering = await read.floweringNote.findMany({ where });
  const harvests = (
    await read.harvest.findMany({ where, include: { parents: true, lot: { include: { ledger: true } } } })
  ).map(({ lotId: _lot, lot, parents, ...row }) => ({
    ...row,
    parents: lines(parents.map(({ plantId, grams, seeds, share, lost }) => ({ plantId, grams, seeds, share, lost }))),
    ledger: lines((lot?.ledger ?? []).map(({ on, kind, amount, unit }) => ({ on, kind, amount, unit }))),
  }));
  const questions = (await read.question.findMany({ where: { ...where, answeredAt: null } })).map(
    ({ kind, plantId, otherPlantId, fieldRecordId }) => ({ kind, plantId, otherPlantId, fieldRecordId }),
  );
  const records = (await read.fieldRecord.findMany({ where })).map((row) => ({
    ...{ id: row.id, body: row.body, recordedAt: row.recordedAt, sequence: row.sequence, state: row.state },
    waits: isWaiting(row),
  }));
  const growOuts = (await read.growOut.findMany({ where: { id: { in: [...growOutIds] } } })).map(
    ({ varietyId: _variety, ...row }) => row,
  );
  return Object.fromEntries(
    Object.entries({ plants, marks, scores, counts, passes, flowering, harvests, questions, records, growOuts }).map(
      ([name, rows]) => [name, lines(rows)],
    ),
  );
}
