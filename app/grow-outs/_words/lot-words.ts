import { dateInWords } from "@/lib/display/dates";
import { kOfN, seedsCounted } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { LotForCross } from "@/lib/registry/grow-outs/read-plan-ground";
import { type LotToSow, moreThanInJar, type ProposedSowing } from "@/lib/registry/grow-outs/sowing-plan";

/** A lot in a list to choose from: its number, its year, what is in the jar. */
export function lotOption(lot: LotToSow, units: UnitSettings): { value: string; words: string } {
  const parts = [
    lot.number,
    lot.year === null ? "year unknown" : dateInWords(lot.year),
    lot.grams === null ? "amount unknown" : weight(lot.grams, units),
    lot.holder,
  ];
  return { value: lot.id, words: parts.filter(Boolean).join(", ") };
}

/** A lot of another variety in the same list. */
export function crossOption({ id, number, variety, year }: LotForCross): { value: string; words: string } {
  const of = year === null ? variety : `${variety}, ${dateInWords(year)}`;
  return { value: id, words: `${number} of ${of}: a cross` };
}

/** What a jar and its last test say, in a line. */
export function jarInALine({ grams, test, holder }: LotToSow, units: UnitSettings): string {
  const held = grams === null ? "How much is in the jar nobody knows" : `${weight(grams, units)} in the jar`;
  const whose = holder === null ? "" : ` with ${holder}`;
  const tested = test === null ? "never tested" : `tested ${dateInWords(test.date)}: ${kOfN(test.normal, test.sown)}`;
  return `${held}${whose}; ${tested}.`;
}

/** Why no number of seeds of a lot can be proposed for its plants; null where one can. */
export function noProposalInWords(lot: LotToSow, { sowing, plants }: ProposedSowing): string | null {
  const wanted = counted(plants, "plant");
  if (lot.test === null)
    return `How many seeds make ${wanted} nobody can say before a test: twenty seeds in a damp cloth would tell.`;
  if (sowing === null) return `By its last test no number of seeds would make ${wanted}.`;
  if (moreThanInJar(lot, sowing.seeds))
    return `By its last test ${wanted} would take ${seedsCounted(sowing.seeds)}, more than the jar holds: take a further lot, or want fewer plants. What still lives is worth sowing all the same.`;
  return null;
}
