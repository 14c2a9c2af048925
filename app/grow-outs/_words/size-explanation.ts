import { dateInWords } from "@/lib/display/dates";
import type { Explanation } from "@/lib/display/explanation";
import { effectiveSize, percent, plainNumber } from "@/lib/display/numbers";
import type { GrowOutRead } from "@/lib/registry/grow-outs/read-grow-out";

const unknown = "unknown";

/** How many seed shares, in words. */
export function sharesWords({ seedShares, seedSharesCv }: GrowOutRead["growOut"]): string {
  if (seedShares === "equal") return "equal seed from each";
  if (seedShares === "plants") return "by the seed of each plant";
  if (seedShares === "cv") return `uneven, coefficient of variation ${plainNumber(seedSharesCv ?? 0, 2)}`;
  return unknown;
}

/** Plants that gave no pollen because their tassels were taken; nothing where nobody spoke of tassels. */
function tassels({ detasselled, seedParentsDetasselled }: GrowOutRead["growOut"]) {
  const named = [
    { name: "plants without their tassels", count: detasselled },
    { name: "of the seed parents without them", count: seedParentsDetasselled },
  ];
  return named.flatMap(({ name, count }) => (count === null ? [] : [{ name, value: plainNumber(count) }]));
}

/** The effective size of a grow-out with all that it was worked out from. */
export function sizeExplanation(read: GrowOutRead): Explanation {
  const { growOut, harvested, parents, variety } = read;
  const figures = harvested[0]?.figures ?? null;
  const size = figures?.effectiveSize ?? null;
  const count = (value: number | null) => (value === null ? unknown : plainNumber(value));
  const own = (figures?.assumed ?? []).filter((text) => text.includes(growOut.name));
  const year = growOut.sown === null ? "" : `, ${dateInWords(growOut.sown)}`;
  return {
    title: `Effective size of ${growOut.name}${year}`,
    answer: effectiveSize(size),
    formula:
      "Ne = 1 / (Σc² · (1 + F)); c is what each plant gave to the seed as seed parent and as pollen parent, F the inbreeding of the lots that were sown",
    inputs: [
      { name: "plants standing", value: count(growOut.plantsStanding) },
      ...(growOut.malesStanding === null ? [] : [{ name: "of them males", value: count(growOut.malesStanding) }]),
      { name: "rogued before pollen shed", value: count(growOut.roguedBeforePollen) },
      { name: "seed parents", value: count(growOut.seedParents) },
      ...tassels(growOut),
      { name: "their shares of the seed", value: sharesWords(growOut) },
      {
        name: "selfing rate",
        value: growOut.selfingRate === null ? "the crop’s usual" : percent(growOut.selfingRate),
        href: `/crops/${encodeURIComponent(variety.crop.key)}`,
      },
      ...parents.map((lot) => ({
        name: `sown, inbreeding ${lot.inbreeding === null ? unknown : plainNumber(lot.inbreeding, 3)}`,
        value: lot.share === null ? lot.number : `${lot.number}, ${percent(lot.share)}`,
        href: `/lots/${lot.id}`,
      })),
    ],
    assumed: own.map((text) => {
      const [what = ""] = text.split(":");
      return `${what.charAt(0).toUpperCase()}${what.slice(1)}.`;
    }),
    unsure:
      size === null
        ? "The plants standing, the seed parents and their shares are needed; write them on the grow-out and the figure is known."
        : "It counts the plants that were written down; seed of very different amounts, or pollen of a few early plants, would lower it.",
    sources: [
      "Lindgren & Mullin 1998, Can. J. For. Res. 28:276",
      "Crow & Denniston 1988, Evolution 42:482",
      "Wright 1931, Genetics 16:97",
    ],
    method: "effective-size",
    calc: harvested[0] ? `npm run --silent figures -- ${JSON.stringify(harvested[0].number)}` : undefined,
  };
}
