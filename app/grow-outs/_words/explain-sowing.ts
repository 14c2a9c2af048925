import { dateInWords } from "@/lib/display/dates";
import type { Explanation } from "@/lib/display/explanation";
import { kOfN, percent, plainNumber, probability, seedsCounted, wholeNumber } from "@/lib/display/numbers";
import type { LotToSow, ProposedSowing } from "@/lib/registry/grow-outs/sowing-plan";
import { assumedEmergence, sowingConfidence } from "@/lib/registry/reserve/sowing-for";

/** How many seeds of a lot to sow, and why. */
export function sowingExplanation(lot: LotToSow, { plants, sowing }: ProposedSowing): Explanation {
  const { test } = lot;
  const given = test && {
    test: { sown: test.sown, normal: test.normal },
    emergence: assumedEmergence,
    plantsWanted: plants,
    confidence: sowingConfidence,
  };
  return {
    title: `Seeds of lot ${lot.number} to sow for ${wholeNumber(plants)} plants`,
    answer: sowing ? seedsCounted(sowing.seeds) : "unknown",
    formula: "the smallest m with P(Binomial(m, e·π) ≥ N) ≥ confidence; π ~ Beta(x + ½, n − x + ½)",
    inputs: [
      { name: "plants wanted, N", value: wholeNumber(plants) },
      ...(test
        ? [
            {
              name: `germination, ${dateInWords(test.date)}: x of n`,
              value: kOfN(test.normal, test.sown),
              href: `/tests/${test.testId}`,
            },
          ]
        : []),
      { name: "confidence", value: percent(sowingConfidence) },
      ...(lot.thousandSeedGrams === null
        ? []
        : [
            {
              name: "a thousand seeds weigh",
              value: `${plainNumber(lot.thousandSeedGrams, 2)} g`,
              href: `/lots/${lot.id}#seed-weight`,
            },
          ]),
    ],
    assumed: [`Of the seeds that germinate in a test, ${assumedEmergence * 10} in 10 make a plant in the patch.`],
    unsure: sowing
      ? `With so many seeds the plants wanted come up with a chance of ${probability(sowing.probability)}; ${plainNumber(sowing.expectedPlants)} are to be expected. Plants that are rogued or not chosen come on top of those wanted.`
      : "Without a test nobody can say. Twenty seeds in a damp cloth would tell.",
    sources: [
      "Skellam 1948, J. R. Stat. Soc. B 10:257 (beta-binomial)",
      "Brown, Cai & DasGupta 2001, Stat. Sci. 16:101",
    ],
    method: "sowing-count",
    calc: given ? `echo '${JSON.stringify(given)}' | npm run --silent calc -- sowing-count` : undefined,
  };
}
