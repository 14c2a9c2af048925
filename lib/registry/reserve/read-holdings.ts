import { type Selection, sql } from "@/lib/db";
import { grouped } from "../change-set/grouped";
import type { LotFigures } from "../figures/read-figures";
import type { HeldLot, WordOfHolder } from "../varieties/holders";

/** A container of a lot, and where it stands. */
export interface ContainerOfLot {
  readonly containerId: string;
  readonly code: string;
  readonly kind: string | null;
  readonly amount: number | null;
  readonly unit: string;
  readonly sealedOn: string | null;
  readonly lastOpened: string | null;
  readonly desiccant: string | null;
  readonly note: string | null;
  readonly place: string | null;
  readonly placeKind: string | null;
  readonly building: string | null;
  readonly temperatureC: number | null;
  readonly relativeHumidityPercent: number | null;
}

/** A lot of a variety as far as reserve and holders need it. */
export interface Holding extends HeldLot {
  readonly holder: string | null;
  readonly thousandSeedGrams: number | null;
  readonly year: string | null;
  readonly kind: string;
  /** of a founder: one line or many; null not known */
  readonly founderLines: string | null;
  readonly treatment: string | null;
  readonly lastTest: LotFigures["lastTest"];
  readonly containers: readonly ContainerOfLot[];
}

export interface HoldingSql
  extends Omit<Holding, "gramsOnHand" | "buildings" | "lastTest" | "containers" | "lastInHand">,
    ContainerSql {
  readonly lastEntry: string | null;
  readonly lastTested: string | null;
}

type ContainerSql = { readonly [Field in keyof Omit<ContainerOfLot, "kind">]: ContainerOfLot[Field] | null } & {
  readonly containerKind: string | null;
};

/**
 * All lots of a variety with their holders, containers and the last day on which an entry or a test shows that somebody had them in hand:
 * a row a container.
 */
export function holdingsOfVariety(varietyId: string): Selection<HoldingSql> {
  return {
    columns: {
      id: "text",
      number: "text",
      holderId: "text",
      holder: "text",
      status: "text",
      thousandSeedGrams: "number",
      year: "text",
      yearFirst: "text",
      yearLast: "text",
      treatment: "text",
      kind: "text",
      founderLines: "text",
      lastEntry: "text",
      lastTested: "text",
      containerId: "text",
      code: "text",
      containerKind: "text",
      amount: "number",
      unit: "text",
      sealedOn: "text",
      lastOpened: "text",
      desiccant: "text",
      note: "text",
      place: "text",
      placeKind: "text",
      building: "text",
      temperatureC: "number",
      relativeHumidityPercent: "number",
    },
    rows: sql`
      SELECT l."id", l."number", l."holderId", p."name" AS "holder", l."status", l."thousandSeedGrams", l."year", l."yearFirst", l."yearLast",
        l."treatment", l."kind", l."founderLines",
        (SELECT MAX(e."onFirst") FROM "LedgerEntry" e WHERE e."lotId" = m."id" AND NOT e."takenBack"
          AND NOT EXISTS (SELECT 1 FROM "LedgerEntry" n WHERE n."replacesId" = e."id")) AS "lastEntry",
        (SELECT MAX(t."onFirst") FROM "GerminationTest" t WHERE t."lotId" = m."id") AS "lastTested",
        c."id" AS "containerId", c."code", c."kind" AS "containerKind", c."amount", c."unit", c."sealedOn", c."lastOpened", c."desiccant", c."note",
        w."name" AS "place", w."kind" AS "placeKind", w."building", w."temperatureC", w."relativeHumidityPercent"
      FROM "Lot" m JOIN "Lot" l ON l."id" = COALESCE(m."sameAsId", m."id") LEFT JOIN "Person" p ON p."stewardId" = l."holderId"
        LEFT JOIN "Container" c ON c."lotId" = m."id"
        LEFT JOIN "Place" w ON w."id" = c."placeId"
      WHERE m."varietyId" = ${varietyId} ORDER BY l."id", c."id"`,
  };
}

/** The lots of such rows, with what their figures say. */
export function holdingsOfRows(rows: readonly HoldingSql[], figures: ReadonlyMap<string, LotFigures>): Holding[] {
  return [...grouped(rows, (row) => row.id).values()].flatMap((own) => holdingOf(own, figures));
}

/** What the holders of a variety said of their seed. */
export function wordsOfVariety(varietyId: string): Selection<WordOfHolder> {
  return {
    columns: { id: "text", stewardId: "text", lotId: "text", on: "text", onFirst: "text", still: "text" },
    rows: sql`
      SELECT w."id", w."stewardId", w."lotId", w."on", w."onFirst", w."still" FROM "HolderConfirmation" w
      WHERE w."varietyId" = ${varietyId} ORDER BY w."id"`,
  };
}

function holdingOf(rows: readonly HoldingSql[], figures: ReadonlyMap<string, LotFigures>): Holding[] {
  const [row] = rows;
  if (!row) return [];
  const { id, number, holderId, holder, status, thousandSeedGrams, year, yearFirst, yearLast, treatment } = row;
  const { kind, founderLines } = row;
  const containers = rows.flatMap((each) => containerOf(each) ?? []);
  // a row a container of each of its records
  const inHand = rows
    .flatMap(({ lastEntry, lastTested }) => [lastEntry, lastTested])
    .filter((day) => day !== null)
    .sort();
  return [
    {
      ...{
        id,
        number,
        holderId,
        holder,
        status,
        thousandSeedGrams,
        year,
        yearFirst,
        yearLast,
        treatment,
        kind,
        founderLines,
      },
      gramsOnHand: figures.get(id)?.gramsOnHand ?? null,
      lastTest: figures.get(id)?.lastTest ?? null,
      lastInHand: inHand.at(-1) ?? null,
      buildings: [...new Set(containers.flatMap((each) => each.building ?? each.place ?? []))],
      containers,
    },
  ];
}

function containerOf(row: HoldingSql): ContainerOfLot | null {
  const { containerId, code, unit } = row;
  if (containerId === null || code === null || unit === null) return null;
  const { containerKind: kind, amount, sealedOn, lastOpened, desiccant, note } = row;
  const { place, placeKind, building, temperatureC, relativeHumidityPercent } = row;
  return {
    ...{ containerId, code, kind, amount, unit, sealedOn, lastOpened, desiccant, note },
    ...{ place, placeKind, building, temperatureC, relativeHumidityPercent },
  };
}
