import type { Client, Database } from "@/lib/db";
import type { Refusal } from "@/lib/science/outcome";
import { balanceOf, bringsIn, standingEntries } from "../ledger/balance";
import { readDescent } from "./descent";
import { mergeFaults } from "./merge-faults";
import { parentageOf, type RecordOfLot, recordNamed, recordOfLot } from "./record-of-lot";

/** What a record brings with it. */
export interface SideOfMerge {
  readonly id: string;
  readonly number: string;
  readonly holder: string | null;
  readonly parentage: string;
  /** grams on hand by its own ledger; null not known */
  readonly grams: number | null;
  readonly entries: number;
  readonly tests: number;
  readonly containers: number;
  readonly transfers: number;
  readonly stories: number;
  /** observations, weighings, moisture readings, warnings, questions */
  readonly notes: number;
  /** grow-outs that it was sown in, and lots that seed of it went into */
  readonly offspring: number;
}

/** Something that the two records say differently, or that one does not say. */
export interface Difference {
  readonly what: string;
  readonly one: string | null;
  readonly other: string | null;
}

/** What would come together where two records were read as one lot. */
export interface MergeRead {
  readonly one: SideOfMerge;
  readonly other: SideOfMerge;
  /** grams on hand if the first leads, by the entries of both; null not known */
  readonly grams: number | null;
  /** the same if the second leads, whose seed weight would then hold */
  readonly gramsIfOther: number | null;
  readonly differences: readonly Difference[];
  /** seed that came in by both ledgers on days that may be one, in the same amount: perhaps written twice */
  readonly perhapsTwice: readonly { readonly on: string; readonly amount: number; readonly unit: string }[];
  readonly parentageDiffers: boolean;
  readonly faults: readonly Refusal[];
}

/** Reads what two records would be as one lot. Null where one of them is not on record. */
export async function readMerge(db: Database, lotId: string, named: string): Promise<MergeRead | null> {
  const one = await recordOfLot(db.read, lotId);
  const other = (await recordNamed(db.read, named)) ?? (await recordOfLot(db.read, named));
  if (!one || !other) return null;
  const descent = await readDescent(db.read, one.variety.cropId, { claims: true });
  const [own, others] = [await entriesOf(db.read, one.id), await entriesOf(db.read, other.id)];
  const together = [...own, ...others].sort((a, b) => (a.id < b.id ? -1 : 1));
  return {
    one: await sideOf(db.read, one, balanceOf(own, one.thousandSeedGrams).grams),
    other: await sideOf(db.read, other, balanceOf(others, other.thousandSeedGrams).grams),
    grams: balanceOf(together, one.thousandSeedGrams).grams,
    gramsIfOther: balanceOf(together, other.thousandSeedGrams).grams,
    differences: differencesOf(one, other),
    perhapsTwice: perhapsTwice(own, others),
    parentageDiffers: parentageOf(one) !== parentageOf(other),
    faults: mergeFaults(descent, { leading: one, other }),
  };
}

type Entries = Awaited<ReturnType<typeof entriesOf>>;

async function entriesOf(db: Client, lotId: string) {
  return db.ledgerEntry.findMany({ where: { lotId }, orderBy: { id: "asc" } });
}

async function sideOf(db: Client, record: RecordOfLot, grams: number | null): Promise<SideOfMerge> {
  const counted = await db.lot.findUniqueOrThrow({
    where: { id: record.id },
    select: {
      _count: {
        select: {
          ledger: true,
          tests: true,
          containers: true,
          transfersFrom: true,
          transfersTo: true,
          stories: true,
          observations: true,
          weighings: true,
          moistureReadings: true,
          warnings: true,
          questions: true,
          sownIn: true,
          children: true,
        },
      },
    },
  });
  const { _count: n } = counted;
  return {
    id: record.id,
    number: record.number,
    holder: record.holder?.person?.name ?? null,
    parentage: parentageOf(record),
    grams,
    entries: n.ledger,
    tests: n.tests,
    containers: n.containers,
    transfers: n.transfersFrom + n.transfersTo,
    stories: n.stories,
    notes: n.observations + n.weighings + n.moistureReadings + n.warnings + n.questions,
    offspring: n.sownIn + n.children,
  };
}

const compared: readonly (readonly [string, (record: RecordOfLot) => string | number | null])[] = [
  ["year", ({ year }) => year],
  ["holder", ({ holder }) => holder?.person?.name ?? null],
  ["parents", parentageOf],
  ["thousand-seed weight, g", ({ thousandSeedGrams }) => thousandSeedGrams],
  ["how it stands", ({ status }) => status],
  ["treatment", ({ treatment }) => treatment],
  ["strain", ({ strain }) => strain?.name ?? null],
  ["one line or many", ({ founderLines }) => founderLines],
  ["inbreeding", ({ inbreeding }) => inbreeding],
  ["the giver’s number", ({ donorNumber }) => donorNumber],
  ["isolation", ({ isolationGrade }) => isolationGrade],
  ["identity", ({ identityGrade }) => identityGrade],
];

function differencesOf(one: RecordOfLot, other: RecordOfLot): Difference[] {
  return compared.flatMap(([what, of]) => {
    const [a, b] = [of(one), of(other)];
    return a === b ? [] : [{ what, one: a === null ? null : String(a), other: b === null ? null : String(b) }];
  });
}

const comesIn = (kind: string) => bringsIn(kind) || kind === "weighed";

function perhapsTwice(own: Entries, others: Entries): MergeRead["perhapsTwice"] {
  const incoming = (entries: Entries) =>
    standingEntries(entries).flatMap(({ entry }) => (comesIn(entry.kind) ? [entry] : []));
  const there = incoming(others);
  return incoming(own).flatMap(({ on, onFirst, onLast, amount, unit }) =>
    there.some(
      (each) => each.amount === amount && each.unit === unit && each.onFirst <= onLast && each.onLast >= onFirst,
    )
      ? [{ on, amount, unit }]
      : [],
  );
}
