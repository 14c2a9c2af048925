import { dateInWords } from "@/lib/display/dates";
import type { Explanation } from "@/lib/display/explanation";
import { percent, plainNumber, probability } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import type { Forecast, NoForecast } from "@/lib/registry/lots/how-long-good";
import type { LotRead } from "@/lib/registry/lots/read-lot";
import type { Settings } from "@/lib/schemas/settings";

/** The year about which a lot passes the line, for the jar's tag; null where nobody can say. */
export function untilInWords(keeping: LotRead["keeping"]): string | null {
  return "why" in keeping ? null : `about ${keeping.until.likely.slice(0, 4)}`;
}

/** The years between which it does. */
export function untilSpan({ until }: Forecast): string {
  const [low, high] = [until.low.slice(0, 4), until.high.slice(0, 4)];
  return low === high ? low : `${low} to ${high}`;
}

const reasons: Readonly<Record<NoForecast, string>> = {
  "kept by division": "This crop is kept by division, not by seed: it has no seed life to forecast.",
  "not stored dry":
    "Seed of this crop does not bear drying: it is not kept in a jar for years, and no forecast is made.",
  "usual life not known": "Nobody has written how long seed of this crop usually lives; say it on the crop's page.",
  "year not known":
    "The year of its harvest is not known, so its age is not. Test it: the test tells what lives today.",
  "not worked out": "The tests and the usual life do not go together in a forecast.",
};

/** Why there is no forecast, as a sentence. */
export function noForecastInWords(why: NoForecast): string {
  return reasons[why];
}

/** How the time until the renewal line comes about. */
export function keepingExplanation({ lot }: LotRead, keeping: Forecast, settings: Settings): Explanation {
  const { forecast, used, leftOut, prior, usualLife } = keeping;
  const { yearsToThreshold: years } = forecast;
  const given = {
    tests: used.map((each) => ({ years: each.years, sown: each.sown, normal: each.normal })),
    prior,
    threshold: settings.renewalPlan,
  };
  return {
    title: `Until when lot ${lot.number} is good`,
    answer: `about ${keeping.until.likely.slice(0, 4)}, ${untilSpan(keeping)}`,
    formula:
      "germination = Φ(Ki − years/σ); Ki and σ from this lot's tests joined with the usual life of its kind; the years until it passes the line, with 5 and 95 % of the chance on either side",
    inputs: [
      { name: "harvest", value: lot.year === null ? "unknown" : dateInWords(lot.year) },
      { name: "line for renewing (setting)", value: percent(settings.renewalPlan, 0), href: "/settings" },
      {
        name: `usual life of ${lot.crop.commonName}`,
        value: `${plainNumber(usualLife.low, 1)} to ${plainNumber(usualLife.high, 1)} years`,
        href: `/crops/${lot.crop.cropKey}`,
      },
      ...used.map(({ test, years: age, sown, normal }) => ({
        name: `test at ${plainNumber(age, 1)} years`,
        value: `${normal} of ${sown}`,
        href: `/tests/${test.id}`,
      })),
      {
        name: "years from the harvest to the line",
        value: `${plainNumber(years.median, 1)}, ${plainNumber(years.low, 1)} to ${plainNumber(years.high, 1)}`,
      },
      { name: "chance that it is below already", value: probability(forecast.probabilityBelowNow) },
    ],
    assumed: keeping.assumed.map((each) => `${each.text.charAt(0).toUpperCase()}${each.text.slice(1)}.`),
    unsure: unsureOf(used.length, leftOut.length),
    sources: [
      "Ellis and Roberts 1980, Annals of Botany 45:13, for the form of the curve",
      usualLife.source,
      "the spread of the prior is a judgement",
    ],
    calc: `echo '${JSON.stringify(given)}' | npm run --silent calc -- viability-forecast`,
  };
}

function unsureOf(used: number, leftOut: number): string {
  const out =
    leftOut > 0
      ? ` ${counted(leftOut, "test")} on another basis, or not yet done, ${leftOut === 1 ? "is" : "are"} left out.`
      : "";
  if (used === 0)
    return `No test of this lot: this is the usual life of its kind speaking, not the jar. Test it.${out}`;
  if (used === 1)
    return `With one test this is mostly the usual life of its kind speaking. A second test some years on tells much more.${out}`;
  return `Lots of one kind do not age alike, and a warm summer counts for years. Test before you build on it.${out}`;
}
