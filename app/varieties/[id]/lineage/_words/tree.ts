import type { StemBand, StemClaim, StemLot, StemTree } from "@/components/stem-chart";
import { hasNoSeed, type LotOfLineage } from "@/lib/registry/lineage/lineage-lots";
import type { ClaimOfLineage, LineageRead } from "@/lib/registry/lineage/read-lineage";

/** Lots of nobody stand in a band of their own. */
const nobody = "nobody";

/** The lineage as the stem chart draws it. */
export function treeOf(read: LineageRead): StemTree {
  const drawn = new Set(read.lots.map(({ id }) => id));
  return {
    lots: read.lots.map((lot) => stemLot(lot, read.variety.id, drawn)),
    claims: read.claims.map(stemClaim),
    bands: bandsOf(read),
  };
}

/** What was crossed in from another variety is drawn by itself: its own descent belongs to that variety’s picture, and is no gap here. */
function stemLot(lot: LotOfLineage, varietyId: string, drawn: ReadonlySet<string>): StemLot {
  const own = lot.varietyId === varietyId;
  return {
    id: lot.id,
    number: lot.number,
    kind: lot.kind,
    at: lot.at,
    band: lot.holderId ?? nobody,
    parents: genesOf(own ? lot.parents : lot.parents.filter(({ id }) => drawn.has(id))),
    size: lot.effectiveSize,
    kept: lot.kept,
    foreign: lot.foreignPollen,
    living: lot.living,
    variety: own ? null : lot.variety,
  };
}

/** Each parent's part of the genes: in a cross each side gives half, however many plants it had. */
function genesOf(parents: LotOfLineage["parents"]): StemLot["parents"] {
  if (parents.every(({ role }) => !role)) return parents.map(({ id, share }) => ({ id, share }));
  return parents.map(({ id, share, role }) => {
    const side = parents.filter((each) => each.role === role);
    const whole = side.reduce((sum, each) => sum + (each.share ?? Number.NaN), 0);
    return {
      id,
      role: role ?? undefined,
      share: side.length === 1 ? 0.5 : share === null || !(whole > 0) ? null : (0.5 * share) / whole,
    };
  });
}

/** A lot's own page; of a grow-out without seed that of the grow-out. */
export function hrefOf(lot: LotOfLineage): string {
  return hasNoSeed(lot) ? `/grow-outs/${lot.id}` : `/lots/${lot.id}`;
}

function stemClaim(claim: ClaimOfLineage): StemClaim {
  return {
    id: claim.id,
    lotId: claim.lotId,
    kind: claim.kind as StemClaim["kind"],
    parentId: claim.parentLotId,
    standing: claim.standing as StemClaim["standing"],
  };
}

function bandsOf({ stewards, lots }: LineageRead): StemBand[] {
  const bands = stewards.map(({ id, name, place }) => ({ key: id, name: name ?? "a steward", place }));
  return lots.some(({ holderId }) => holderId === null)
    ? [...bands, { key: nobody, name: "no holder is written", place: null }]
    : bands;
}

/** The first word of the numbers, with its blank, where all lots of the variety begin with it: a phone leaves it out. */
export function wordOfAll({ lots, variety }: LineageRead): string | undefined {
  const numbers = lots.filter((lot) => !hasNoSeed(lot) && lot.varietyId === variety.id).map(({ number }) => number);
  const word = numbers[0]?.match(/^\p{L}+ /u)?.[0];
  return word && numbers.length > 1 && numbers.every((number) => number.startsWith(word)) ? word : undefined;
}
