import type { Explanation } from "@/lib/display/explanation";
import { percent } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import type { SeasonRule } from "@/lib/registry/season/waiting";
import type { Settings } from "@/lib/schemas/settings";

/** What a rule of the season is called, and how it judges, in words. */
export interface RuleWords {
  /** names the group of what it found */
  readonly title: string;
  readonly noun: string;
  readonly explanation: (settings: Settings, found: number) => Explanation;
}

const settingsLink = "/settings";

function rule(
  title: string,
  noun: string,
  formula: string,
  more: (settings: Settings) => Partial<Pick<Explanation, "inputs" | "assumed" | "unsure" | "sources">>,
): RuleWords {
  return {
    title,
    noun,
    explanation: (settings, found) => ({
      title,
      answer: counted(found, noun),
      formula,
      inputs: [],
      assumed: [],
      sources: [],
      plain: "rule of the season",
      ...more(settings),
    }),
  };
}

const trade = "Trade practice, not verified in a source";

/** The rules of the season in words, each with the settings that it follows. */
export const ruleWords: Readonly<Record<SeasonRule, RuleWords>> = {
  "germination-below-line": rule(
    "Renew these lots",
    "lot",
    "a lot that may hold seed, and whose last test lies below the line for renewing",
    (settings) => ({
      inputs: [
        { name: "plan below", value: percent(settings.renewalPlan, 0), href: settingsLink },
        { name: "urgent below", value: percent(settings.renewalUrgent, 0), href: settingsLink },
      ],
      unsure:
        "The share of the one test decides. Beside it stands the chance that the seed truly lies below the line: small tests leave it open.",
      sources: [
        "Jeffreys’ prior for a share, as in Brown, Cai & DasGupta 2001, Statistical Science 16:101",
        `lines: ${trade.toLowerCase()}`,
      ],
    }),
  ),
  "past-usual-life": rule(
    "Seed past its usual life",
    "lot",
    "years since the last possible day of the harvest > upper end of the crop’s usual life, where no younger lot of the variety holds seed",
    () => ({
      inputs: [{ name: "usual life", value: "each crop’s own", href: "/crops" }],
      unsure: "Usual lives are for a cool dry cupboard, and tables disagree. A test always outranks them.",
      sources: ["The crop list with its sources"],
    }),
  ),
  "failed-grow-out": rule(
    "Plan these again after a failed year",
    "variety",
    "the last grow-out that was sown gave no lot, and its outcome says why; no plan of the variety stands",
    () => ({
      unsure:
        "Sow of what is left half at most, this year only where the season allows, and ask the circle before the last seed.",
      sources: [trade],
    }),
  ),
  "narrow-grow-out": rule(
    "Grow more plants next time",
    "variety",
    "effective size of the last grow-out that gave seed < floor of plants of its crop",
    () => ({
      inputs: [{ name: "floor of plants", value: "each crop’s own", href: "/crops" }],
      unsure: "One narrow year is survivable; several in a row are not.",
      sources: ["The crop list with its sources"],
    }),
  ),
  "plants-to-choose": rule(
    "Choose what to keep",
    "grow-out",
    "two plants or more are scored, none of them is marked keep, and no seed is taken yet; sown within two years",
    () => ({
      unsure: "When it is time differs by crop: by the plant in flower, the root lifted, the ear or the fruit.",
      sources: [trade],
    }),
  ),
  "count-day-come": rule(
    "Count these tests",
    "test",
    "the day of the last count has come, or a week has gone by since the seed was laid out",
    () => ({
      assumed: [
        "A test is looked at after a week where nobody wrote a day for it; after 120 days it is taken as left.",
      ],
      sources: ["Home practice: 7 and 14 days"],
    }),
  ),
  "test-overdue": rule(
    "Test these lots",
    "lot",
    "years since the last test > half the lower end of the crop’s usual life (1 to 5 years); every year once the usual life is past; a first test within a year of the harvest",
    () => ({
      inputs: [{ name: "usual life", value: "each crop’s own", href: "/crops" }],
      assumed: [
        "Every 3 years where the usual life is not known.",
        "A lot of unknown age that was never tested is due.",
      ],
      sources: ["First test: FAO 2014, Genebank Standards", `space between tests: ${trade.toLowerCase()}`],
    }),
  ),
  "standing-apart": rule("In quarantine or on hold", "lot", "a lot whose state is quarantine or hold", () => ({
    unsure: "A returned lot is grown apart and compared before it is let in.",
    sources: [trade],
  })),
  "quarantine-long": rule(
    "Compare these and decide",
    "lot",
    "a lot in quarantine whose transfer lies more than two years back",
    () => ({
      unsure:
        "Only lots whose coming in is on record as a transfer are counted so; the others stand in the list of what is apart.",
      sources: [`One or two seasons side by side: ${trade.toLowerCase()}`],
    }),
  ),
  "promise-overdue": rule(
    "Promises not kept yet",
    "promise",
    "a promise that was not kept by the last possible day of its date",
    () => ({
      unsure: "Whoever brings nothing back is never held to it: ask, or let the promise go.",
      sources: [trade],
    }),
  ),
  "reply-due": rule(
    "Ask how the seed did",
    "answer",
    "the day for an answer is past, and since the seed was handed over neither a word of that steward nor seed came back",
    () => ({
      assumed: ["Where a promise with a day went with the seed, that is waited for instead."],
      sources: [trade],
    }),
  ),
  "balance-unknown": rule(
    "Look how much is left",
    "lot",
    "a lot that is not finished, with no entry in its ledger at all",
    () => ({ unsure: "Unknown is not none: nobody wrote down that it is empty." }),
  ),
  "one-place-only": rule(
    "Share these before they are lost",
    "variety",
    "places of confirmed holders ≤ 1; containers in one building are one place",
    (settings) => ({
      inputs: [{ name: "a word counts for", value: counted(settings.confirmedYears, "year"), href: settingsLink }],
      assumed: ["A holder counts only with seed younger than its usual life."],
      unsure: "At least three people in three places is the aim, one of them out of the valley.",
      sources: [trade],
    }),
  ),
  "holder-not-confirmed": rule(
    "Ask these holders",
    "holding",
    "nothing heard of a holder, and nothing weighed, tested or given, within the years that a word counts",
    (settings) => ({
      inputs: [{ name: "a word counts for", value: counted(settings.confirmedYears, "year"), href: settingsLink }],
      unsure: "Silence is not a yes.",
      sources: [trade],
    }),
  ),
  "perhaps-one-lot": rule(
    "Perhaps one lot, entered twice",
    "pair of records",
    "two records of a variety with the giver’s same number, in one hand, of years that may be one",
    () => ({
      assumed: [
        "A year that nobody wrote may be any. Parts of a lot and blends have numbers of their own and are not asked about.",
      ],
    }),
  ),
  "open-matter": rule(
    "Questions and warnings",
    "open matter",
    "a question without an answer, or a warning that is not closed",
    () => ({}),
  ),
};
