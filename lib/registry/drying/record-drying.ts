import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { DriedInput, DryingInput } from "@/lib/schemas/drying/drying-forms";
import { daysBetween } from "@/lib/science/dates/civil-day";
import { type Assumption, accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { dryTo } from "@/lib/science/seed-moisture/dry-to";
import { type Performed, perform } from "../change-set/perform";
import { profileOfCrop } from "../crops/profile-of-crop";
import { debtRefusal } from "../ledger/debt-refusal";
import { entriesOfLot } from "../ledger/entries-of-lot";
import { unknownLot } from "../ledger/record-ledger-entry";

/** Seed laid out to dry. */
export interface BegunDrying {
  readonly dryingId: string;
  /** what it will weigh when it is dry enough */
  readonly targetGrams: number;
}

/**
 * Writes down that seed of a lot is laid out to dry, with what it weighs, its moisture and the one that is wanted. Refused: what dryTo
 * refuses, and seed that must not be dried at all.
 */
export async function recordDrying(
  db: Database,
  actor: Actor,
  lotId: string,
  { on, ...drying }: DryingInput,
): Promise<Outcome<Performed<BegunDrying>>> {
  const lot = await db.read.lot.findUnique({
    where: { id: lotId },
    include: { variety: { include: { crop: { include: { overrides: true } } } } },
  });
  if (!lot) return refused(unknownLot(lotId));
  const { crop } = lot.variety;
  return perform(db, actor, { action: "desk", title: `Lot ${lot.number}: laid out to dry` }, async (change) => {
    if (!profileOfCrop(crop, crop.overrides).dryStorage) {
      const needed = "keep it moist, and sow it soon";
      return refused(refusal("not-to-be-dried", ["lot"], lot.number, "is seed that dies when it is dried", needed));
    }
    const target = dryTo({
      grams: drying.startGrams,
      moisturePercent: drying.startPercent,
      targetPercent: drying.targetPercent,
    });
    if (!target.ok) return refused(...target.refusals.map((each) => ({ ...each, path: fieldOf(each.path) })));
    const dryingId = uuidv7();
    const date = { on: on.text, onFirst: on.first, onLast: on.last };
    await change.create("Drying", { id: dryingId, lotId, ...date, ...drying });
    change.touch(lot.varietyId);
    return accepted({ dryingId, targetGrams: target.value.targetGrams });
  });
}

function fieldOf(path: readonly (string | number)[]): readonly (string | number)[] {
  const names: Readonly<Record<string, string>> = { grams: "startGrams", moisturePercent: "startPercent" };
  const [first] = path;
  return [names[String(first)] ?? first ?? ""];
}

/** Dried so much beyond the target that somebody should weigh again. */
const MUCH_DRIER = 0.97;

/**
 * Writes down what seed weighs that was laid out to dry, and how many days it took where both days are known. `wholeLot`: it is all that
 * lies in the jar, so the ledger gets it as weighed. Refused: no such drying, one that is over, more than was laid out, a day before it began.
 */
export async function endDrying(
  db: Database,
  actor: Actor,
  dryingId: string,
  input: DriedInput,
): Promise<Outcome<Performed<{ lotId: string; warnings: readonly Assumption[] }>>> {
  const drying = await db.read.drying.findUnique({ where: { id: dryingId }, include: { lot: true } });
  if (!drying)
    return refused(refusal("unknown", ["drying"], dryingId, "is no drying of this registry", "choose one of the list"));
  const { lot, startGrams, startPercent, targetPercent } = drying;
  return perform(db, actor, { action: "desk", title: `Lot ${lot.number}: dried` }, async (change, tx) => {
    if (drying.endGrams !== null)
      return refused(
        refusal("over-already", ["endGrams"], drying.endGrams, "g were written already", "take that back first"),
      );
    if (startGrams !== null && input.endGrams > startGrams) {
      const needed = "seed gets lighter as it dries: weigh it again";
      const wrong = `is more than the ${startGrams} g that were laid out`;
      return refused(refusal("heavier", ["endGrams"], input.endGrams, wrong, needed));
    }
    if (input.on.last < drying.onFirst) {
      const needed = "write the day on which it was weighed";
      return refused(refusal("before-it-began", ["on"], input.on.text, `is before ${drying.on}`, needed));
    }
    const note = [drying.note, input.note].filter(Boolean).join("; ") || null;
    await change.update("Drying", dryingId, { endGrams: input.endGrams, days: daysTaken(drying, input.on), note });
    if (input.wholeLot) {
      const row = {
        ...{ id: uuidv7(), lotId: lot.id, on: input.on.text, onFirst: input.on.first, onLast: input.on.last },
        ...{ kind: "weighed", amount: input.endGrams, unit: "g", notes: "dried", replacesId: null, takenBack: false },
      };
      const before = await entriesOfLot(tx, lot.id);
      const debt = debtRefusal(before, [...before, row], row, lot.thousandSeedGrams);
      if (debt) return refused({ ...debt, path: ["endGrams"] });
      await change.create("LedgerEntry", row);
    }
    change.touch(lot.varietyId);
    return accepted({ lotId: lot.id, warnings: warningsOf(startGrams, startPercent, targetPercent, input.endGrams) });
  });
}

function warningsOf(
  grams: number | null,
  moisturePercent: number | null,
  targetPercent: number | null,
  endGrams: number,
): Assumption[] {
  if (grams === null || moisturePercent === null || targetPercent === null) return [];
  const target = dryTo({ grams, moisturePercent, targetPercent });
  if (!target.ok) return [];
  if (endGrams > target.value.targetGrams * 1.005)
    return [{ code: "not-dry-yet", text: "it is heavier than it should be when dry: leave it out longer" }];
  if (endGrams < target.value.targetGrams * MUCH_DRIER)
    return [
      { code: "much-drier", text: "it is far lighter than planned: was some spilt, or was it wetter than said?" },
    ];
  return [];
}

/** Whole days that it took, where both days are single ones. */
function daysTaken(begun: { onFirst: string; onLast: string }, ended: { first: string; last: string }): number | null {
  return begun.onFirst === begun.onLast && ended.first === ended.last ? daysBetween(begun.onFirst, ended.first) : null;
}
