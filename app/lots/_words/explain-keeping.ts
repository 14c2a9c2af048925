import { dateInWords } from "@/lib/display/dates";
import type { Explanation, ExplanationInput } from "@/lib/display/explanation";
import { percent, plainNumber, probability } from "@/lib/display/numbers";
import { ownValuesInWords } from "@/lib/display/own-values";
import { counted, listed } from "@/lib/display/plurals";
import type { Forecast, KeptSeed, NoForecast } from "@/lib/registry/lots/how-long-good";
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
  const { forecast, used, leftOut, prior, usualLife, kept } = keeping;
  const { yearsToThreshold: years } = forecast;
  const given = {
    tests: used.map((each) => ({ years: each.years, sown: each.sown, normal: each.normal })),
    prior,
    threshold: settings.renewalPlan,
  };
  return {
    title: `Until when lot ${lot.number} is good`,
    answer: `about ${keeping.until.likely.slice(0, 4)}, ${untilSpan(keeping)}`,
    formula: `germination = Φ(Ki − years/σ); Ki and σ from this lot's tests joined with ${kept ? "what the constants of its kind say of seed kept so, log₁₀ σ = KE − CW·log₁₀ m − CH·t − CQ·t² (σ in days)" : "the usual life of its kind"}; the years until it passes the line, with 5 and 95 % of the chance on either side`,
    inputs: [
      { name: "harvest", value: lot.year === null ? "unknown" : dateInWords(lot.year) },
      { name: "line for renewing (setting)", value: percent(settings.renewalPlan, 0), href: "/settings" },
      ...(kept ? inputsOfStore(kept, lot.id) : []),
      ...(usualLife
        ? [
            {
              name: `usual life of ${lot.crop.commonName}`,
              value: yearsInWords(usualLife),
              href: `/crops/${lot.crop.cropKey}`,
            },
          ]
        : []),
      ...(kept?.likelyByUsualLife
        ? [{ name: "by the usual life alone", value: `about ${kept.likelyByUsualLife.slice(0, 4)}` }]
        : []),
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
    assumed: [
      ...keeping.assumed.map((each) => `${each.text.charAt(0).toUpperCase()}${each.text.slice(1)}.`),
      ...ownValuesInWords(kept?.store.own ?? []),
    ],
    unsure: `${unsureOf(used.length, leftOut.length, kept !== null)}${kept ? ` ${DOUBT_OF_CONSTANTS}` : ""}`,
    sources: [
      "Ellis and Roberts 1980, Annals of Botany 45:13, for the form of the curve",
      ...(kept ? [kept.store.source] : usualLife ? [usualLife.source] : []),
      "the spread of the prior is a judgement",
    ],
    calc: `echo '${JSON.stringify(given)}' | npm run --silent calc -- viability-forecast`,
  };
}

function yearsInWords({ low, high }: { low: number; high: number }): string {
  const years = `${plainNumber(high, 1)} ${high === 1 ? "year" : "years"}`;
  return low === high ? years : `${plainNumber(low, 1)} to ${years}`;
}

const DOUBT_OF_CONSTANTS =
  "One standard error of the constants is a factor of 2 to 3.5 in σ; the equation promised too much of long cold storage and too little of open shelves.";

/** What the constants of its kind were asked with. */
function inputsOfStore({ store, moisture, temperature, sigmaYears }: KeptSeed, lotId: string): ExplanationInput[] {
  const { from } = moisture;
  const air = from
    ? `, by ${plainNumber(from.humidityPercent, 1)} % humidity at ${plainNumber(from.celsius, 1)} °C and ${plainNumber(from.oilPercent, 1)} % oil`
    : "";
  return [
    {
      name: `constants of ${store.kind}`,
      value: Object.entries(store.constants)
        .map(([name, value]) => `${name} ${plainNumber(value, 6)}`)
        .join(", "),
      href: "/methods/tables/viability-constants",
    },
    {
      name: `moisture m, ${dateInWords(moisture.on)}${air}`,
      value: `${plainNumber(moisture.percent, 1)} %`,
      href: `/lots/${lotId}`,
    },
    { name: `warmth t of ${temperature.place}`, value: `${plainNumber(temperature.celsius, 1)} °C` },
    { name: "σ by the equation", value: `${plainNumber(sigmaYears, 1)} years` },
  ];
}

/** What the forecast begins with where the constants of its kind speak, and what it would be without them; null where they do not. */
export function keptInWords({ kept }: Forecast): string | null {
  if (kept === null) return null;
  const { store, moisture, temperature, likelyByUsualLife: alone } = kept;
  const so = `${plainNumber(moisture.percent, 1)} % moisture and ${plainNumber(temperature.celsius, 1)} °C`;
  const without = alone === null ? "" : `; by the usual life of its kind alone it would be about ${alone.slice(0, 4)}`;
  return `It begins with the constants of ${store.kind} at ${so}${without}.`;
}

/** Which readings would let the constants of its kind speak; null where they do, or where there are none. */
export function wouldTellInWords({ wouldTell }: Forecast): string | null {
  if (wouldTell.length === 0) return null;
  const readings = wouldTell.map((each) =>
    each === "moisture" ? "a moisture reading since it was last dried" : "how warm each place is in which it stands",
  );
  return `${listed(readings).replace(/^./, (first) => first.toUpperCase())} would tell more: of its kind the constants of seed life are known.`;
}

function unsureOf(used: number, leftOut: number, kept: boolean): string {
  const speaks = kept ? "how such seed lives where it is kept" : "the usual life of its kind";
  const out =
    leftOut > 0
      ? ` ${counted(leftOut, "test")} on another basis, or not yet done, ${leftOut === 1 ? "is" : "are"} left out.`
      : "";
  if (used === 0) return `No test of this lot: this is ${speaks} speaking, not the jar. Test it.${out}`;
  if (used === 1)
    return `With one test this is mostly ${speaks} speaking. A second test some years on tells much more.${out}`;
  return `Lots of one kind do not age alike, and a warm summer counts for years. Test before you build on it.${out}`;
}
