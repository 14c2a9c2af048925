import type { Explanation } from "@/lib/display/explanation";
import { kOfN, percent, percentSpan, plainNumber, seedsAbout, span } from "@/lib/display/numbers";
import { metricUnits, weight } from "@/lib/display/units";
import type { BlendCandidate, BlendGround } from "@/lib/registry/lots/read-blend-ground";
import type { MixFigures } from "@/lib/science/blend/mix-figures";
import type { Kept } from "../_mix/kept-of-mix";
import { type PartOfForm, sharesOf, type sumOfParts } from "../_mix/mix-of-form";

type Sum = ReturnType<typeof sumOfParts>;

const groupCoancestry = "Cockerham 1967, Genetics 56:89";

/** How the share of diversity that a mix keeps is worked out, with what each lot keeps alone. */
export function keptExplanation({
  ground,
  parts,
  kept,
  best,
}: {
  ground: BlendGround;
  parts: readonly PartOfForm[];
  kept: Kept;
  best: { readonly lot: BlendCandidate; readonly kept: Kept };
}): Explanation {
  const shares = sharesOf(parts) ?? [];
  const own = (lot: BlendCandidate) => {
    const place = ground.lots.indexOf(lot);
    return ground.ground?.coancestry[place]?.[place] ?? null;
  };
  return {
    title: kept.native ? "The variety’s own diversity kept in the mix" : "Diversity kept in the mix",
    answer: percent(kept.share, 1),
    formula: kept.native
      ? "1 − t/k, where t is the chance that two genes are native and come from one gene of a founder, k that both are native; both summed over all pairs of lots, ΣΣ w w' t and ΣΣ w w' k"
      : "1 − θ,  θ = ΣΣ w w' Θ over all pairs of lots; w is a lot’s share of the living seeds",
    inputs: [
      ...parts.map(({ lot }, i) => ({
        name: `lot ${lot.number}`,
        value: `${percent(shares[i] ?? 0)} of the living seeds, θ ${inThree(own(lot))}`,
        href: `/lots/${lot.id}`,
      })),
      ...pairsInWords(ground, parts),
      { name: "the best alone", value: `lot ${best.lot.number}, ${percent(best.kept.share, 1)}` },
    ],
    assumed: assumedOf(parts),
    unsure:
      "An expectation from the records, not a measurement of this seed. The shares are as sure as the germination tests; founders that were kin would leave less.",
    sources: [groupCoancestry],
    calc: "npm run --silent calc -- lineage",
  };
}

/** How the mix that keeps most was chosen. */
export function adviceExplanation(
  { lots, ground }: BlendGround,
  {
    chosen,
    among,
    minShare,
    kept,
  }: {
    readonly chosen: readonly { readonly lot: BlendCandidate; readonly share: number }[];
    readonly among: readonly BlendCandidate[];
    readonly minShare: number;
    readonly kept: Kept | null;
  },
): Explanation {
  const own = (lot: BlendCandidate) => ground?.coancestry[lots.indexOf(lot)]?.[lots.indexOf(lot)] ?? null;
  return {
    title: "What the mix that keeps most would hold",
    answer: percent(kept?.share ?? null, 1),
    formula:
      "θ = ΣΣ w w' Θ made least; Σ w = 1, each w 0 or no smaller than the smallest share; w is a lot’s share of the living seeds",
    inputs: [
      ...chosen.map(({ lot, share }) => ({
        name: `lot ${lot.number}`,
        value: `${percent(share, 0)} of the living seeds, θ ${inThree(own(lot))}`,
        href: `/lots/${lot.id}`,
      })),
      { name: "smallest share of a lot", value: minShare === 0 ? "none" : percent(minShare, 0) },
      { name: "lots it was chosen among", value: plainNumber(among.length) },
      ...(kept ? [{ name: "coancestry θ of the mix", value: inThree(kept.figures.coancestry) }] : []),
    ],
    assumed: assumedOf(chosen),
    unsure:
      "It looks at kinship alone, not at vigour, age or trueness to type; founders that were kin would leave less. The shares are as sure as the germination tests.",
    sources: [groupCoancestry, "Caballero & Toro 2000, Genet. Res. 75:331"],
    calc: "npm run --silent calc -- blend-advice",
  };
}

/** How near the lots are to each other; of many only the nearest and the farthest. */
function pairsInWords({ lots, ground }: BlendGround, parts: readonly PartOfForm[]) {
  const pairs = parts.flatMap((a, i) =>
    parts.slice(i + 1).map((b) => {
      const theta = ground?.coancestry[lots.indexOf(a.lot)]?.[lots.indexOf(b.lot)] ?? 0;
      return { name: `coancestry Θ of ${a.lot.number} and ${b.lot.number}`, value: inThree(theta), theta };
    }),
  );
  const sorted = pairs.sort((a, b) => a.theta - b.theta);
  const shown = sorted.length <= 6 ? sorted : [...sorted.slice(0, 1), ...sorted.slice(-1)];
  return shown.map(({ name, value }) => ({ name, value }));
}

/** How the living seeds of the mix are worked out. */
export function liveExplanation(parts: readonly PartOfForm[], sum: Sum): Explanation {
  const { live } = sum;
  return {
    title: "Living seeds of the mix",
    answer: live ? seedsAbout(live.value) : "unknown",
    formula: "Σ seeds × germination of the last test, seeds = 1000 × grams / thousand-seed weight",
    inputs: parts.map(({ lot, amount, live: own }) => ({
      name: `lot ${lot.number}`,
      value: `${amount ? seedsAbout(amount.seeds) : "seeds unknown"}, ${tested(lot)}${own ? `: ${seedsAbout(own.value)}` : ""}`,
      href: lot.test ? `/tests/${lot.test.testId}` : `/lots/${lot.id}`,
    })),
    assumed: parts.flatMap(({ lot, living }) => {
      if (living?.grade !== "assumed") return [];
      return lot.test
        ? [
            `what came up of lot ${lot.number} in its last test still lives, though that is longer ago than its seed usually lives`,
          ]
        : [`of lot ${lot.number}, untested, ${percent(living.share)} live, by the word of whoever fills this in`];
    }),
    unsure: live
      ? `Between ${span(Math.round(live.low), Math.round(live.high), "seeds", 3)} where every test lies at the low or every one at the high end of its 95 % interval. Test the blend before it is sown.`
      : "An amount, a seed weight or a test is missing.",
    sources: ["Clopper and Pearson 1934, Biometrika 26:404"],
    method: "germination-test",
  };
}

/** How the seed weight of the mix follows from its parts. */
export function seedWeightExplanation(parts: readonly PartOfForm[], sum: Sum): Explanation {
  return {
    title: "Seed weight of the mix",
    answer: sum.thousandSeedGrams === null ? "unknown" : weight(sum.thousandSeedGrams, metricUnits),
    formula: "1000 × Σ grams / Σ seeds",
    inputs: parts.map(({ lot, amount }) => ({
      name: `lot ${lot.number}`,
      value: amount
        ? `${weight(amount.grams, metricUnits)}, ${seedsAbout(amount.seeds)} at ${weight(lot.thousandSeedGrams, metricUnits)} a thousand`
        : "unknown",
      href: `/lots/${lot.id}#seed-weight`,
    })),
    assumed: [],
    unsure: "As sure as the seed weights of the lots. Count and weigh some of the mix to know it better.",
    sources: [],
    method: "thousand-seed-weight",
  };
}

/** How the inbreeding of the mix is worked out, and why it stands above what a flowering would leave. */
export function inbreedingExplanation(
  ground: BlendGround,
  parts: readonly PartOfForm[],
  figures: MixFigures,
): Explanation {
  const shares = sharesOf(parts) ?? [];
  return {
    title: "Inbreeding of the seed of the mix",
    answer: plainNumber(figures.inbreeding, 3),
    formula: "F = Σ w F: mixing changes no seed. Its own grow-out, flowering freely, comes down to about θ.",
    inputs: [
      ...parts.map(({ lot }, i) => ({
        name: `lot ${lot.number}`,
        value: `F ${inThree(ground.ground?.lots[ground.lots.indexOf(lot)]?.inbreeding ?? null)}, ${percent(shares[i] ?? 0)}`,
        href: `/lots/${lot.id}`,
      })),
      { name: "coancestry θ of the mix", value: inThree(figures.coancestry) },
    ],
    assumed: assumedOf(parts),
    sources: [groupCoancestry],
    calc: "npm run --silent calc -- lineage",
  };
}

/** What was assumed of one lot or another, each default once, with all that it was taken for. */
export function assumedOf(parts: readonly Pick<PartOfForm, "lot">[]): string[] {
  const takenFor = new Map<string, Set<string>>();
  for (const text of parts.flatMap((part) => part.lot.assumed)) {
    const [, what = text, names = ""] = /^(.*?): (.*)$/.exec(text) ?? [];
    const taken = takenFor.get(what) ?? new Set();
    for (const name of names.split(", ")) if (name !== "") taken.add(name);
    takenFor.set(what, taken);
  }
  const kin = "founder lots were unrelated to each other";
  const founders = new Set(parts.flatMap((part) => part.lot.founders));
  if (founders.size > 1) takenFor.set(kin, founders);
  return [...takenFor].map(([what, names]) => (names.size > 0 ? `${what}: ${[...names].join(", ")}` : what));
}

function tested({ test }: BlendCandidate): string {
  return test ? `${kOfN(test.normal, test.sown)}, ${percentSpan(test.low, test.high)}` : "never tested";
}

function inThree(value: number | null): string {
  return value === null ? "unknown" : plainNumber(value, 3);
}
