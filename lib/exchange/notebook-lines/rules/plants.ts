import type { Found } from "../pattern";
import type { FactOf } from "../reading";
import { doubtful, likely, type Reading, rule, sure, withCount } from "./rule";

type Stage = FactOf<"plants">["value"]["stage"];

const at =
  (stage: Stage, read: typeof sure) =>
  (found: Found): Reading | null =>
    withCount(found, (count) => read({ kind: "plants", value: { count, stage } }));

const OF_PLANTS =
  /\b(?:plants?|pls?|planted|sown|sowed|pulled|rogued|culled|died|lost|thinned|off[- ]?types?|rogues?)\b/i;

/** "54 left" alone may be seeds in a jar; behind plants, or plants pulled or lost, it is plants. */
function tellsOfPlants(found: Found): boolean {
  const first = found.line.tokens[found.from];
  return first !== undefined && OF_PLANTS.test(found.line.text.slice(0, first.from));
}

/** How many plants there were: "about 40 plants", "thinned to 40", "a row of 40", "planted out 60", "38 survived". */
export const plantsRule = rule("plants", [
  [
    "(grew|grew out|grew on|raised|had|with|from only|just|only)? {count} (of)? (good|healthy|strong|sound)? <plants> (standing|stood|in all|altogether|in the end|grown)?",
    at("standing", sure),
  ],
  ["{count} (stood|standing|in flower|flowered|came to flower|came through to flower) $", at("standing", sure)],
  ["{count} <plants> (in flower|flowered|came to flower)", at("standing", sure)],
  ["(plants|plants standing|stand) (:|=) {bare}", at("standing", sure)],
  ["plants {bare}", at("standing", likely)],
  ["(stand|block|plot|patch|bed|row|rows) of {bare}", at("standing", likely)],
  ["(a|the|one)? (stand|block|plot|patch|bed|row|rows) of {count} <plants>", at("standing", sure)],
  ["(grew|grew out|grew on|raised) (only|just)? {bare}", at("standing", likely)],
  ["(only|just)? {count} (grown|grown on|grown out|raised) $", at("standing", likely)],
  ["(planted out|set out|transplanted|pricked out|put out|bedded out) (only|just)? {bare}", at("planted", likely)],
  [
    "(planted out|set out|transplanted|pricked out|put out|bedded out|planted) (only|just)? {count} <plants>",
    at("planted", sure),
  ],
  [
    "(only|just)? {count} (roots|bulbs|corms|heads) (replanted|planted out|planted back|set out|overwintered|put back)",
    at("planted", sure),
  ],
  [
    "(replanted|planted out|planted back|set out|overwintered|put back) (only|just)? {count} (roots|bulbs|corms)",
    at("planted", sure),
  ],
  [
    "(only|just)? {count} <plants>? (planted out|set out|transplanted|pricked out|potted on|potted up|put out|bedded out)",
    at("planted", sure),
  ],
  ["(replanted|planted back) (only|just)? {bare}", at("planted", likely)],
  // seeds are planted as well as plants
  ["planted (only|just)? {bare}", at("planted", doubtful)],
  ["(only|just)? {count} planted $", at("planted", doubtful)],
  // "12 roots selected out of 60": those that are replanted are the stand of the second year
  ["{count} roots (selected|chosen|picked out|kept) (out)? (of|from) (the)? {number:of}", at("planted", likely)],
  ["(thinned|thinned down|thinned out|singled) to {bare}", at("thinned", sure)],
  ["(thinned|thinned down|thinned out|singled) to {count} <plants>", at("thinned", sure)],
  [
    "(only|just)? {count} <plants>? (survived|made it|lived|came through|pulled through|were left at the end) (to flower|to flowering|to seed|to harvest|to the end|winter|the winter|the frost|the summer)? $",
    at("survived", sure),
  ],
  ["(only|just)? {count} <plants>? left (of|out of|from) (the)? {count:of} <plants>?", at("survived", sure)],
  ["(lost <all>|<cause> <ate> <all>|all died|all dead) (but|except|bar|save) (for)? {bare}", at("survived", sure)],
  [
    "(lost <all>|<cause> <ate> <all>|all died|all dead) (but|except|bar|save) (for)? {count} (<plants>|of them) (to {rest})?",
    at("survived", sure),
  ],
  ["(culled|rogued|pulled) (down|out)? to {bare}", at("left", likely)],
  [
    "(only|just)? {count} (remain|remained|remaining) $",
    (found) => (tellsOfPlants(found) ? at("left", likely)(found) : null),
  ],
  ["(only|just)? {count} left $", (found) => (tellsOfPlants(found) ? at("left", likely)(found) : null)],
  ["(only|just)? {count} <plants> left $", at("left", sure)],
  ["(left|leaving) {count} (<plants>|standing|<plants> standing)", at("left", sure)],
  ["leaving {bare}", at("left", likely)],
  ["{count} <plants>? left standing", at("left", sure)],
]);

/** Seedlings seen: "35 came up", "50 seedlings". With "of 50" it is a germination. */
export const emergedRule = rule("emerged", [
  [
    "(up|came up|emerged) (:)? (only|just)? {bare}",
    (found) => withCount(found, (count) => likely({ kind: "emerged", value: { count } })),
  ],
  [
    "(only|just)? {count} (<plants>|seedlings|of them)? (came up|up|emerged|showed|germinated|sprouted) $",
    (found) => withCount(found, (count) => sure({ kind: "emerged", value: { count } })),
  ],
  [
    "(got|had|raised)? (only|just)? {count} (good|healthy|strong)? (seedlings|seedling) (up)?",
    (found) => withCount(found, (count) => sure({ kind: "emerged", value: { count } })),
  ],
]);

/** "marked 20", "tagged the best 30", "flagged two dozen plants". */
export const flaggedRule = rule("flagged", [
  [
    "(marked|flagged|tagged|tied|pegged) (out)? (the)? <best>? {bare}",
    (found) => withCount(found, (count) => sure({ kind: "flagged", value: { count } })),
  ],
  [
    "(marked|flagged|tagged|tied|pegged) (out)? (the)? <best>? {count} <best>? (<plants>|ones)",
    (found) => withCount(found, (count) => sure({ kind: "flagged", value: { count } })),
  ],
]);

/** Grown, and no more is said: "sown late", "grown again". */
export const grownRule = rule("grown", [
  [
    "^ (sown|sowed|grown|planted|grew it|grew them|sowed it|planted it) (again|late|early|once more|as before|as usual|too late|too early)? $",
    () => sure({ kind: "grown", value: {} }),
  ],
  ["^ (again|grew again|once more) $", () => likely({ kind: "grown", value: {} })],
]);

/** Grown to eat: then no seed is thought to have come of it. */
export const purposeRule = rule("purpose", [
  [
    "(grown|grew|grown only|only grown|grew it|grew them|sown|sowed) (only|just)? (to eat|for eating|for the table|for the pot|for the kitchen|for food) (only|all)? $",
    () => sure({ kind: "purpose", value: { purpose: "food" } }),
  ],
  [
    "^ (all|only|just)? (for eating|for the table|for the pot|for the kitchen|for food) (only|all)? $",
    () => sure({ kind: "purpose", value: { purpose: "food" } }),
  ],
  [
    "(ate|eaten|we ate) (all|all of it|them all|the lot|everything) $",
    () => likely({ kind: "purpose", value: { purpose: "food" } }),
  ],
]);
