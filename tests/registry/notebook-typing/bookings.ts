import { type NotebookBooking, NotebookBookingSchema } from "@/lib/schemas/notebook-typing/notebook-booking";
import type { Told, ToldAmount } from "@/lib/schemas/notebook-typing/told";
import { parsed } from "@/lib/schemas/parsed";
import { granted } from "@/tests/setup/registry";

/** A number as told: "12", about where `approximate`. */
export function told(value: number | null, more: Partial<Told> = {}): Told {
  return { words: String(value), value, low: value, high: value, approximate: false, ...more };
}

export function amount(value: number | null, unit: ToldAmount["unit"] = "g", more: Partial<Told> = {}): ToldAmount {
  return { ...told(value, more), unit };
}

type GrowOut = NotebookBooking["growOuts"][number];
type Lot = NotebookBooking["lots"][number];

export function growOut(more: Partial<GrowOut> & Pick<GrowOut, "ref" | "line" | "parents">): GrowOut {
  return {
    year: null,
    sown: null,
    seedsSown: null,
    emerged: null,
    plantsStanding: null,
    roguedBeforePollen: null,
    roguedAfterPollen: null,
    roguedUntimed: null,
    seedParents: null,
    seedParentsCounted: null,
    seedShares: null,
    bulked: null,
    outcome: null,
    isolation: [],
    neighbours: [],
    ...more,
  };
}

export function lot(more: Partial<Lot> & Pick<Lot, "ref" | "line" | "number" | "kind">): Lot {
  return { year: null, firstSeen: null, words: "", person: null, assumed: false, growOut: null, parents: [], ...more };
}

export function booking(more: Partial<NotebookBooking>): NotebookBooking {
  const given = {
    variety: { name: "Hollow Pea", crop: "pea", ownCrop: false },
    holder: null,
    lines: [{ words: "1994, a line", year: "1994", kind: "note" }],
    lots: [],
    growOuts: [],
    entries: [],
    tests: [],
    ...more,
  };
  return granted(parsed(NotebookBookingSchema, given));
}

/** "1994, from my aunt's jar, about 40 plants, kept from 12, came up badly", then "1996, 80 of the 1994 seed, kept all, 350 g". */
export function twoYears(more: Partial<NotebookBooking> = {}): NotebookBooking {
  return booking({
    lines: [
      {
        words: "1994, from my aunt's jar, about 40 plants, kept from 12, came up badly",
        year: "1994",
        kind: "grow-out",
      },
      { words: "1996, 80 plants of the 1994 seed, kept from 60, 350 g", year: "1996", kind: "grow-out" },
      { words: "1997 nothing sown", year: "1997", kind: "gap" },
    ],
    lots: [
      lot({
        ref: "jar",
        line: 0,
        number: "Hollow 1",
        kind: "founder",
        firstSeen: "1994",
        words: "from my aunt's jar",
        person: "my aunt",
      }),
      lot({ ref: "1994", line: 0, number: "Hollow 2", kind: "harvest", year: "1994", growOut: "g94" }),
      lot({ ref: "1996", line: 1, number: "Hollow 3", kind: "harvest", year: "1996", growOut: "g96" }),
    ],
    growOuts: [
      growOut({
        ref: "g94",
        line: 0,
        year: "1994",
        parents: [{ lot: "jar", share: null }],
        plantsStanding: told(40, { words: "about 40", approximate: true }),
        seedParents: told(12),
        seedParentsCounted: "plants",
      }),
      growOut({
        ref: "g96",
        line: 1,
        year: "1996",
        parents: [{ lot: "1994", share: null }],
        plantsStanding: told(80),
        seedParents: told(60),
        seedParentsCounted: "plants",
        seedShares: "equal",
      }),
    ],
    entries: [
      { line: 0, lot: "jar", on: "1994", kind: "received", amount: null, other: "my aunt", manner: null },
      {
        line: 1,
        lot: "1996",
        on: "1996",
        kind: "harvested",
        amount: amount(350, "g", { words: "350 g" }),
        other: null,
        manner: null,
      },
    ],
    ...more,
  });
}
