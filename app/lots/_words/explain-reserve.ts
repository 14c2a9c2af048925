import { dateInWords } from "@/lib/display/dates";
import type { Explanation, ExplanationInput } from "@/lib/display/explanation";
import { kOfN, percent, percentSpan, plainNumber, probability, wholeNumber } from "@/lib/display/numbers";
import { counted, listed } from "@/lib/display/plurals";
import type { LotRead } from "@/lib/registry/lots/read-lot";
import type { ReserveOfVariety } from "@/lib/registry/reserve/reserve-of-variety";
import { assumedEmergence, sowingConfidence } from "@/lib/registry/reserve/sowing-for";
import type { Settings } from "@/lib/schemas/settings";
import { seedsInWords, seedsOfRule } from "./seeds-in-words";

const sources = [
  "FAO Genebank Standards 2014: three sowings and a reference sample of 50 seeds",
  "a home holder's single grow-out is this registry's own choice",
];

/** How much of the variety its holder keeps back, and why. */
export function reserveExplanation({ lot, reserve }: LotRead, settings: Settings): Explanation {
  const { sowing, wanted, confirmed, placesElsewhere } = reserve;
  const given = {
    seedsPerGrowOut: sowing?.sowing.seeds ?? 0,
    duplicates: reserve.reserve?.parts.duplicates === 0 ? 0 : 1,
  };
  return {
    title: `The reserve of ${lot.variety}`,
    answer: reserve.reserve ? seedsOfRule(reserve.reserve.seeds) : "unknown",
    formula:
      "one grow-out + two tests + a sowing for another place (none where two other places are confirmed) + archive",
    inputs: [
      ...(wanted
        ? [
            {
              name: wanted.from === "variety" ? "plants wanted for the variety" : "fewest plants of the crop",
              value: wholeNumber(wanted.plants),
              href: wanted.from === "variety" ? `/varieties/${lot.varietyId}` : `/crops/${lot.crop.cropKey}`,
            },
          ]
        : []),
      ...sowingInputs(reserve),
      {
        name: `places elsewhere, confirmed within ${settings.confirmedYears} years (setting)`,
        value: confirmed.length === 0 ? "none" : wholeNumber(placesElsewhere),
        href: `/varieties/${lot.varietyId}`,
      },
      { name: "good lots together", value: goodLotsInWords(reserve) },
    ],
    assumed: reserve.assumed.map((each) => sentence(each.text)),
    unsure: unsureOfReserve(reserve),
    sources,
    method: "reserve",
    calc: reserve.reserve ? `echo '${JSON.stringify(given)}' | npm run --silent calc -- reserve` : undefined,
  };
}

/** How much of a lot may be given. */
export function giveExplanation(read: LotRead, settings: Settings): Explanation {
  const { lot, give, reserve, seeds } = read;
  const whole = reserveExplanation(read, settings);
  return {
    title: `What may be given of lot ${lot.number}`,
    answer: give.free === null ? give.answer : seedsInWords(give.free),
    formula:
      "the least of: the seeds in this jar; the seeds of all good lots of its holder, less the reserve. A good lot is free to be given, tested within its usual life, and not below the lines for renewing",
    inputs: [
      ...whatStandsAgainst(read, settings),
      { name: "seeds in this jar", value: seedsInWords(seeds) },
      { name: "good lots together", value: goodLotsInWords(reserve) },
      { name: "the reserve", value: whole.answer, href: "#reserve" },
    ],
    assumed: whole.assumed,
    unsure: "It is answered at the cautious end: with the fewest seeds that may be there.",
    sources,
    method: "reserve",
  };
}

/** What of the lot itself decides that no number is given: its test, or its age, held against the line of the settings. */
function whatStandsAgainst({ give, figures, keeping }: LotRead, settings: Settings): ExplanationInput[] {
  const test = figures?.lastTest;
  const tested: ExplanationInput[] = test
    ? [
        {
          name: `last test, ${dateInWords(test.date)}`,
          value: `${kOfN(test.normal, test.sown)}, ${percentSpan(test.low, test.high)}`,
          href: `/tests/${test.testId}`,
        },
      ]
    : [];
  const line = (name: string, at: number) => ({ name, value: percent(at, 0), href: "/settings" });
  if (give.why === "tests too low")
    return [...tested, line("line where renewing is urgent (setting)", settings.renewalUrgent)];
  if (give.why === "tested too long ago") return tested;
  if (give.why !== "likely below the line" || "why" in keeping) return [];
  return [
    ...tested,
    line("line for renewing (setting)", settings.renewalPlan),
    { name: "when it likely passed that line", value: `about ${keeping.until.likely.slice(0, 4)}`, href: "#jar" },
    { name: "chance that it was below at the last test", value: probability(keeping.forecast.probabilityBelowNow) },
  ];
}

/** How many seeds to sow for the plants that are wanted. */
export function sowExplanation({ lot, sow, figures }: LotRead): Explanation | null {
  const test = figures?.lastTest;
  if (!sow?.sowing || !test) return null;
  const { sowing, plants } = sow;
  const given = {
    test: { sown: test.sown, normal: test.normal },
    plantsWanted: plants,
    emergence: assumedEmergence,
    confidence: sowingConfidence,
  };
  return {
    title: `Seeds of lot ${lot.number} to sow for ${counted(plants, "plant")}`,
    answer: seedsOfRule(sowing.seeds),
    formula:
      "the fewest seeds of which, with the confidence asked for, as many plants stand as are wanted: plants of m seeds are binomial, the germination a Beta(x + ½, n − x + ½)",
    inputs: [
      {
        name: `last test, ${dateInWords(test.date)}`,
        value: `${test.normal} of ${test.sown}`,
        href: `/tests/${test.testId}`,
      },
      { name: "plants wanted", value: wholeNumber(plants) },
      { name: "confidence", value: percent(sowingConfidence) },
      { name: "plants to be expected", value: plainNumber(sowing.expectedPlants, 1) },
      ...(sowing.plainDivision === null
        ? []
        : [{ name: "plain division would say", value: seedsOfRule(sowing.plainDivision) }]),
    ],
    assumed: [`Of the seeds that germinate in a test, ${assumedEmergence * 10} in 10 make a plant in the patch.`],
    unsure:
      "An old test tells the germination of its day. Plants to be rogued or left out come on top of the plants wanted. Plain division falls short about every second time.",
    sources: ["beta-binomial prediction from a germination test"],
    calc: `echo '${JSON.stringify(given)}' | npm run --silent calc -- sowing-count`,
  };
}

function sowingInputs({ sowing }: ReserveOfVariety): ExplanationInput[] {
  if (!sowing) return [];
  const { lot, test } = sowing.of;
  return [
    { name: "seeds to sow for them", value: seedsOfRule(sowing.sowing.seeds) },
    {
      name: `by the test of lot ${lot.number}, which needs most`,
      value: `${test.normal} of ${test.sown}, ${dateInWords(test.date)}`,
      href: `/tests/${test.testId}`,
    },
  ];
}

function goodLotsInWords({ good, onHand, uncounted }: ReserveOfVariety): string {
  if (good.length === 0) return "none that was tested";
  const numbers = listed(good.map((each) => each.lot.number));
  const more = uncounted > 0 ? `; of ${wholeNumber(uncounted)} the seeds are not known` : "";
  return `${seedsInWords(onHand)} (${numbers})${more}`;
}

function unsureOfReserve({ good, uncounted }: ReserveOfVariety): string {
  if (good.length === 0)
    return "No lot of this holder was tested and found good: test one, and the reserve can be told.";
  const rises =
    "As germination falls, more seeds are needed for the same plants: the reserve is worked out anew with each test.";
  return uncounted > 0 ? `${rises} Weigh and count what is not known to be surer.` : rises;
}

function sentence(text: string): string {
  const head = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.!?]$/.test(head) ? head : `${head}.`;
}
