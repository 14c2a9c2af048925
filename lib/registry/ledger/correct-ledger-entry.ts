import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { LedgerCorrectionInput } from "@/lib/schemas/ledger/ledger-entry";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { balanceOf } from "./balance";
import { debtRefusal } from "./debt-refusal";
import { entriesOfLot } from "./entries-of-lot";
import { entryWarnings } from "./entry-warnings";
import { amountFaults, otherSide, type RecordedEntry } from "./record-ledger-entry";

/**
 * Corrects a ledger entry by a new one that points to it: the old one stays to be read and counts no more. The same rules hold as for a
 * new entry.
 */
export async function correctLedgerEntry(
  db: Database,
  actor: Actor,
  entryId: string,
  input: LedgerCorrectionInput,
  today: CivilDay,
): Promise<Outcome<Performed<RecordedEntry>>> {
  const old = await entryToCorrect(db, entryId);
  if (!old.ok) return old;
  const { entry, lot } = old.value;
  const operation = {
    action: "correct-at-desk" as const,
    title: `Lot ${lot.number}: ledger entry corrected`,
    reason: input.reason,
  };
  return perform(db, actor, operation, async (change, tx) => {
    const faults = [...amountFaults(input, lot.thousandSeedGrams, lot.number), ...kindFaults(entry.kind, input.kind)];
    if (faults.length > 0) return refused(...faults);
    const row = {
      id: uuidv7(),
      lotId: lot.id,
      on: input.on.text,
      onFirst: input.on.first,
      onLast: input.on.last,
      kind: input.kind,
      amount: input.amount,
      unit: input.unit,
      how: entry.how,
      other: input.other,
      ...(await otherSide(tx, input.other)),
      notes: input.notes,
      replacesId: entry.id,
      takenBack: false,
    };
    const before = await entriesOfLot(tx, lot.id);
    const debt = debtRefusal(before, [...before, row], row, lot.thousandSeedGrams);
    if (debt) return refused(debt);
    await change.create("LedgerEntry", row);
    change.touch(lot.varietyId);
    const warnings = entryWarnings(balanceOf([...before, row], lot.thousandSeedGrams), lot, today);
    return accepted({ entryId: row.id, warnings: warnings.get(row.id) ?? [] });
  });
}

/** Takes a mistaken entry back altogether. It stays to be read; seed that really left the jar is not put back by it. */
export async function takeBackLedgerEntry(
  db: Database,
  actor: Actor,
  entryId: string,
  reason: string,
): Promise<Outcome<Performed<{ entryId: string }>>> {
  const old = await entryToCorrect(db, entryId);
  if (!old.ok) return old;
  const { entry, lot } = old.value;
  const operation = { action: "correct-at-desk" as const, title: `Lot ${lot.number}: ledger entry taken back`, reason };
  return perform(db, actor, operation, async (change, tx) => {
    const { id: _id, extra: _extra, ...same } = entry;
    const row = { ...same, id: uuidv7(), replacesId: entry.id, takenBack: true };
    const before = await entriesOfLot(tx, lot.id);
    const debt = debtRefusal(before, [...before, row], inWords(entry), lot.thousandSeedGrams);
    if (debt) return refused(debt);
    await change.create("LedgerEntry", row);
    change.touch(lot.varietyId);
    return accepted({ entryId: row.id });
  });
}

/** The entry, if it can be corrected: it stands, and it is not one side of a transfer. */
async function entryToCorrect(db: Database, entryId: string) {
  const entry = await db.read.ledgerEntry.findUnique({
    where: { id: entryId },
    include: { lot: true, replacedBy: true },
  });
  if (!entry)
    return refused(refusal("unknown", ["entry"], entryId, "is no entry of a ledger", "choose one of the list"));
  const said = inWords(entry);
  if (entry.replacedBy || entry.takenBack)
    return refused(refusal("corrected-already", ["entry"], said, "counts no more", "correct the entry that stands"));
  if (entry.transferId) {
    const needed = "correct the transfer, so that both sides agree";
    return refused(refusal("side-of-transfer", ["entry"], said, "is one side of a transfer", needed));
  }
  if (await otherSideOfAct(db, entry)) {
    const needed = "take the whole act back in the history so that both lots agree, or weigh the jar in";
    return refused(refusal("side-of-act", ["entry"], said, "is one side of a blend or split", needed));
  }
  const { lot, replacedBy: _none, ...row } = entry;
  return accepted({ entry: row, lot });
}

/** The entry that the same blend or split wrote in the other lot, if it stands: what one side says, the other must. */
async function otherSideOfAct(
  db: Database,
  {
    lotId,
    otherLotId,
    amount,
    unit,
    on,
  }: { lotId: string; otherLotId: string | null; amount: number; unit: string; on: string },
) {
  if (otherLotId === null) return null;
  const made = await db.read.lotMaking.count({ where: { lotId: { in: [lotId, otherLotId] } } });
  if (made === 0) return null;
  return db.read.ledgerEntry.findFirst({
    where: { lotId: otherLotId, otherLotId: lotId, amount, unit, on, takenBack: false, replacedBy: null },
  });
}

/** What a blend wrote stays a blend's entry, and nothing else becomes one. */
function kindFaults(was: string, is: string): Refusal[] {
  const blended = (kind: string) => kind === "blended-in" || kind === "blended-out";
  if (was === is || (!blended(was) && !blended(is))) return [];
  return [refusal("blend-kept", ["kind"], is, `cannot take the place of ${was}`, `leave it as ${was}`)];
}

function inWords(entry: { kind: string; amount: number; unit: string; on: string }): string {
  return `${entry.kind} ${entry.amount} ${entry.unit}, ${entry.on}`;
}
