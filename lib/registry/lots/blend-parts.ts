import type { BlendInput } from "@/lib/schemas/lots/blend-lots";
import { amountOfPart } from "@/lib/science/blend/amount-of-part";
import { type Refusal, refusal } from "@/lib/science/outcome";
import type { BookedEntry } from "../ledger/balance";
import { debtRefusal } from "../ledger/debt-refusal";
import { amountFaults } from "../ledger/record-ledger-entry";
import { type LotRead, lastCounted, lotInHand } from "./lot-in-hand";
import { type Objection, objectionsTo, strainObjections } from "./objections";

/** Part of a blend: what is taken of a lot, in grams, seeds and living seeds. */
export interface BlendPart {
  readonly lot: LotRead;
  readonly grams: number;
  readonly seeds: number;
  /** seeds × germination of the last test; of an untested lot × what a person takes to live */
  readonly living: number;
  /** its part of all living seeds, 0 to 1 */
  readonly share: number;
}

type TypedPart = BlendInput["parts"][number];

/** What stands against mixing these lots, apart from the amounts. */
export function objectionsToBlend(lots: readonly LotRead[]): Objection[] {
  return [...lots.flatMap((lot) => objectionsTo("blend", lotInHand(lot))), ...strainObjections(lots)];
}

/** What lots can never be one blend: of two crops or varieties, of a crop kept by division, one lot twice, fewer than two. */
export function kindFaults(lots: readonly LotRead[]): Refusal[] {
  const [first] = lots;
  if (!first || lots.length < 2)
    return [refusal("too-few-lots", ["parts"], lots.length, "is no blend", "choose two lots or more")];
  if (first.variety.crop.clonal) {
    const needed = "keep its lots apart: mixed, nobody can tell the clones from each other again";
    return [refusal("kept-by-division", ["parts"], first.variety.crop.commonName, "is kept by division", needed)];
  }
  return lots.flatMap((lot, place) => {
    const path = ["parts", place, "lot"];
    if (lots.findIndex((each) => each.id === lot.id) < place)
      return [refusal("lot-twice", path, lot.number, "stands here a second time", "name it once, with all of it")];
    if (lot.variety.crop.id !== first.variety.crop.id) {
      const wrong = `is ${lot.variety.crop.commonName}, not ${first.variety.crop.commonName}`;
      return [refusal("other-crop", path, lot.number, wrong, "lots of different crops never blend")];
    }
    if (lot.varietyId !== first.varietyId) {
      const wrong = `is ${lot.variety.name}, not ${first.variety.name}`;
      const needed = "a blend is of one variety; to cross two, sow both in one grow-out";
      return [refusal("other-variety", path, lot.number, wrong, needed)];
    }
    return [];
  });
}

/**
 * What the amounts come to: grams by the lot's own thousand-seed weight (grams = seeds × weight / 1000), living seeds by its last test,
 * shares of all living seeds. What is not known is refused, never guessed: no seed weight, no test and no word of a person, a last test of
 * which nothing came up. `parts` stand in the order of `lots`.
 */
export function partsOfBlend(
  lots: readonly LotRead[],
  typed: readonly TypedPart[],
): { readonly parts: readonly BlendPart[]; readonly refusals: readonly Refusal[] } {
  const refusals: Refusal[] = [];
  const counted = lots.flatMap((lot, place) => {
    const part = typed[place];
    if (!part) return [];
    const at = ["parts", place];
    const faults = amountFaults({ kind: "blended-out", ...part }, lot.thousandSeedGrams, lot.number);
    if (lot.thousandSeedGrams === null && part.unit === "g") {
      const needed = "count and weigh some seeds of it first: a blend counts seeds, not grams";
      const said = `no seed weight of lot ${lot.number} is known`;
      faults.push(refusal("no-seed-weight", ["amount"], part.amount, `cannot be counted: ${said}`, needed));
    }
    const living = livingOf(lot, part);
    if (typeof living !== "number") faults.push(living);
    refusals.push(...faults.map((each) => ({ ...each, path: [...at, ...each.path] })));
    if (faults.length > 0 || lot.thousandSeedGrams === null || typeof living !== "number") return [];
    const amount = amountOfPart(part.amount, part.unit, lot.thousandSeedGrams);
    return [{ lot, ...amount, living: amount.seeds * living }];
  });
  const all = counted.reduce((sum, part) => sum + part.living, 0);
  return { parts: counted.map((part) => ({ ...part, share: part.living / all })), refusals };
}

function livingOf(lot: LotRead, part: TypedPart): number | Refusal {
  const germination = lastCounted(lot);
  if (germination === null) {
    if (part.living !== null) return part.living;
    const needed = "write what share of it you take to live, or test it first";
    return refusal("untested", ["living"], `lot ${lot.number}`, "was never tested", needed);
  }
  if (part.living !== null) {
    const needed = "leave it empty: the last test of the lot says it";
    return refusal("tested", ["living"], part.living, "stands beside a test", needed);
  }
  if (germination.share > 0) return germination.share;
  const wrong = "would add no living seed: nothing came up of its last test";
  return refusal("nothing-lives", ["amount"], part.amount, wrong, "leave the lot out, or test it again");
}

/** Refuses what is more than a jar holds, part by part; `entryOf` gives the entry that would be written. */
export function debtsOfParts(
  lots: readonly LotRead[],
  parts: readonly BlendPart[],
  entryOf: (part: BlendPart) => BookedEntry,
): Refusal[] {
  return parts.flatMap((part) => {
    const { ledger, thousandSeedGrams } = part.lot;
    const entry = entryOf(part);
    const debt = debtRefusal(ledger, [...ledger, entry], entry, thousandSeedGrams);
    return debt ? [{ ...debt, path: ["parts", lots.indexOf(part.lot), ...debt.path] }] : [];
  });
}

/** Thousand-seed weight of a mix: 1000 × grams / seeds, of the parts together. Grams. */
export function seedWeightOf(parts: readonly BlendPart[]): number {
  const grams = parts.reduce((sum, part) => sum + part.grams, 0);
  return (1000 * grams) / parts.reduce((sum, part) => sum + part.seeds, 0);
}
