import type { LotCard, LotCards } from "@/components/stem-chart";
import { foreignShare } from "@/lib/display/foreign-share";
import { effectiveSizeSpan, percent, percentSpan, plainNumber } from "@/lib/display/numbers";
import { listed } from "@/lib/display/plurals";
import { type UnitSettings, weight } from "@/lib/display/units";
import { hasNoSeed, type LotOfLineage } from "@/lib/registry/lineage/lineage-lots";
import type { ClaimOfLineage, LineageRead } from "@/lib/registry/lineage/read-lineage";
import { keptWords } from "../../../_words/kept-words";
import { hrefOf } from "./tree";
import { whenInWords } from "./when";

/** Every lot of a lineage in words, by id. */
export function cardsOf(read: LineageRead, units: UnitSettings): LotCards {
  const numbers = new Map(read.lots.map(({ id, number }) => [id, number]));
  const stewards = new Map(read.stewards.map(({ id, name }) => [id, name ?? "a steward"]));
  return Object.fromEntries(read.lots.map((lot) => [lot.id, cardOf(lot, read, { numbers, stewards, units })] as const));
}

interface Names {
  readonly numbers: ReadonlyMap<string, string>;
  readonly stewards: ReadonlyMap<string, string>;
  readonly units: UnitSettings;
}

function cardOf(lot: LotOfLineage, read: LineageRead, { numbers, stewards, units }: Names): LotCard {
  const holder = lot.holderId === null ? "nobody is written" : (stewards.get(lot.holderId) ?? "a steward");
  const kind = kindInWords(lot, numbers);
  const holds = hasNoSeed(lot) ? "no seed" : lot.living === false ? "none" : weight(lot.gramsOnHand, units);
  const size = sizeInWords(lot);
  const kept = hasNoSeed(lot) ? null : keptInWords(lot);
  const claims = read.claims.filter(({ lotId }) => lotId === lot.id);
  const facts = [
    ...(size === null ? [] : [{ name: "Effective size", value: size }]),
    ...(kept === null ? [] : [{ name: "Diversity kept", value: kept }]),
    { name: hasNoSeed(lot) ? "Grown by" : "Held by", value: holder },
    { name: "Still holds", value: holds },
    ...(lot.foreignPollen ? [{ name: "Foreign pollen", value: foreignInWords(lot) }] : []),
    ...(lot.foreignAncestry !== null && lot.foreignAncestry > 0
      ? [{ name: "Of its genes foreign", value: percent(lot.foreignAncestry) }]
      : []),
    ...(lot.generations === null ? [] : [{ name: "Generations", value: plainNumber(lot.generations, 1) }]),
    ...(lot.varietyId === read.variety.id ? [] : [{ name: "Variety", value: lot.variety }]),
    ...(lot.strain === null ? [] : [{ name: "Strain", value: lot.strain }]),
    ...(lot.growOut === null || hasNoSeed(lot) ? [] : [{ name: "Grow-out", value: lot.growOut }]),
    ...(lot.outcome === null ? [] : [{ name: "Why no seed came", value: lot.outcome }]),
    ...claims.map((claim) => ({ name: "Only told", value: claimInWords(claim, numbers) })),
  ].filter(({ name }) => name !== "Still holds" || !hasNoSeed(lot));
  const rest = facts.map(({ name, value }) => `${name.toLowerCase()} ${value}`).join("; ");
  return {
    id: lot.id,
    number: lot.number,
    kind,
    holder,
    facts,
    holds,
    when: whenInWords(lot),
    spoken: `${lot.number}, ${kind}; ${rest}`,
    href: hrefOf(lot),
  };
}

/** How a lot came to be, and when. */
export function kindInWords(lot: LotOfLineage, numbers: ReadonlyMap<string, string>): string {
  const when = whenInWords(lot);
  const from = listed(
    lot.parents.map(({ id, share, role }) => {
      const number = numbers.get(id) ?? "a lot that is not drawn here";
      if (role) return `${number} (${role}s)`;
      return lot.parents.length === 1 ? number : `${number} (${share === null ? "share unknown" : percent(share, 0)})`;
    }),
  );
  if (lot.kind === "growing") return `sown ${when}${from === "" ? "" : ` from ${from}`}, in the field: no seed yet`;
  if (lot.kind === "failed") return `sown ${when}${from === "" ? "" : ` from ${from}`}, gave no seed`;
  if (lot.kind === "split") return `parted from ${from}, ${when}`;
  if (lot.kind === "blend") return `blended from ${from}, ${when}`;
  const crossed = lot.parents.some(({ role }) => role) ? "a cross, " : "";
  if (lot.kind === "harvest")
    return `${crossed}harvested ${when}${from === "" ? ", from seed not on record" : `, from ${from}`}`;
  return `founder lot of ${when}, parents not on record`;
}

/** Effective size of the grow-out that made it; null where none did. */
export function sizeInWords({ kind, effectiveSize }: LotOfLineage): string | null {
  if (kind !== "harvest") return null;
  return effectiveSizeSpan(effectiveSize?.low ?? null, effectiveSize === null ? null : effectiveSize.high);
}

/** What is kept of its founders' own diversity; a span where the records are incomplete. */
export function keptInWords({ kept, standing }: LotOfLineage): string {
  if (kept && kept.low < kept.high) return percentSpan(kept.low, kept.high);
  return keptWords(standing, kept?.low ?? null);
}

export function foreignInWords({ foreignPollen }: LotOfLineage): string {
  if (!foreignPollen) return "";
  const { rate, how } = foreignPollen;
  const much = rate === null ? "suspected, how much nobody knows" : `${foreignShare(rate)} of the pollen`;
  return how ? `${much}, found by ${how}` : `${much}; how it was found is not written`;
}

/** A claim with who said it and how it stands. */
export function claimInWords(claim: ClaimOfLineage, numbers: ReadonlyMap<string, string>): string {
  const other = claim.parentLotId === null ? "" : (numbers.get(claim.parentLotId) ?? "a lot not drawn here");
  const { generationsFirst: first, generationsLast: last } = claim;
  const apart =
    first === null
      ? ""
      : last === null || last === first
        ? `, ${first} generations back`
        : `, ${first} to ${last} generations back`;
  const what =
    claim.kind === "same as"
      ? `the same seed as ${other}`
      : claim.kind === "unknown before"
        ? "unknown before here"
        : `descends from ${other === "" ? "a lot that is not on record" : other}${apart}`;
  const standing = claim.standing === "open" ? "" : ` (${claim.standing})`;
  return `${what}: “${claim.words}”${claim.teller ? `, ${claim.teller}` : ""}${standing}`;
}
