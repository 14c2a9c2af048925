import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import type { SowGrowOutInput, SownPart } from "@/lib/schemas/grow-outs/sow-grow-out";
import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import {
  type Assumption,
  accepted,
  type Outcome,
  type Path,
  type Refusal,
  refusal,
  refused,
} from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { RowOf } from "../change-set/records";
import type { ChangeWriter } from "../change-set/writer";
import { balanceOf, gramsOf } from "../ledger/balance";
import { debtRefusal } from "../ledger/debt-refusal";
import { entriesOfLot } from "../ledger/entries-of-lot";
import { entryWarnings } from "../ledger/entry-warnings";
import { amountFaults } from "../ledger/record-ledger-entry";
import { type LotRead, lotInHand, lotsInHand } from "../lots/lot-in-hand";
import { reasonKept, refusalsOf } from "../lots/objections";
import { growOutOf } from "./grow-out-of";
import { parentsOfPlan } from "./parents-of-plan";
import { objectionsToSowing, readLotsToSow } from "./read-lots-to-sow";
import { type LotToSow, reservesAfter } from "./sowing-plan";

export interface SownGrowOut {
  readonly entryIds: readonly string[];
  /** what is allowed, and worth saying */
  readonly warnings: readonly Assumption[];
}

interface PartToSow {
  readonly index: number;
  readonly lotId: string;
  readonly amount: number;
  readonly unit: SownPart["unit"];
}

/**
 * Sows a grow-out: an act in the jar. Each lot's ledger gets an entry "sown", the grow-out its day and the seeds sown, all in one change set.
 * A lot of which 0 was sown is no parent any more. Where the grow-out stands sown already this is a further sowing: the first day stays, the
 * seeds add up.
 *
 * Refused: nothing sown; more than the ledger has; a lot not of its crop; without a reason, a lot on hold, in quarantine, closed, warned of or
 * of unknown treatment, and a sowing that leaves less than the holder's reserve; a grow-out that is over.
 */
export async function sowGrowOut(
  db: Database,
  actor: Actor,
  growOutId: string,
  input: SowGrowOutInput,
  { settings, today }: { readonly settings: Settings; readonly today: CivilDay },
): Promise<Outcome<Performed<SownGrowOut>>> {
  const known = await growOutOf(db.read, growOutId);
  if (!known.ok) return known;
  const title = `Grow-out ${known.value.name} sown, ${input.on.text}`;
  const lots = await lotsOf(db, input, { settings, today });
  const stands = input.parts.flatMap((part) => {
    const lot = part.lot === null ? null : lots.get(part.lot);
    return lot ? objectionsToSowing(lotInHand(lot.row)) : [];
  });
  const reason = reasonKept(null, stands, input.override) ?? input.override;
  return perform(db, actor, { action: "record", title, reason }, async (change, tx) => {
    const found = await growOutOf(tx, growOutId);
    if (!found.ok) return found;
    const growOut = found.value;
    if (growOut.endedOn !== null || growOut.outcome !== null) return refused(overRefusal(growOut));
    const { parts, faults } = partsToSow(input.parts, lots);
    const variety = await tx.variety.findUniqueOrThrow({ where: { id: growOut.varietyId } });
    const typed = input.parts.map((part) => ({ lot: part.amount === 0 ? null : part.lot, share: null }));
    const parents =
      parts.length === 0 ? accepted({ parents: [], warnings: [] }) : await parentsOfPlan(tx, variety, typed, growOutId);
    if (!parents.ok)
      faults.push(...parents.refusals.map((each) => ({ ...each, path: ["parts", ...each.path.slice(1)] })));
    faults.push(...(await plannedFaults(tx, growOut, input.parts)));
    faults.push(...refusalsOf(stands, input.override, (number) => pathOfLot(input.parts, lots, number)));
    faults.push(...reserveFaults(parts, lots, input.override));
    if (faults.length > 0 || !parents.ok) return refused(...faults);
    const booked = await book(change, tx, growOut, input, parts, lots, today);
    if (!booked.ok) return booked;
    await bringParents(change, tx, growOut, input.parts, parts);
    const first = growOut.sown === null;
    await change.update("GrowOut", growOutId, {
      ...(first ? { sown: input.on.text, sownFirst: input.on.first, sownLast: input.on.last } : {}),
      seedsSown: seedsTogether(growOut, parts, lots),
      ...(input.note === null ? {} : { note: [growOut.note, input.note].filter(Boolean).join("\n") }),
    });
    change.touch(growOut.varietyId, ...parts.map((part) => lots.get(part.lotId)?.row.varietyId));
    return accepted({
      entryIds: booked.value.entryIds,
      warnings: [...parents.value.warnings, ...booked.value.warnings],
    });
  });
}

type Lots = ReadonlyMap<string, { readonly row: LotRead; readonly toSow: LotToSow | null }>;

/** The lots that are named, with their ledgers and what their holders keep back. */
async function lotsOf(
  db: Database,
  input: SowGrowOutInput,
  question: { settings: Settings; today: CivilDay },
): Promise<Lots> {
  const ids = input.parts.flatMap((part) => part.lot ?? []);
  const inHand = await lotsInHand(db.read, ids);
  const rows = [...new Set(inHand.values())];
  const toSow = new Map<string, LotToSow>();
  for (const varietyId of new Set(rows.map((row) => row.varietyId)))
    for (const lot of await readLotsToSow(db, varietyId, question)) toSow.set(lot.id, lot);
  return new Map([...inHand].map(([id, row]) => [id, { row, toSow: toSow.get(row.id) ?? null }]));
}

function overRefusal({ name, outcome, endedOn }: RowOf<"GrowOut">): Refusal {
  const wrong = `is over (${outcome ?? endedOn})`;
  return refusal("over", ["growOut"], name, wrong, "plan a new grow-out, or say first that this one still stands");
}

/** The lines that say how much of which lot was sown, and what is wrong with them. */
function partsToSow(typed: readonly SownPart[], lots: Lots): { parts: PartToSow[]; faults: Refusal[] } {
  const faults: Refusal[] = [];
  const parts: PartToSow[] = [];
  typed.forEach(({ lot, amount, unit }, index) => {
    const path = (field: string): Path => ["parts", index, field];
    if (lot === null) {
      if (amount !== null) faults.push(refusal("missing", path("lot"), "", "stands here", "choose the lot"));
      return;
    }
    const found = lots.get(lot);
    if (!found) return;
    if (amount === null) {
      const needed = `write how much of lot ${found.row.number} was sown, or 0 if none of it was`;
      faults.push(refusal("missing", path("amount"), "", "stands here", needed));
      return;
    }
    if (amount === 0) return;
    const { thousandSeedGrams, number } = found.row;
    for (const fault of amountFaults({ kind: "sown", amount, unit }, thousandSeedGrams, number))
      faults.push({ ...fault, path: ["parts", index, ...fault.path] });
    parts.push({ index, lotId: lot, amount, unit });
  });
  if (parts.length === 0 && faults.length === 0) {
    const needed = "write how much of which lot was sown";
    faults.push(refusal("nothing-sown", ["parts", 0, "amount"], "", "was sown", needed));
  }
  return { parts, faults };
}

/** Of every lot of the plan it is said how much was sown: a lot that is passed over would stay a parent that gave no plant. */
async function plannedFaults(
  tx: Transaction,
  growOut: RowOf<"GrowOut">,
  typed: readonly SownPart[],
): Promise<Refusal[]> {
  if (growOut.sown !== null) return [];
  const planned = await tx.growOutParent.findMany({
    where: { growOutId: growOut.id },
    select: { lotId: true, lot: { select: { number: true } } },
  });
  return planned
    .filter((parent) => !typed.some((part) => part.lot === parent.lotId))
    .map(({ lot }) => {
      const needed = `write how much of lot ${lot.number} was sown, or 0 if none of it was`;
      return refusal("missing", ["parts"], "", "stands here of a lot of the plan", needed);
    });
}

function pathOfLot(typed: readonly SownPart[], lots: Lots, number: string): Path {
  const index = typed.findIndex((part) => part.lot !== null && lots.get(part.lot)?.row.number === number);
  return ["parts", Math.max(0, index), "lot"];
}

function reserveFaults(parts: readonly PartToSow[], lots: Lots, override: string | null): Refusal[] {
  if (override !== null) return [];
  const sown = parts.flatMap((part) => {
    const lot = lots.get(part.lotId)?.toSow;
    return lot ? [{ lot, taken: part }] : [];
  });
  return reservesAfter(sown).flatMap(({ answer, left, reserve }) => {
    if (answer !== "touched") return [];
    const given = `${Math.floor(left?.high ?? 0)} seeds`;
    const wrong = `would be left of what is to be kept back, ${reserve.seeds} seeds`;
    return [refusal("reserve-touched", ["override"], given, wrong, "sow less, or say why it is sown all the same")];
  });
}

/** Writes the ledger entries; refused where a jar would hold less than nothing. */
async function book(
  change: ChangeWriter,
  tx: Transaction,
  growOut: RowOf<"GrowOut">,
  { on }: SowGrowOutInput,
  parts: readonly PartToSow[],
  lots: Lots,
  today: CivilDay,
): Promise<Outcome<SownGrowOut>> {
  const faults: Refusal[] = [];
  const warnings: Assumption[] = [];
  const entryIds: string[] = [];
  for (const { index, lotId, amount, unit } of parts) {
    const lot = lots.get(lotId)?.row;
    if (!lot) continue;
    const day = { on: on.text, onFirst: on.first, onLast: on.last };
    const row = {
      id: uuidv7(),
      lotId,
      ...day,
      kind: "sown",
      amount,
      unit,
      other: growOut.name,
      replacesId: null,
      takenBack: false,
    };
    const before = await entriesOfLot(tx, lotId);
    const debt = debtRefusal(before, [...before, row], row, lot.thousandSeedGrams);
    if (debt) {
      faults.push({ ...debt, path: ["parts", index, ...debt.path] });
      continue;
    }
    await change.create("LedgerEntry", row);
    entryIds.push(row.id);
    const odd = entryWarnings(balanceOf([...before, row], lot.thousandSeedGrams), lot, today).get(row.id) ?? [];
    warnings.push(...odd.map(({ code, text }) => ({ code, text: `lot ${lot.number}: ${text}` })));
  }
  return faults.length > 0 ? refused(...faults) : accepted({ entryIds, warnings });
}

/**
 * The lots that were sown are its parents. One of which nothing was sown leaves, and the shares of the others grow as they stand to each other;
 * one that comes in makes the shares unknown until somebody tells them.
 */
async function bringParents(
  change: ChangeWriter,
  tx: Transaction,
  growOut: RowOf<"GrowOut">,
  typed: readonly SownPart[],
  parts: readonly PartToSow[],
): Promise<void> {
  const before = await tx.growOutParent.findMany({ where: { growOutId: growOut.id }, orderBy: { id: "asc" } });
  const sown = new Set(parts.map((part) => part.lotId));
  const notSown = new Set(typed.flatMap((part) => (part.amount === 0 && part.lot !== null ? [part.lot] : [])));
  // A lot that an earlier sowing of this grow-out took stays its parent.
  const leaving = growOut.sown === null ? before.filter((parent) => notSown.has(parent.lotId)) : [];
  const staying = before.filter((parent) => !leaving.includes(parent));
  const coming = [...sown].filter((lotId) => !before.some((parent) => parent.lotId === lotId));
  const all = staying.length + coming.length;
  const told = staying.reduce((sum, parent) => sum + (parent.share ?? 0), 0);
  const shareOf = (share: number | null) => {
    if (all === 1) return 1;
    if (coming.length > 0 || share === null || told === 0) return null;
    return leaving.length > 0 ? share / told : share;
  };
  await change.remove(
    "GrowOutParent",
    leaving.map((parent) => parent.id),
  );
  await change.updateMany(
    "GrowOutParent",
    staying.map((parent) => ({ id: parent.id, patch: { share: shareOf(parent.share) } })),
  );
  const rows = coming.map((lotId) => ({ id: uuidv7(), growOutId: growOut.id, lotId, share: shareOf(null) }));
  await change.createAll("GrowOutParent", rows);
}

/** Seeds sown in all; null where a part was weighed out of a lot whose seeds nobody has weighed, or an earlier sowing is not known. */
function seedsTogether(growOut: RowOf<"GrowOut">, parts: readonly PartToSow[], lots: Lots): number | null {
  const earlier = growOut.sown === null ? 0 : growOut.seedsSown;
  return parts.reduce<number | null>((sum, part) => {
    if (sum === null) return null;
    if (part.unit === "seeds") return sum + part.amount;
    const weight = lots.get(part.lotId)?.row.thousandSeedGrams ?? null;
    const grams = gramsOf(part, weight);
    return weight === null || grams === null ? null : sum + Math.round((grams * 1000) / weight);
  }, earlier);
}
