import { uuidv7 } from "uuidv7";
import type { Transaction } from "@/lib/db";
import { type BookedLot, idOfStandingLot, type NotebookBooking } from "@/lib/schemas/notebook-typing/notebook-booking";
import { type Path, type Refusal, refusal } from "@/lib/science/outcome";
import { foldName } from "../names/fold-name";

/** A lot that stands in the registry and is named by the booking. */
export interface StandingLot {
  readonly id: string;
  readonly number: string;
  readonly varietyId: string;
  readonly thousandSeedGrams: number | null;
}

/** The lots of a booking by their reference: new ones with the id they will have, standing ones with theirs. */
export interface LotsOfBooking {
  readonly idOf: ReadonlyMap<string, string>;
  readonly numberOf: ReadonlyMap<string, string>;
  readonly standing: ReadonlyMap<string, StandingLot>;
  readonly refusals: readonly Refusal[];
}

/**
 * Looks up what the booking refers to. Refused: a lot that is not there or is of another crop, a number that is taken or stands twice,
 * and a lot that would be its own ancestor.
 */
export async function lotsOfBooking(tx: Transaction, booking: NotebookBooking, cropId: string): Promise<LotsOfBooking> {
  const refusals: Refusal[] = [];
  const idOf = new Map<string, string>();
  const numberOf = new Map<string, string>();
  for (const lot of booking.lots) {
    idOf.set(lot.ref, uuidv7());
    numberOf.set(lot.ref, lot.number);
  }
  const named = references(booking);
  const ids = [...new Set(named.flatMap(({ ref }) => idOfStandingLot(ref) ?? []))];
  const found = await tx.lot.findMany({
    where: { id: { in: ids } },
    select: { id: true, number: true, varietyId: true, thousandSeedGrams: true, variety: { select: { cropId: true } } },
  });
  const standing = new Map(found.map((lot) => [lot.id, lot]));
  for (const { ref, path } of named) {
    const id = idOfStandingLot(ref);
    const lot = id === null ? undefined : standing.get(id);
    if (id === null) {
      if (!idOf.has(ref))
        refusals.push(refusal("unknown-lot", path, ref, "is no lot of these lines", "choose one that they make"));
    } else if (!lot) {
      refusals.push(refusal("unknown-lot", path, id, "is no lot here", "choose one of the list"));
    } else if (lot.variety.cropId !== cropId) {
      const needed = "choose a lot of the same crop; others never come into one line";
      refusals.push(refusal("lot-of-another-crop", path, lot.number, "is a lot of another crop", needed));
    } else {
      idOf.set(ref, lot.id);
      numberOf.set(ref, lot.number);
    }
  }
  refusals.push(...(await numberFaults(tx, booking.lots)), ...ringFaults(booking));
  return { idOf, numberOf, standing, refusals };
}

/** Every place of the booking that names a lot. */
function references({ lots, growOuts, entries, tests }: NotebookBooking): { ref: string; path: Path }[] {
  return [
    ...lots.flatMap((lot, index) =>
      lot.parents.map((parent, place) => ({ ref: parent.lot, path: ["lots", index, "parents", place] })),
    ),
    ...growOuts.flatMap((growOut, index) =>
      growOut.parents.map((parent, place) => ({ ref: parent.lot, path: ["growOuts", index, "parents", place] })),
    ),
    ...entries.map((entry, index) => ({ ref: entry.lot, path: ["entries", index, "lot"] })),
    ...tests.map((test, index) => ({ ref: test.lot, path: ["tests", index, "lot"] })),
  ];
}

async function numberFaults(tx: Transaction, lots: readonly BookedLot[]): Promise<Refusal[]> {
  const keys = lots.map((lot) => foldName(lot.number));
  const taken = await tx.lot.findMany({
    where: { numberKey: { in: keys } },
    select: { number: true, numberKey: true },
  });
  const takenKeys = new Map(taken.map((lot) => [lot.numberKey, lot.number]));
  return lots.flatMap((lot, index) => {
    const path = ["lots", index, "number"];
    const key = keys[index] ?? "";
    const stands = takenKeys.get(key);
    const needed = "a number is given once and for life: write another";
    if (stands) return [refusal("number-taken", path, lot.number, `is the number of lot ${stands} already`, needed)];
    if (keys.indexOf(key) < index)
      return [refusal("number-twice", path, lot.number, "stands twice in these lines", needed)];
    return [];
  });
}

/** A lot is never its own ancestor: followed from each lot to what it came from, through the grow-outs. */
function ringFaults({ lots, growOuts }: NotebookBooking): Refusal[] {
  const growOut = new Map(growOuts.map((each) => [each.ref, each]));
  const parentsOf = new Map(
    lots.map((lot) => {
      const sown = lot.growOut === null ? [] : (growOut.get(lot.growOut)?.parents ?? []);
      return [lot.ref, [...lot.parents, ...sown].map((parent) => parent.lot)];
    }),
  );
  const reaches = (from: string, wanted: string, seen: Set<string>): boolean =>
    (parentsOf.get(from) ?? []).some((parent) => {
      if (parent === wanted) return true;
      if (seen.has(parent)) return false;
      seen.add(parent);
      return reaches(parent, wanted, seen);
    });
  return lots.flatMap((lot, index) => {
    if (!reaches(lot.ref, lot.ref, new Set())) return [];
    const grown = growOuts.findIndex((each) => each.ref === lot.growOut);
    const path = grown < 0 ? ["lots", index, "parents"] : ["growOuts", grown, "parents"];
    return [refusal("own-ancestor", path, lot.number, "would come from itself", "choose a lot that stood before it")];
  });
}
