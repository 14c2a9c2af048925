import { uuidv7 } from "uuidv7";
import type { NewRowOf } from "@/lib/registry/change-set/records";
import type { BookedLot } from "@/lib/schemas/notebook-typing/notebook-booking";
import { newLabelCode } from "../lots/new-label-code";
import { foldName, sameName } from "../names/fold-name";
import type { BookingPlace } from "./booking-place";
import { FreeNames } from "./free-names";
import { growOutRow, wholeOf } from "./grow-out-rows";
import { growOutObservations } from "./told-observations";

/** What the lines made, by their references. */
export interface WrittenLineage {
  readonly growOutOfLine: ReadonlyMap<number, string>;
  readonly lotOfLine: ReadonlyMap<number, string>;
}

/** Writes grow-outs, lots and how they hang together, with every number that is not simply a number beside them. */
export async function writeLineage(place: BookingPlace): Promise<WrittenLineage> {
  const growOutOf = await writeGrowOuts(place);
  const { change, tx, booking, lots, dates, varietyId, holderId } = place;
  const idOf = (ref: string) => lots.idOf.get(ref) ?? "";
  const rows: NewRowOf<"Lot">[] = [];
  for (const [index, lot] of booking.lots.entries()) {
    const year = dates.read(lot.year, ["lots", index, "year"]);
    rows.push({
      id: idOf(lot.ref),
      number: sameName(lot.number),
      numberKey: foldName(lot.number),
      code: await newLabelCode(tx),
      varietyId,
      holderId: lot.kind === "split" ? null : holderId,
      kind: lot.kind,
      growOutId: lot.growOut === null ? null : (growOutOf.get(lot.growOut) ?? null),
      year: year?.text ?? null,
      yearFirst: year?.first ?? null,
      yearLast: year?.last ?? null,
      yearWords: year === null && lot.firstSeen !== null ? `${lot.firstSeen} or before` : null,
      origin: originOf(lot),
      notes: notesOf(lot),
    });
  }
  await change.createAll("Lot", rows);
  await change.createAll(
    "GrowOutParent",
    booking.growOuts.flatMap((growOut) =>
      growOut.parents.map(({ lot, share }) => ({
        id: uuidv7(),
        growOutId: growOutOf.get(growOut.ref) ?? "",
        lotId: idOf(lot),
        share: growOut.parents.length === 1 ? 1 : share,
      })),
    ),
  );
  await change.createAll(
    "LotParent",
    booking.lots.flatMap((lot) =>
      lot.parents.map((parent) => ({
        id: uuidv7(),
        lotId: idOf(lot.ref),
        parentLotId: idOf(parent.lot),
        share: lot.kind === "split" ? 1 : parent.share,
      })),
    ),
  );
  await change.createAll("LotMaking", makings(place));
  return {
    growOutOfLine: byLine(booking.growOuts, (each) => growOutOf.get(each.ref)),
    lotOfLine: byLine(booking.lots, (each) => idOf(each.ref)),
  };
}

/** The first of a line's records. */
function byLine<T extends { readonly line: number }>(
  records: readonly T[],
  idOf: (record: T) => string | undefined,
): Map<number, string> {
  const found = new Map<number, string>();
  for (const record of records) {
    const id = idOf(record);
    if (id && !found.has(record.line)) found.set(record.line, id);
  }
  return found;
}

async function writeGrowOuts({
  change,
  tx,
  booking,
  varietyId,
  varietyName,
  holderId,
  dates,
}: BookingPlace): Promise<Map<string, string>> {
  const taken = await tx.growOut.findMany({
    where: { nameKey: { startsWith: foldName(varietyName) } },
    select: { name: true },
  });
  const names = new FreeNames(taken.map((growOut) => growOut.name));
  const ids = new Map<string, string>();
  for (const [index, growOut] of booking.growOuts.entries()) {
    const id = uuidv7();
    ids.set(growOut.ref, id);
    const year = dates.read(growOut.year, ["growOuts", index, "year"]);
    const sown = dates.read(growOut.sown, ["growOuts", index, "sown"]) ?? year;
    const name = names.next(`${varietyName} ${growOut.year ?? "year not known"}`);
    await change.create("GrowOut", growOutRow(growOut, { id, ...name, varietyId, stewardId: holderId }, sown));
    await change.createAll("Observation", growOutObservations(growOut, id, year));
    const [up, untimed] = [wholeOf(growOut.emerged), wholeOf(growOut.roguedUntimed)];
    const on = { on: year?.text ?? "", onFirst: year?.first ?? "", onLast: year?.last ?? "" };
    if (up !== null)
      await change.create("StageCount", { id: uuidv7(), growOutId: id, stage: "up", plants: up, ...(year ? on : {}) });
    if (untimed !== null && year) {
      await change.create("RoguePass", { id: uuidv7(), growOutId: id, ...on, timing: null, pulled: untimed });
    }
    await change.createAll(
      "IsolationMethod",
      growOut.isolation.map((method) => ({ id: uuidv7(), growOutId: id, method, evidence: "told" })),
    );
    await change.createAll(
      "NeighbourSource",
      growOut.neighbours.map((neighbour) => ({ id: uuidv7(), growOutId: id, ...neighbour, howSure: "told" })),
    );
  }
  return ids;
}

function makings({ booking, lots, dates }: BookingPlace): NewRowOf<"LotMaking">[] {
  return booking.lots.flatMap((lot, index) => {
    if (lot.kind !== "blend" && lot.kind !== "split") return [];
    const on = dates.read(lot.year ?? lot.firstSeen, ["lots", index, "year"]);
    return [
      {
        id: uuidv7(),
        lotId: lots.idOf.get(lot.ref) ?? "",
        kind: lot.kind,
        on: on?.text ?? null,
        onFirst: on?.first ?? null,
        onLast: on?.last ?? null,
        reason: lot.words || null,
      },
    ];
  });
}

function originOf(lot: BookedLot): string | null {
  if (lot.kind === "harvest") return "own grow-out";
  if (lot.kind === "founder") return lot.assumed ? "unknown before here" : "received";
  return null;
}

function notesOf(lot: BookedLot): string | null {
  if (lot.kind === "founder" && lot.assumed) return "Unknown before here: no line says where this seed came from.";
  if (lot.kind === "split" && lot.person !== null) return `In the hand of ${lot.person}, as told.`;
  return null;
}
