import type { StemBand, StemClaim, StemLot, StemTree } from "@/components/stem-chart";
import type { LotOfLineage } from "@/lib/registry/lineage/lineage-lots";
import type { ClaimOfLineage, LineageRead } from "@/lib/registry/lineage/read-lineage";
import { whenInWords } from "./when";

/** Lots of nobody stand in a band of their own. */
const nobody = "nobody";

/** The lineage as the stem chart draws it. */
export function treeOf(read: LineageRead): StemTree {
  return {
    lots: read.lots.map((lot) => stemLot(lot, read.variety.id)),
    claims: read.claims.map(stemClaim),
    bands: bandsOf(read),
  };
}

function stemLot(lot: LotOfLineage, varietyId: string): StemLot {
  return {
    id: lot.id,
    number: lot.number,
    kind: lot.kind,
    at: lot.at,
    when: whenInWords(lot),
    band: lot.holderId ?? nobody,
    parents: lot.parents,
    size: lot.effectiveSize,
    kept: lot.kept,
    foreign: lot.foreignPollen,
    living: lot.living,
    variety: lot.varietyId === varietyId ? null : lot.variety,
    strain: lot.strain,
    href: hrefOf(lot),
  };
}

/** A lot's own page; of a failed grow-out that of the grow-out. */
export function hrefOf(lot: LotOfLineage): string {
  return lot.kind === "failed" ? `/grow-outs/${lot.id}` : `/lots/${lot.id}`;
}

function stemClaim(claim: ClaimOfLineage): StemClaim {
  const { generationsFirst: first, generationsLast: last } = claim;
  return {
    id: claim.id,
    lotId: claim.lotId,
    kind: claim.kind as StemClaim["kind"],
    parentId: claim.parentLotId,
    words: claim.words,
    teller: claim.teller,
    generations: first === null ? null : { first, last: last ?? first },
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
  const numbers = lots
    .filter((lot) => lot.kind !== "failed" && lot.varietyId === variety.id)
    .map(({ number }) => number);
  const word = numbers[0]?.match(/^\p{L}+ /u)?.[0];
  return word && numbers.length > 1 && numbers.every((number) => number.startsWith(word)) ? word : undefined;
}
