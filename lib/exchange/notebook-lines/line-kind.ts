import type { Facts } from "./facts";
import type { LineKind } from "./proposal";
import type { FactKind } from "./reading";

const GROWING: readonly FactKind[] = [
  "grown",
  "plants",
  "emerged",
  "flagged",
  "seed-parents",
  "rogued",
  "seeds-sown",
  "sown-amount",
  "shares",
  "harvested",
  "sown-on",
  "purpose",
];
/** What is seen in a year's plants; without a year it is a remark on a line above. */
const SEEN: readonly FactKind[] = ["harvest-year", "lost", "off-types", "suspected-cross", "neighbour", "isolation"];
export const SEED_KEPT: readonly FactKind[] = ["seed-parents", "harvested", "shares", "harvest-year"];

/** What a line is about. Whatever shows plants in the ground makes it a grow-out; one without seed has failed. */
export function lineKind(facts: Facts): LineKind {
  const keptSeed = facts.has(...SEED_KEPT);
  if (facts.has("failed") && !keptSeed) return "failed";
  if (isGrowing(facts)) return "grow-out";
  if (facts.has("gap")) return "gap";
  if (facts.has("blend")) return "blend";
  if (facts.has("split")) return "split";
  if (facts.has("received")) return "received";
  if (facts.all("germination").some(isTest)) return "test";
  if (facts.has("given")) return "given";
  return "note";
}

function isGrowing(facts: Facts): boolean {
  if (facts.has(...GROWING) || (facts.has("year") && facts.has(...SEEN))) return true;
  // "the 1991 seed" alone, or beside a test or a gift, only says which seed it was
  const sown = facts.first("sown-from");
  if (sown === null) return false;
  return sown.certainty === "sure";
}

/** A germination that can be booked as a test: counted, or a percentage, or said to be a test. */
export function isTest(fact: ReturnType<Facts["all"]>[number]): boolean {
  if (fact.kind !== "germination") return false;
  const { where, up, of, percent } = fact.value;
  return where === "test" || (up !== null && of !== null) || percent !== null;
}
