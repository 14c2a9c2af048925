import type { Explanation } from "@/lib/display/explanation";
import { effectiveSize, percent, plainNumber, significant, wholeNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { type UnitSettings, weight } from "@/lib/display/units";
import { type Evenness, HEAVIEST } from "@/lib/registry/harvests/evenness-of-harvest";
import type { SizeOfHarvest } from "@/lib/registry/harvests/size-of-harvest";

/** How an amount of a seed parent is shown. */
export interface AmountUnit {
  readonly unit: "g" | "seeds";
  readonly units: UnitSettings;
}

export function amountWords(amount: number, { unit, units }: AmountUnit): string {
  return unit === "g" ? weight(amount, units) : counted(Math.floor(amount), "seed");
}

/** What the heaviest few gave: "the three heaviest gave 61 % of the seed". */
export function heaviestWords({ heaviestShare }: Evenness): string | null {
  return heaviestShare === null ? null : `the three heaviest gave ${percent(heaviestShare, 0)} of the seed`;
}

/**
 * The greedy mother in a sentence: what the heaviest gave, and what equal shares make of it. `done`: the seed is already together.
 */
export function evennessSentence(even: Evenness, done: boolean): string {
  const heaviest = heaviestWords(even);
  const head = heaviest ? `${heaviest.charAt(0).toUpperCase()}${heaviest.slice(1)}. ` : "";
  const [given, equal] = [even.asGiven?.effectiveSize ?? null, even.ifEqual?.effectiveSize ?? null];
  const plants = counted(even.seedParents, "plant");
  const would = done ? "would have counted" : "would count";
  if (given === null || equal === null) {
    const as = significant(even.countsAs, 2);
    return `${head}The ${plants} count as ${as} seed parents of equal shares. How many plants shed pollen is not counted, so there is no effective size yet.`;
  }
  if (equal < given * 1.05) return `${head}They gave so evenly that equal shares gain nothing.`;
  return `${head}In equal shares the seed of the same ${plants} ${would} as ${effectiveSize(equal)} instead of ${effectiveSize(given)}.`;
}

/** How an effective size of a harvest is worked out. */
export function sizeOfHarvestExplanation(
  name: string,
  size: SizeOfHarvest,
  shares: string,
  inbreeding: number | null,
): Explanation {
  const { parents } = size;
  const pollen = parents.pollenShares;
  const without = Array.isArray(pollen) ? pollen.filter((share) => share === 0).length : 0;
  const input = { ...parents, ...(inbreeding === null ? {} : { inbreeding }) };
  return {
    title: `Effective size of ${name}`,
    answer: effectiveSize(size.effectiveSize),
    formula:
      "Ne = 1 / (Σc² · (1 + F)); c is what each plant gave to the seed as seed parent and as pollen parent, F the inbreeding of the lots that were sown",
    inputs: [
      { name: "seed parents", value: wholeNumber(parents.seedParents) },
      {
        name: parents.sexes === "separate" ? "males" : "pollen parents",
        value: wholeNumber(parents.pollenParents - without),
      },
      ...(without > 0 ? [{ name: "seed parents without their tassels", value: wholeNumber(without) }] : []),
      { name: "shares of the seed", value: shares },
      { name: "selfing rate", value: percent(parents.selfingRate ?? 0) },
      { name: "inbreeding F", value: inbreeding === null ? "unknown" : plainNumber(inbreeding, 3) },
    ],
    assumed: size.assumed.map(({ text }) => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`),
    unsure: "Weight stands for number of seeds: plants whose seeds are larger count for a little more than they gave.",
    sources: ["Lindgren & Mullin 1998, Can. J. For. Res. 28:276", "Crow & Denniston 1988, Evolution 42:482"],
    calc: `echo '${JSON.stringify(input)}' | npm run --silent calc -- effective-size`,
  };
}

/** The three heaviest by name: "plant 7: 92 g, plant 3: 61 g". */
export function namesOfHeaviest(named: readonly { name: string; amount: number }[], unit: AmountUnit): string {
  return named
    .toSorted((one, other) => other.amount - one.amount)
    .slice(0, HEAVIEST)
    .map(({ name, amount }) => `${name}: ${amountWords(amount, unit)}`)
    .join(", ");
}
