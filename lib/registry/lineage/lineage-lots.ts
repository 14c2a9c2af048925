import { compareCodePoints } from "@/lib/science/code-point-order";
import { splitCivilDay } from "@/lib/science/dates/civil-day";
import { grouped } from "../change-set/grouped";
import { together } from "../figures/read-as-one";
import type { LotFigures } from "../figures/read-figures";
import { type FounderLines, type LineageStanding, lineageStanding } from "../varieties/lineage-standing";
import { ownKept } from "../varieties/own-kept";
import type { GrowOutSql, LinkSql, LotSql, MomentSql } from "./lineage-selections";

/** Low and high end of a figure; a point is low = high. */
export interface LineageEnds {
  readonly low: number;
  readonly high: number;
}

/** A lot of a lineage; or a grow-out that gave no seed (`failed`), or stands in the field and has given none yet (`growing`). */
export interface LotOfLineage {
  readonly id: string;
  /** the lot number; of a grow-out without seed its name */
  readonly number: string;
  readonly kind: "founder" | "harvest" | "blend" | "split" | "failed" | "growing";
  readonly varietyId: string;
  readonly variety: string;
  readonly strain: string | null;
  /** who holds it; of a grow-out without seed who grew it */
  readonly holderId: string | null;
  /** first and last moment of its making as years with their part; null: nobody knows */
  readonly at: { readonly first: number; readonly last: number } | null;
  /** the date of that as it stands on record (EDTF), and as it was told */
  readonly on: string | null;
  readonly onWords: string | null;
  /** with a role in a cross: shares are then of the plants, and each side gives half of the genes */
  readonly parents: readonly {
    readonly id: string;
    readonly share: number | null;
    readonly role?: LinkSql["role"];
  }[];
  readonly growOutId: string | null;
  readonly growOut: string | null;
  /** effective size of the grow-out that made it; high null: nothing bounds it */
  readonly effectiveSize: { readonly low: number; readonly high: number | null } | null;
  /** of the founders' own diversity, what is kept, 0..1; a span where the records allow more than one figure */
  readonly kept: LineageEnds | null;
  readonly standing: LineageStanding;
  /** share of its genes that came in with foreign pollen, 0..1 */
  readonly foreignAncestry: number | null;
  readonly generations: number | null;
  /** of the grow-out that made it: the rate is null where a cross is only suspected */
  readonly foreignPollen: { readonly rate: number | null; readonly how: string | null } | null;
  readonly gramsOnHand: number | null;
  /** whether there is seed; null: its ledger says nothing */
  readonly living: boolean | null;
  readonly status: string | null;
  readonly outcome: string | null;
}

export interface LineageRows {
  readonly lots: readonly LotSql[];
  readonly growOuts: readonly GrowOutSql[];
  readonly ofLots: readonly LinkSql[];
  readonly ofGrowOuts: readonly LinkSql[];
  readonly moments: readonly MomentSql[];
}

/**
 * The lots of a variety's lineage: its own, those of other varieties that were crossed into it, all that descends from them, and the grow-outs
 * that gave no seed or none yet. Records that were merged stand as the one that leads, with the parents that it names. By number.
 */
export function lotsOfLineage(
  varietyId: string,
  rows: LineageRows,
  figures: ReadonlyMap<string, LotFigures>,
  matingSystem: string | null,
  lines: FounderLines,
): readonly LotOfLineage[] {
  const lead = leading(rows.lots);
  const growOuts = new Map(rows.growOuts.map((growOut) => [growOut.id, growOut]));
  const parentsOfLot = grouped(rows.ofLots, ({ of }) => of);
  const parentsOfGrowOut = grouped(rows.ofGrowOuts, ({ of }) => of);
  const moments = grouped(rows.moments, ({ lotId }) => lotId);
  const linked = (links: readonly LinkSql[] = []) =>
    together(
      links.map(({ parentId, share, role }) => (role ? { id: parentId, share, role } : { id: parentId, share })),
      lead,
    ).map((parent, _, all) => ({ ...parent, share: all.length === 1 ? 1 : parent.share }));
  const whole = new Map<string, LotOfLineage>();
  for (const row of rows.lots) {
    if (row.sameAsId !== null) continue;
    const growOut = row.kind === "harvest" && row.growOutId !== null ? growOuts.get(row.growOutId) : undefined;
    const parents = growOut ? linked(parentsOfGrowOut.get(growOut.id)) : linked(parentsOfLot.get(row.id));
    const figure = figures.get(row.id) ?? null;
    whole.set(row.id, {
      id: row.id,
      number: row.number,
      kind: kindOf(row.kind, parents.length),
      varietyId: row.varietyId,
      variety: row.variety,
      strain: row.strain,
      holderId: row.holderId,
      ...momentOfLot(row, growOut, moments.get(row.id)?.[0]),
      parents,
      growOutId: growOut?.id ?? null,
      growOut: growOut?.name ?? null,
      ...figured(figure, matingSystem, lines),
      foreignPollen: foreignOf(growOut, row.suspected),
      gramsOnHand: figure?.gramsOnHand ?? null,
      living: figure?.gramsOnHand == null ? null : figure.gramsOnHand > 0,
      status: row.status,
      outcome: null,
    });
  }
  const gave = new Set(rows.lots.flatMap(({ growOutId }) => growOutId ?? []));
  for (const growOut of rows.growOuts) {
    if (gave.has(growOut.id)) continue;
    const standing = growOut.outcome === null;
    if (standing && (growOut.sown === null || growOut.endedOn !== null)) continue;
    const parents = linked(parentsOfGrowOut.get(growOut.id));
    whole.set(growOut.id, withoutSeed(growOut, standing ? "growing" : "failed", parents));
  }
  return ofVariety(varietyId, whole).sort((a, b) => compareCodePoints(a.number, b.number));
}

/** Whether it is a grow-out that gave no seed, or none yet, and no lot. */
export function hasNoSeed({ kind }: Pick<LotOfLineage, "kind">): boolean {
  return kind === "failed" || kind === "growing";
}

/** The record under which one is read: of merged records the one that leads. */
export function leading(lots: readonly Pick<LotSql, "id" | "sameAsId">[]): (id: string) => string {
  const leads = new Map(lots.flatMap(({ id, sameAsId }) => (sameAsId === null ? [] : [[id, sameAsId] as const])));
  return (id) => leads.get(id) ?? id;
}

/** The variety's own lots, all that descends from them, and the parents from elsewhere of any of these. */
function ofVariety(varietyId: string, whole: ReadonlyMap<string, LotOfLineage>): LotOfLineage[] {
  const children = new Map<string, LotOfLineage[]>();
  for (const lot of whole.values()) {
    for (const { id } of lot.parents) {
      const known = children.get(id);
      if (known) known.push(lot);
      else children.set(id, [lot]);
    }
  }
  const taken = new Set([...whole.values()].filter((lot) => lot.varietyId === varietyId));
  for (const lot of taken) for (const child of children.get(lot.id) ?? []) taken.add(child);
  const elsewhere = [...taken].flatMap(({ parents }) => parents.flatMap(({ id }) => whole.get(id) ?? []));
  return [...new Set([...taken, ...elsewhere])];
}

function kindOf(kind: string, parents: number): LotOfLineage["kind"] {
  if (kind === "harvest") return "harvest";
  if ((kind === "blend" || kind === "split") && parents > 0) return kind;
  return "founder";
}

function figured(figure: LotFigures | null, matingSystem: string | null, lines: FounderLines) {
  const standing = figure ? lineageStanding(figure, matingSystem, lines) : "plants not known";
  const size = figure?.effectiveSize ?? null;
  const own = ownKept(figure, standing);
  const [low, high] = [own.value ?? own.low, own.value ?? own.high];
  return {
    standing,
    kept: low === null || high === null ? null : { low, high },
    effectiveSize: size !== null ? { low: size, high: size } : (figure?.span?.effectiveSize ?? null),
    foreignAncestry: figure?.foreignAncestry ?? null,
    generations: figure?.generations ?? null,
  };
}

function foreignOf(growOut: GrowOutSql | undefined, suspected: boolean): LotOfLineage["foreignPollen"] {
  const rate = growOut?.foreignPollen ?? null;
  const how = growOut?.foreignPollenHow ?? null;
  if (rate !== null && rate > 0) return { rate, how };
  return suspected && rate === null ? { rate: null, how } : null;
}

function withoutSeed(growOut: GrowOutSql, kind: "failed" | "growing", parents: LotOfLineage["parents"]): LotOfLineage {
  return {
    id: growOut.id,
    number: growOut.name,
    kind,
    varietyId: growOut.varietyId,
    variety: growOut.variety,
    strain: null,
    holderId: growOut.stewardId,
    at: momentOf(growOut.sownFirst, growOut.sownLast),
    on: growOut.sown,
    onWords: null,
    parents,
    growOutId: growOut.id,
    growOut: growOut.name,
    effectiveSize: null,
    kept: null,
    standing: "plants not known",
    foreignAncestry: null,
    generations: null,
    foreignPollen: null,
    gramsOnHand: null,
    living: null,
    status: null,
    outcome: growOut.outcome,
  };
}

/** A harvest and a founder stand at their harvest, a split or blend where it was made; where no harvest is told, in the year after the sowing. */
function momentOfLot(row: LotSql, growOut: GrowOutSql | undefined, told: MomentSql | undefined) {
  const made = row.kind === "split" || row.kind === "blend";
  const own = momentOf(row.yearFirst, row.yearLast);
  const ofTold = told ? momentOf(told.onFirst, told.onLast) : null;
  const nothing = { at: null, on: null, onWords: row.yearWords };
  if (made)
    return ofTold && told
      ? { at: ofTold, on: told.on, onWords: null }
      : own
        ? { at: own, on: row.year, onWords: row.yearWords }
        : nothing;
  if (own) return { at: own, on: row.year, onWords: row.yearWords };
  const sown = growOut ? momentOf(growOut.sownFirst, growOut.sownLast) : null;
  if (sown && growOut) return { at: { first: sown.first, last: sown.last + 1 }, on: null, onWords: row.yearWords };
  return nothing;
}

/** Two days as years with their part: the first from its morning, the last to its evening. */
export function momentOf(first: string | null, last: string | null): { first: number; last: number } | null {
  const [from, to] = [first === null ? null : splitCivilDay(first), last === null ? null : splitCivilDay(last)];
  if (!from || !to) return null;
  const part = ({ year, month, day }: { year: number; month: number; day: number }) =>
    year + (month - 1) / 12 + (day - 1) / 372;
  const [start, end] = [part(from), part(to) + 1 / 372];
  return start <= end ? { first: start, last: end } : { first: end, last: start };
}
