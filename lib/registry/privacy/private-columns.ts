import type { SeenTable } from "./hidden-rows";
import type { Viewer } from "./viewer";

/** A text as SQL writes it. */
export const quoted = (text: string) => `'${text.replaceAll("'", "''")}'`;

/** What stands for a private value: nothing, or a word where the table demands one. */
type Instead = null | string;

/** Columns of a table that are private, and for whom they are not: a condition in SQL over its row x. */
export interface PrivateColumns {
  readonly columns: Readonly<Record<string, Instead>>;
  readonly seenIf: string;
}

const never = "1 = 0";
const always = "1 = 1";

/**
 * The private columns for a viewer. Contacts are seen by the person and by a librarian, who has to write to them; exact places by their steward,
 * or by all where the steward says so; who got seed by both hands and by the library's desk; a neighbour's planting by those who grow beside it.
 */
export function privateColumns(viewer: Viewer): Readonly<Partial<Record<SeenTable, readonly PrivateColumns[]>>> {
  const { stewardId, growOutIds } = viewer;
  const own = (column: string) => (stewardId === null ? never : `x."${column}" = ${quoted(stewardId)}`);
  const librarian = viewer.as === "librarian" ? always : never;
  // The desk of one library sees its own transfers, a librarian of the whole circle all.
  const desk = viewer.as === "librarian" && stewardId === null ? always : never;
  const ownLot = (column: string) =>
    stewardId === null
      ? never
      : `x."${column}" IN (SELECT l."id" FROM WHOLE."Lot" l WHERE l."holderId" = ${quoted(stewardId)})`;
  const ownGrowOut = (column: string) => {
    const named = growOutIds.length > 0 ? `x."${column}" IN (${growOutIds.map(quoted).join(", ")})` : never;
    if (stewardId === null) return named;
    const kept = `SELECT g."id" FROM WHOLE."GrowOut" g WHERE g."stewardId" = ${quoted(stewardId)}`;
    return `(${named} OR x."${column}" IN (${kept}))`;
  };
  const either = (...conditions: string[]) => conditions.map((each) => `(${each})`).join(" OR ");
  return {
    Person: [
      {
        columns: {
          ...{ contact: null, address: null, consent: null, consentOn: null, lastHeard: null },
          successorStewardId: null,
        },
        seenIf: either(own("stewardId"), librarian),
      },
    ],
    Steward: [
      {
        columns: { place: null },
        seenIf: either(
          own("id"),
          librarian,
          `x."placeGrain" <> 'none' AND x."id" NOT IN (SELECT "id" FROM "borrowers")`,
        ),
      },
      { columns: { note: null, extra: null }, seenIf: either(own("id"), librarian) },
    ],
    Plot: [
      { columns: { latitude: null, longitude: null }, seenIf: either(own("stewardId"), `x."placeGrain" = 'exact'`) },
      {
        columns: { place: null, name: "a plot", nameKey: "a plot" },
        seenIf: either(own("stewardId"), `x."placeGrain" <> 'none'`),
      },
      { columns: { note: null, altitudeM: null }, seenIf: own("stewardId") },
    ],
    NeighbourSource: [{ columns: { what: "another planting", note: null }, seenIf: ownGrowOut("growOutId") }],
    Transfer: [
      {
        columns: { toStewardId: null, toWords: null, purpose: null, conditions: null, told: null, note: null },
        seenIf: either(desk, own("fromStewardId"), own("toStewardId")),
      },
    ],
    LedgerEntry: [
      {
        columns: { other: null, otherStewardId: null, notes: null, extra: null },
        seenIf: either(
          desk,
          ownLot("lotId"),
          own("otherStewardId"),
          // Else it stays, but where it names a hand, or a lot or grow-out that is hidden.
          `x."kind" NOT IN ('given', 'received')
           AND (x."otherLotId" IS NULL OR x."otherLotId" NOT IN (SELECT "id" FROM "hidden_Lot"))
           AND (x."other" IS NULL OR x."other" NOT IN
             (SELECT g."name" FROM WHOLE."GrowOut" g WHERE g."id" IN (SELECT "id" FROM "hidden_GrowOut")))`,
        ),
      },
    ],
    HolderConfirmation: [{ columns: { note: null }, seenIf: either(desk, own("stewardId"), librarian) }],
    FieldDevice: [{ columns: { name: "a phone" }, seenIf: own("stewardId") }],
  };
}
