import { uuidv7 } from "uuidv7";
import type { Transaction } from "@/lib/db";
import type { TakeInInput } from "@/lib/schemas/transfers/transfer";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import type { ChangeWriter } from "../change-set/writer";
import { newLabelCode } from "../lots/new-label-code";
import { numberFaults } from "../lots/number-faults";
import { writeSplit } from "../lots/write-split";
import { foldName } from "../names/fold-name";
import type { TransferTakenIn } from "./transfer-draft";

/** Seed that is being taken in, with what its names were found to mean. */
export interface TakingIn {
  readonly input: TakeInInput;
  readonly varietyId: string;
  readonly holderId: string | null;
  readonly giverId: string | null;
  /** the giver as written */
  readonly giverName: string | null;
  readonly strainId: string | null;
  readonly statusReason: string;
}

interface LotTakenIn {
  readonly lotId: string;
  readonly number: string;
}

interface GiversLot {
  readonly id: string;
  readonly number: string;
  readonly holderId: string | null;
}

/** The giver's lot by its number, where one is named. Refused where there is none, or it is of another variety. */
export async function giversLot(
  tx: Transaction,
  number: string | null,
  variety: { readonly id: string; readonly name: string },
): Promise<Outcome<GiversLot | null>> {
  if (number === null) return accepted(null);
  const found = await tx.lot.findMany({ where: { numberKey: foldName(number) }, orderBy: { id: "asc" } });
  const lot = found.find((each) => each.number === number) ?? found[0];
  if (!lot) {
    const needed = "write a number that is on record, or leave it empty: then its parents are unknown before here";
    return refused(refusal("unknown-lot", ["fromLot"], number, "is no lot here", needed));
  }
  if (lot.varietyId !== variety.id) {
    const needed = "choose a lot of this variety, or leave it empty";
    return refused(refusal("of-another-variety", ["fromLot"], lot.number, `is no lot of ${variety.name}`, needed));
  }
  return accepted({ id: lot.id, number: lot.number, holderId: lot.holderId });
}

/** A lot whose parents are unknown before here. */
export async function writeFounder(
  change: ChangeWriter,
  tx: Transaction,
  taking: TakingIn,
  transfer: TransferTakenIn,
): Promise<Outcome<LotTakenIn>> {
  const { input } = taking;
  const taken = await numberFaults(tx, input.number);
  if (taken.length > 0) return refused(...taken);
  const code = await newLabelCode(tx);
  const number = input.number ?? code;
  const lotId = uuidv7();
  await change.create("Lot", {
    ...{ id: lotId, number, numberKey: foldName(number), code, varietyId: taking.varietyId, kind: "founder" },
    holderId: taking.holderId,
    strainId: taking.strainId,
    origin: "received",
    status: "quarantine",
    statusReason: taking.statusReason,
    year: input.year?.text ?? null,
    yearFirst: input.year?.first ?? null,
    yearLast: input.year?.last ?? null,
    yearWords: input.yearWords,
    thousandSeedGrams: input.thousandSeedGrams,
    ...toldOfSeed(input),
  });
  await change.create("Transfer", { ...transfer, lotId: transfer.lotId ?? lotId, newLotId: lotId });
  if (input.amount !== null) {
    await change.create("LedgerEntry", {
      ...{ id: uuidv7(), lotId, on: input.on.text, onFirst: input.on.first, onLast: input.on.last },
      ...{ kind: "received", amount: input.amount, unit: input.unit },
      other: taking.giverName,
      otherStewardId: taking.giverId,
      transferId: transfer.id,
    });
  }
  return accepted({ lotId, number });
}

/** Part of a lot that is on record in the giver's hand: its parents are known. */
export async function writePartOfGiversLot(
  change: ChangeWriter,
  tx: Transaction,
  taking: TakingIn,
  from: GiversLot,
  transfer: TransferTakenIn,
  stewardId: string | null,
): Promise<Outcome<LotTakenIn>> {
  const { input } = taking;
  if (input.amount === null) {
    const needed = "weigh it and write how much, so that both ledgers agree";
    return refused(refusal("missing", ["amount"], "", `says how much of lot ${from.number} came in`, needed));
  }
  if (from.holderId !== null && from.holderId === taking.holderId) {
    const needed = "choose another holder, or leave the lot empty";
    return refused(refusal("own-hand", ["fromLot"], from.number, "is in the same hand already", needed));
  }
  const split = await writeSplit(change, tx, {
    ...{ lotId: from.id, amount: input.amount, unit: input.unit, on: input.on, number: input.number },
    holderId: taking.holderId,
    status: "quarantine",
    reason: input.kind === "return" ? "given back" : `taken in by ${input.kind}`,
    // However the giver's lot stands, what came in stands apart until it is compared.
    override: "it stands in quarantine here until it is compared",
    stewardId,
    transfer: async (newLotId) => {
      await change.create("Transfer", { ...transfer, lotId: from.id, newLotId });
      return transfer.id;
    },
  });
  if (!split.ok) return refused(...split.refusals.map((each) => atGiversLot(each)));
  const { lotId, number } = split.value;
  const told = Object.fromEntries(Object.entries(toldOfSeed(input)).filter(([, value]) => value !== null));
  const strain = taking.strainId === null ? {} : { strainId: taking.strainId };
  await change.update("Lot", lotId, { ...told, ...strain, statusReason: taking.statusReason });
  return accepted({ lotId, number });
}

/** What stands against taking part of the giver's lot is said at that field. */
function atGiversLot<R extends { readonly path: readonly (string | number)[] }>(each: R): R {
  return each.path[0] === "lot" || each.path[0] === "override" ? { ...each, path: ["fromLot"] } : each;
}

function toldOfSeed(input: TakeInInput) {
  return {
    treatment: input.treatment,
    treatmentSubstance: input.treatmentSubstance,
    identityGrade: input.identityGrade,
    isolationGrade: input.isolationGrade,
    isolationReasons: input.isolationReasons,
    donorNumber: input.donorNumber,
  };
}
