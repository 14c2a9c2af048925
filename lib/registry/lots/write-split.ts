import { uuidv7 } from "uuidv7";
import type { Transaction } from "@/lib/db";
import type { LotStatus } from "@/lib/schemas/lots/record-lot";
import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";
import { accepted, type Outcome, refused } from "@/lib/science/outcome";
import type { ChangeWriter } from "../change-set/writer";
import { debtRefusal } from "../ledger/debt-refusal";
import { amountFaults, unknownLot } from "../ledger/record-ledger-entry";
import { foldName } from "../names/fold-name";
import { type LotRead, lotInHand, lotsInHand } from "./lot-in-hand";
import { newLabelCode } from "./new-label-code";
import { numberFaults } from "./number-faults";
import { objectionsTo, reasonKept, refusalsOf } from "./objections";

/** Part of a lot that goes into another jar under a number of its own. */
export interface SplitToWrite {
  /** the lot that is parted */
  readonly lotId: string;
  readonly amount: number;
  readonly unit: "g" | "seeds";
  readonly on: FuzzyDate;
  /** of the new lot; null: its label code is its number */
  readonly number: string | null;
  /** who holds the new lot; null not known */
  readonly holderId: string | null;
  /** how the new lot stands; left out: as the lot that is parted */
  readonly status?: LotStatus | null;
  /** why it was parted */
  readonly reason: string | null;
  /** why it is done although the lot is set aside, warned of or treated; kept with the reason */
  readonly override: string | null;
  /** the steward who did it */
  readonly stewardId: string | null;
  /** notes of the new lot */
  readonly notes?: string | null;
  /** writes the transfer that this is, once the new lot stands, and gives its id: both ledger entries name it */
  readonly transfer?: (newLotId: string) => Promise<string | null>;
}

/** What a split left in the tables. */
export interface WrittenSplit {
  readonly lotId: string;
  readonly number: string;
  readonly code: string;
  readonly varietyId: string;
  /** entries of the ledgers of the lot that was parted, and of the new one */
  readonly outEntryId: string;
  readonly inEntryId: string;
}

/**
 * Parts a lot inside a running change: the new lot, its parent with share 1, the making with its reason, and one ledger entry on each side
 * that names the other ("given" here, "received" there). The new lot takes along what is said of the seed: variety, strain, year, seed
 * weight, treatment, isolation, identity, and how it stands unless told.
 * Refused: an unknown lot; an amount of nothing, seeds that are not whole or have no weight; more than the jar holds by more than half a
 * gram; a number that is taken; a lot that is finished, dead, discarded or not for seed; without `override` one on hold, in quarantine,
 * closed, warned of, treated or of unknown treatment.
 */
export async function writeSplit(
  change: ChangeWriter,
  tx: Transaction,
  split: SplitToWrite,
): Promise<Outcome<WrittenSplit>> {
  const lot = (await lotsInHand(tx, [split.lotId])).get(split.lotId);
  if (!lot) return refused(unknownLot(split.lotId));
  const objections = objectionsTo("split", lotInHand(lot));
  const entry = entryOf(split);
  const faults = [
    ...refusalsOf(objections, split.override, () => ["lot"]),
    ...amountFaults({ kind: "given", ...split }, lot.thousandSeedGrams, lot.number),
    ...(await numberFaults(tx, split.number)),
  ];
  if (faults.length > 0) return refused(...faults);
  const taken = { ...entry, id: uuidv7(), lotId: lot.id, kind: "given" };
  const debt = debtRefusal(lot.ledger, [...lot.ledger, taken], taken, lot.thousandSeedGrams);
  if (debt) return refused(debt);

  const code = await newLabelCode(tx);
  const lotId = uuidv7();
  const number = split.number ?? code;
  await change.create("Lot", { ...partOf(lot, split), id: lotId, number, numberKey: foldName(number), code });
  const transferId = (await split.transfer?.(lotId)) ?? null;
  const names = await namesOf(tx, [lot.holderId, split.holderId]);
  const changesHands = split.holderId !== lot.holderId;
  const given = {
    ...taken,
    other: (changesHands ? names.get(split.holderId) : null) ?? number,
    otherStewardId: changesHands ? split.holderId : null,
    otherLotId: lotId,
    transferId,
  };
  const received = {
    ...entry,
    id: uuidv7(),
    lotId,
    kind: "received",
    other: lot.number,
    otherStewardId: changesHands ? lot.holderId : null,
    otherLotId: lot.id,
    transferId,
  };
  await change.create("LedgerEntry", given, received);
  await change.create("LotParent", { id: uuidv7(), lotId, parentLotId: lot.id, share: 1 });
  await change.create("LotMaking", {
    ...{ id: uuidv7(), lotId, kind: "split", on: split.on.text, onFirst: split.on.first, onLast: split.on.last },
    reason: reasonKept(split.reason, objections, split.override),
    stewardId: split.stewardId,
  });
  change.touch(lot.varietyId);
  return accepted({ lotId, number, code, varietyId: lot.varietyId, outEntryId: given.id, inEntryId: received.id });
}

function entryOf({ on, amount, unit }: SplitToWrite) {
  return { on: on.text, onFirst: on.first, onLast: on.last, amount, unit, replacesId: null, takenBack: false };
}

/** What is said of the seed holds of each part of it. */
function partOf(lot: LotRead, split: SplitToWrite) {
  const statusTold = split.status !== undefined;
  return {
    varietyId: lot.varietyId,
    strainId: lot.strainId,
    holderId: split.holderId,
    kind: "split",
    origin: split.holderId === lot.holderId ? lot.origin : "received",
    status: statusTold ? split.status : lot.status,
    statusReason: statusTold ? null : lot.statusReason,
    year: lot.year,
    yearFirst: lot.yearFirst,
    yearLast: lot.yearLast,
    yearWords: lot.yearWords,
    thousandSeedGrams: lot.thousandSeedGrams,
    treatment: lot.treatment,
    treatmentSubstance: lot.treatmentSubstance,
    isolationGrade: lot.isolationGrade,
    isolationReasons: lot.isolationReasons,
    identityGrade: lot.identityGrade,
    howSure: lot.howSure,
    notes: split.notes ?? null,
  };
}

async function namesOf(tx: Transaction, ids: readonly (string | null)[]): Promise<ReadonlyMap<string | null, string>> {
  const known = ids.filter((id) => id !== null);
  const people = await tx.person.findMany({ where: { stewardId: { in: known } } });
  return new Map(people.map((person) => [person.stewardId, person.name]));
}
