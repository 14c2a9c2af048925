import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import type { LedgerEntryInput } from "@/lib/schemas/ledger/ledger-entry";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { type Assumption, accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { foldName } from "../names/fold-name";
import { balanceOf } from "./balance";
import { debtRefusal } from "./debt-refusal";
import { entriesOfLot } from "./entries-of-lot";
import { entryWarnings } from "./entry-warnings";

export interface RecordedEntry {
  readonly entryId: string;
  /** what looks implausible about it; it stands all the same */
  readonly warnings: readonly Assumption[];
}

/**
 * Writes one dated entry into a lot's ledger. At the desk a balance that would fall more than half a gram below nothing is refused with
 * what would be right; what only looks implausible is written and warned of.
 */
export async function recordLedgerEntry(
  db: Database,
  actor: Actor,
  lotId: string,
  input: LedgerEntryInput,
  today: CivilDay,
): Promise<Outcome<Performed<RecordedEntry>>> {
  const lot = await db.read.lot.findUnique({ where: { id: lotId } });
  if (!lot) return refused(unknownLot(lotId));
  const title = `Lot ${lot.number}: ${input.kind} ${input.amount} ${input.unit}, ${input.on.text}`;
  return perform(db, actor, { action: "desk", title }, async (change, tx) => {
    const faults = amountFaults(input, lot.thousandSeedGrams, lot.number);
    if (faults.length > 0) return refused(...faults);
    const row = {
      id: uuidv7(),
      lotId,
      on: input.on.text,
      onFirst: input.on.first,
      onLast: input.on.last,
      kind: input.kind,
      amount: input.amount,
      unit: input.unit,
      other: input.other,
      ...(await otherSide(tx, input.other)),
      notes: input.notes,
      replacesId: null,
      takenBack: false,
    };
    const before = await entriesOfLot(tx, lotId);
    const debt = debtRefusal(before, [...before, row], row, lot.thousandSeedGrams);
    if (debt) return refused(debt);
    await change.create("LedgerEntry", row);
    change.touch(lot.varietyId);
    const warnings = entryWarnings(balanceOf([...before, row], lot.thousandSeedGrams), lot, today);
    return accepted({ entryId: row.id, warnings: warnings.get(row.id) ?? [] });
  });
}

export function unknownLot(lotId: string): Refusal {
  return refusal("unknown", ["lot"], lotId, "is no lot of this registry", "choose one of the list");
}

/** An amount of nothing is only a weighing's; seeds are whole and need the lot's own seed weight. */
export function amountFaults(
  input: Pick<LedgerEntryInput, "kind" | "amount" | "unit"> | { kind: string; amount: number; unit: string },
  thousandSeedGrams: number | null,
  number: string,
): Refusal[] {
  const faults: Refusal[] = [];
  if (input.amount === 0 && input.kind !== "weighed")
    faults.push(refusal("nothing", ["amount"], 0, "moves no seed", "write an amount above 0, or enter it as weighed"));
  if (input.unit === "seeds" && thousandSeedGrams === null) {
    const wrong = `cannot be turned into grams: no seed weight of lot ${number} is known`;
    faults.push(
      refusal("no-seed-weight", ["unit"], input.unit, wrong, "count and weigh some seeds first, or write grams"),
    );
  } else if (input.unit === "seeds" && !Number.isInteger(input.amount))
    faults.push(refusal("seeds-not-whole", ["amount"], input.amount, "is no number of seeds", "write a whole number"));
  return faults;
}

/** Who or what stands on the other side, where the name is that of a steward or a lot. */
export async function otherSide(
  tx: Transaction,
  other: string | null,
): Promise<{ otherStewardId: string | null; otherLotId: string | null }> {
  if (other === null) return { otherStewardId: null, otherLotId: null };
  const key = foldName(other);
  const people = await tx.person.findMany({ where: { nameKey: key }, select: { name: true, stewardId: true } });
  const person = people.find((each) => each.name === other) ?? (people.length === 1 ? people[0] : undefined);
  if (person) return { otherStewardId: person.stewardId, otherLotId: null };
  const lots = await tx.lot.findMany({ where: { numberKey: key }, select: { number: true, id: true } });
  const lot = lots.find((each) => each.number === other) ?? (lots.length === 1 ? lots[0] : undefined);
  return { otherStewardId: null, otherLotId: lot?.id ?? null };
}
