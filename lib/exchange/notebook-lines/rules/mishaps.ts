import type { Found } from "../pattern";
import { doubtful, likely, type Reading, rule, sure } from "./rule";

const failed = (found: Found): Reading => sure({ kind: "failed", value: { cause: causeOf(found) } });

const lost = (found: Found): Reading => sure({ kind: "lost", value: { count: found.count(), cause: causeOf(found) } });

/** The words that stand where the cause does: after "to" or "by", or before "had it". */
function causeOf(found: Found): string | null {
  const after =
    /\b(?:to|by|in|with|for|of|from|after|through)\s+(.+)$/i.exec(found.words)?.[1] ??
    / [-–—,:] ?(.+)$|, (.+)$/.exec(found.words)?.[1];
  const before = /^(.+?)\s+(?:had|took|got|ate|killed|destroyed|finished|stripped|flattened|cleared)\b/i.exec(
    found.words,
  )?.[1];
  return found.name("rest") ?? after ?? before ?? null;
}

/** No seed came: "lost to hail", "crows had it", "crop failed", "no seed". */
export const failedRule = rule("failed", [
  [
    "(^ lost|all lost|lost it|lost them|lost all|lost it all|lost the lot|lost everything|lost the crop|lost the whole crop|^ ruined|^ destroyed|^ wiped out|^ killed|^ eaten|^ flattened|^ frosted|^ washed out|^ blighted|all eaten|all killed|all ruined) (to|by|in|with) (the|a)? <cause>",
    failed,
  ],
  ["(^ lost|all lost) to {rest}", failed],
  ["lost <all> $", failed],
  ["(lost|ruined) <all> (to|by|in) {rest}", failed],
  ["<cause> <ate> <all>", failed],
  [
    "(crop|it|they|all|harvest|everything|the crop|whole crop|the lot|grow-out|^) (failed|failure|a failure|total failure|died|all died|died off|rotted|all rotted|drowned|withered|washed away) $",
    failed,
  ],
  [
    "(no|no ripe|not a single) (seed|seeds|harvest|crop) (came|set|ripened|at all|that year|this year|to keep|saved)? $",
    failed,
  ],
  [
    "(no|not a single) (seed|seeds|harvest|crop) (-|–|—|,|:|due to|owing to|because of|after|through) (the|a)? <cause>",
    failed,
  ],
  ["(kept|saved) (none|nothing|no seed)", failed],
  ["(not kept|none kept|nothing kept|not saved|none saved|nothing saved) (for seed)? $", failed],
  ["(set|gave|made|got|ripened|kept|saved) no (seed|seeds|ripe seed) (at all)?", failed],
  [
    "(^ none|^ nothing|no ears|no pods|no fruit) (ripened|ripe|came of it|survived|came through|to keep|kept) $",
    failed,
  ],
  [
    "(did not|didn't|never) (ripen|ripened|set seed|set any seed|seed|flower|come to anything|finish|make seed) $",
    failed,
  ],
  [
    "(nothing|nothing at all) came (of it|up)? $",
    (found) => doubtful({ kind: "failed", value: { cause: found.has("rest") ? null : null } }),
  ],
]);

/** Part of the plants gone: "lost 12 to hail", "crows had half". */
export const lostRule = rule("lost", [
  ["lost (about|only|just)? {count} (<plants>|of them)? (to|by|in|with) (the|a)? <cause>", lost],
  ["lost {count} (<plants>|of them) $", lost],
  [
    "(the rest|rest|some|half|most|many|a few|several|{count}) (of it|of them|<plants>)? (was|were)? (lost|eaten|killed|taken|flattened|destroyed|ruined) (to|by|in) (the|a)? <cause>",
    lost,
  ],
  ["(only|just)? {count} (<plants>|of them)? (died|dead|died off|rotted|damped off|drowned) $", lost],
  [
    "(half|a third|a quarter|most|some|many|several|a few|{count}) (of them|of it|<plants>)? (died|rotted|dead) (of|from|to|in) (the|a)? <cause>",
    (found) => (found.count() === null ? partly(found) : lost(found)),
  ],
  [
    "lost (about|nearly|over|at least)? (half|most|some|many|a third|two thirds|a quarter|a few|part|the best) (of it|of them|of the crop|of the plants)? (to|by|in) (the|a)? <cause>",
    partly,
  ],
  ["lost {bare}", (found) => likely({ kind: "lost", value: { count: found.count(), cause: null } })],
  [
    "<cause> <ate> (about|nearly|over|at least)? (half|most|some|many|a third|two thirds|a few|a lot|part|the best) (of it|of them|of the crop|of the plants|of the row)?",
    partly,
  ],
  ["<cause> <ate> (about|nearly|over|at least)? {count} (of them|<plants>)?", lost],
]);

function partly(found: Found): Reading {
  return sure({ kind: "lost", value: { count: null, cause: causeOf(found) } });
}
