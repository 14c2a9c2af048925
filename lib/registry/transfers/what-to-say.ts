import { cautionsAt, type SeedInHand } from "@/lib/science/cautions/cautions-at";
import type { TestOfLot } from "../germination-tests/tests-of-lot";

/** What is known of the seed that somebody else is about to get. */
export interface SeedToTellOf {
  readonly seed: SeedInHand;
  readonly matingSystem: string | null;
  readonly pollinationVector: string | null;
  readonly clonal: boolean;
  readonly plantsWanted: number | null;
  readonly plantsMin: number | null;
  readonly plantsRecommendedMax: number | null;
  readonly isolationWantedM: number | null;
  readonly isolationHomeMinM: number | null;
  readonly isolationHomeMaxM: number | null;
  readonly isolationGrade: string | null;
  readonly treatment: string | null;
  readonly tested: boolean;
}

/** One thing to say with the seed. */
export interface Saying {
  readonly key: string;
  /** as it is said, and kept where it was */
  readonly words: string;
  /** it can hurt somebody: seed does not go out before it is said */
  readonly must: boolean;
}

/**
 * What is said with seed that goes into another hand: whether it crosses, how many plants and how far from others it wants, what can hurt,
 * what is promised (nothing), where to write, and the local rule. Source: trade.md 4, "Patrons are told".
 */
export function whatToSay(of: SeedToTellOf): Saying[] {
  const plain = (key: string, words: string | null): Saying[] => (words === null ? [] : [{ key, words, must: false }]);
  const cautions = cautionsAt("share", of.seed).map(
    ({ code, title, care }): Saying => ({ key: `caution-${code}`, words: `${title}. ${care.join(" ")}`, must: true }),
  );
  return [
    ...cautions,
    ...plain("crossing", crossing(of)),
    ...plain("plants", plants(of)),
    ...plain("isolation", isolation(of)),
    ...plain("may-have-crossed", mayHaveCrossed(of)),
    ...plain("treatment", treatment(of)),
    ...(of.tested ? [] : plain("untested", "Nobody has tested whether it comes up.")),
    ...plain("no-promise", "No promise goes with it, of what comes up or of what it grows into."),
    ...plain(
      "odd",
      "Write back if something odd turns up: a bitter fruit, a sick plant, one that is not like the others.",
    ),
    ...plain("bring-back", "If you like, bring some of its seed back one day; you need not."),
    ...plain("keeper", "Whoever wants to keep it for good may ask to become a steward of it."),
    ...plain("local-rule", "Check your local rule on passing seed on and on growing it."),
  ];
}

/** The words of what was told, one line each: what was ticked of the list in its order, then whatever else was said. */
export function toldInWords(sayings: readonly Saying[], keys: readonly string[], more: string | null): string | null {
  const said = sayings.filter((saying) => keys.includes(saying.key)).map((saying) => saying.words);
  const all = more === null ? said : [...said, more];
  return all.length === 0 ? null : all.join("\n");
}

function crossing({ matingSystem, clonal, pollinationVector }: SeedToTellOf): string | null {
  if (clonal || matingSystem === "clonal") return "It is kept by division: each plant is the same plant again.";
  const by = /wind/i.test(pollinationVector ?? "")
    ? " by wind"
    : /insect|bee/i.test(pollinationVector ?? "")
      ? " by insects"
      : "";
  if (matingSystem === "selfing") return "It sets seed with its own pollen and crosses seldom.";
  if (matingSystem === "mixed")
    return `It sets seed with its own pollen and with that of others${by}: it crosses easily.`;
  if (matingSystem === "dioecious")
    return `Male and female are different plants, and it crosses${by}: keep enough of both.`;
  return matingSystem === null ? null : `It crosses with its own kind${by}.`;
}

function plants({ clonal, plantsWanted, plantsMin, plantsRecommendedMax }: SeedToTellOf): string | null {
  const take = clonal ? "and keep of all that are true" : "and take seed of all that are true";
  if (plantsWanted !== null) return `To keep it, grow ${plantsWanted} plants or more, ${take}.`;
  if (plantsMin === null) return null;
  const better =
    plantsRecommendedMax !== null && plantsRecommendedMax > plantsMin ? `, better ${plantsRecommendedMax}` : "";
  return `To keep it, grow at least ${plantsMin} plants${better}, ${take}.`;
}

function isolation({ clonal, isolationWantedM, isolationHomeMinM, isolationHomeMaxM }: SeedToTellOf): string | null {
  if (clonal) return null;
  if (isolationWantedM !== null) return `Keep it ${isolationWantedM} m or more from others of its kind in flower.`;
  if (isolationHomeMinM === null) return null;
  const ample =
    isolationHomeMaxM !== null && isolationHomeMaxM > isolationHomeMinM ? `, ${isolationHomeMaxM} m are ample` : "";
  return `Keep it at least ${isolationHomeMinM} m from others of its kind in flower${ample}.`;
}

function mayHaveCrossed({ isolationGrade, clonal }: SeedToTellOf): string | null {
  if (clonal) return null;
  if (isolationGrade === "controlled" || isolationGrade === "isolated") return null;
  if (isolationGrade === "open") return "It may have crossed: it flowered open to other pollen.";
  if (isolationGrade === "partly") return "It may have crossed: it was only partly isolated.";
  return "It may have crossed: nobody noted how it was isolated.";
}

function treatment({ treatment: how }: SeedToTellOf): string | null {
  if (how === "none") return "It is not treated.";
  if (how === "hot water") return "It had a hot-water treatment and nothing else.";
  return how === null ? "Whether it was ever treated is not on record." : null;
}

/** Whether a lot was ever counted in a test. */
export function everTested(tests: readonly TestOfLot[]): boolean {
  return tests.some((test) => test.germination !== null);
}
