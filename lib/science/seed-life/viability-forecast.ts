import {
  countFault,
  type Fault,
  faultsAmong,
  finiteFault,
  notNegativeFault,
  positiveFault,
  shareAboveZeroFault,
} from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type ForecastPrior, type ForecastTest, forecastModel } from "@/lib/science/seed-life/forecast-model";
import { kiReaching, type Threshold } from "@/lib/science/seed-life/ki-reaching";
import { lnSigmaBounds, type Posterior, posteriorOn, type Spread } from "@/lib/science/seed-life/posterior";
import { quantileOfYears } from "@/lib/science/seed-life/quantile-of-years";

export interface ViabilityForecastInput {
  readonly tests: readonly ForecastTest[];
  readonly prior: ForecastPrior;
  /** above 0 to 1 */
  readonly threshold: Threshold;
  /** share of the seeds that could ever germinate, above 0 to 1; default 1 */
  readonly ceiling?: number;
}

export interface ViabilityForecast {
  readonly Ki: Spread;
  readonly lnSigmaYears: Spread;
  /** years from the beginning that the tests count from; low and high leave 5 % on either side; 0: already below */
  readonly yearsToThreshold: { readonly median: number; readonly low: number; readonly high: number };
  /** the chance that viability is below the threshold at the last test's years; at 0 without tests */
  readonly probabilityBelowNow: number;
  readonly assumed: readonly Assumption[];
}

/** Steps along ln σ and Ki: doubled until nothing moves by more than AGREED. */
const FIRST_STEPS = 24;
const MOST_STEPS = 768;
const AGREED = 3e-4;

/**
 * How long a lot stays good: its own tests joined with what is known of its kind.
 *
 *     normal ~ Binomial(sown, ceiling·Φ(Ki − years/σ))
 *     years to threshold = (Ki − Φ⁻¹(v))·σ,  v = threshold/ceiling or c·Φ(Ki);  0 if already below
 *
 * The posterior of Ki and ln σ is integrated over both, as far as it counts; the answer is good to 1e-3 (usually 1e-5).
 * Refused: years below 0 or above 10,000, more germinated than sown, a prior without spread, a threshold of 0.
 * Limits: orthodox seed in one steady place; tests on one basis; a rise in the first months is dormancy wearing off, not recovery.
 * Without tests, or with one, it is the kind that speaks and not the lot. Example: 18 of 20 at the beginning, σ about 5 years: to 85 %
 * of the initial viability 3.2 years, 0.8 to 13.
 * Source: viability equation of Ellis & Roberts 1980, Ann. Bot. 45:13-30; grid posterior of a probit line.
 */
export function viabilityForecast(input: ViabilityForecastInput): Outcome<ViabilityForecast> {
  const faults = forecastFaults(input);
  if (faults.length > 0) return refused(...faults);
  const { tests, prior, threshold, ceiling = 1 } = input;
  const model = forecastModel(tests, prior, ceiling);
  const bounds = lnSigmaBounds(model, prior);
  const now = tests.reduce((latest, { years }) => Math.max(latest, years), 0);
  const answerOn = (steps: number) => figuresOf(posteriorOn(model, prior, bounds, steps), threshold, ceiling, now);
  let steps = FIRST_STEPS;
  let before = answerOn(steps);
  let answer = before;
  do {
    before = answer;
    steps *= 2;
    answer = answerOn(steps);
  } while (steps < MOST_STEPS && !agree(before, answer));
  return accepted({ ...answer, assumed: assumedOf(input) });
}

type Figures = Omit<ViabilityForecast, "assumed">;

function figuresOf(posterior: Posterior, threshold: Threshold, ceiling: number, now: number): Figures {
  const reaching = kiReaching(threshold, ceiling);
  const chanceWithin = (years: number) => posterior.chanceBelow((sigmaYears) => reaching(years / sigmaYears));
  const startsAtThreshold = typeof threshold !== "number" && threshold.ofInitial === 1;
  const scale = Math.exp(posterior.lnSigmaYears.mean);
  return {
    Ki: posterior.Ki,
    lnSigmaYears: posterior.lnSigmaYears,
    yearsToThreshold: {
      median: quantileOfYears(chanceWithin, 0.5, scale),
      low: quantileOfYears(chanceWithin, 0.05, scale),
      high: quantileOfYears(chanceWithin, 0.95, scale),
    },
    probabilityBelowNow: startsAtThreshold && now === 0 ? 0 : chanceWithin(now),
  };
}

function agree(one: Figures, other: Figures): boolean {
  const near = (a: number, b: number) => Math.abs(a - b) <= AGREED * Math.abs(b) + 1e-12;
  const [s, t] = [one.yearsToThreshold, other.yearsToThreshold];
  return (
    near(s.median, t.median) &&
    near(s.low, t.low) &&
    near(s.high, t.high) &&
    near(one.Ki.mean, other.Ki.mean) &&
    near(one.Ki.sd, other.Ki.sd) &&
    near(one.lnSigmaYears.mean, other.lnSigmaYears.mean) &&
    near(one.lnSigmaYears.sd, other.lnSigmaYears.sd) &&
    Math.abs(one.probabilityBelowNow - other.probabilityBelowNow) <= AGREED
  );
}

function forecastFaults({ tests, prior, threshold, ceiling }: ViabilityForecastInput): Refusal[] {
  const faults = [
    ...tests.flatMap((test, index) => testFaults(test, index)),
    ...faultsAmong(
      ...priorFaults("Ki", prior.Ki),
      ...priorFaults("lnSigmaYears", prior.lnSigmaYears),
      shareAboveZeroFault([], "ceiling", ceiling),
    ),
  ];
  if (typeof threshold === "number")
    return [...faults, ...faultsAmong(shareAboveZeroFault([], "threshold", threshold))];
  return [...faults, ...faultsAmong(shareAboveZeroFault(["threshold"], "ofInitial", threshold.ofInitial))];
}

/** Beyond it a normal deviate, or a life in years, means nothing, and the search for the bell would find none. */
const FARTHEST = 50;

function priorFaults(
  key: "Ki" | "lnSigmaYears",
  { mean, sd }: { readonly mean: number; readonly sd: number },
): Fault[] {
  const far = (name: "mean" | "sd", given: number): Fault =>
    Math.abs(given) > FARTHEST
      ? refusal(
          "too-far",
          ["prior", key, name],
          given,
          "is farther than any seed",
          `a number within ${FARTHEST} of 0 is needed`,
        )
      : undefined;
  return [
    finiteFault(["prior", key], "mean", mean) ?? far("mean", mean),
    positiveFault(["prior", key], "sd", sd) ?? far("sd", sd),
  ];
}

/** No seed is known to have kept so many years, and the search for the bell would find none. */
const MOST_YEARS = 10_000;

function testFaults({ years, sown, normal }: ForecastTest, index: number): Refusal[] {
  const at = ["tests", index];
  const needed = `at most ${MOST_YEARS} years are needed`;
  const faults = faultsAmong(
    notNegativeFault(at, "years", years) ??
      (years > MOST_YEARS ? refusal("too-far", [...at, "years"], years, "is longer than any seed", needed) : undefined),
    countFault(at, "sown", sown, 1),
    countFault(at, "normal", normal),
  );
  if (faults.length === 0 && normal > sown) {
    const needed = "seedlings may not pass the seeds sown";
    faults.push(refusal("more-than-sown", [...at, "normal"], normal, `is more than the ${sown} sown`, needed));
  }
  return faults;
}

function assumedOf({ tests, ceiling }: ViabilityForecastInput): Assumption[] {
  const assumed: Assumption[] = [];
  if (tests.length === 0) {
    const text = "no test of this lot: the forecast is what is known of its kind, and nothing of the lot";
    assumed.push({ code: "no-tests", text });
  }
  if (ceiling === undefined) {
    assumed.push({ code: "all-could-germinate", text: "every seed could germinate at first (ceiling 1)" });
  }
  return assumed;
}
