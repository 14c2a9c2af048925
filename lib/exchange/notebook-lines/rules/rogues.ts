import { NOTHING_SAID } from "../line";
import type { Found } from "../pattern";
import { likely, type Reading, rule, sure } from "./rule";

const NONE = { ...NOTHING_SAID, value: 0, low: 0, high: 0 };
const BEFORE = /\b(?:before|seedling|seedlings|small plants|early on)\b/i;
const AFTER = /\b(?:after|at harvest|at picking|in flower|in full flower|too late)\b/i;

function timingOf(found: Found): "before" | "after" | null {
  return BEFORE.test(found.words) ? "before" : AFTER.test(found.words) ? "after" : null;
}

const some = (found: Found): Reading =>
  sure({ kind: "rogued", value: { count: found.count(), timing: timingOf(found), looked: found.count("looked") } });

const loose = (found: Found): Reading => ({ ...some(found), certainty: "likely" });

const none = (found: Found): Reading =>
  sure({
    kind: "rogued",
    value: { count: { ...NONE, words: found.words }, timing: timingOf(found), looked: found.count("looked") },
  });

/** Plants taken out: "pulled 5 before flowering", "rogued out three off-types", "threw out three", "no rogues". 0 = looked and found none. */
export const roguesRule = rule("rogued", [
  ["<pull> (only|just|all)? (the)? {bare} <timing>?", loose],
  [
    "<pull> (only|just|all)? (the)? {count} (<plants>|<off-types>|ones|plants that were off|that were off|of them) <timing>?",
    some,
  ],
  ["<pull> (only|just|all)? (the)? {count} {adjectives} (ones|<plants>|<off-types>) <timing>?", some],
  ["<pull> {count} (of|out of) (the)? {count:looked} <plants>? <timing>?", some],
  ["(only|just)? {count} (<plants>|<off-types>)? <pulled> <timing>?", some],
  ["(only|just)? {count} {adjectives} (ones|<plants>)? <pulled> <timing>?", some],
  ["(only|just)? {count} <off-types> (out|pulled|removed)? <timing>? $", loose],
  ["<timing> <pull> {bare}", some],
  ["<timing> <pull> {count} (<plants>|<off-types>|ones)", some],
  [
    "(rogued|rogued out|roguing|rogued hard|rogued well|rogued twice|rogued once|rogued lightly) (the)? (<off-types>)? <timing>? $",
    loose,
  ],
  ["(pulled|took out|threw out) (the|all the) <off-types> <timing>?", some],
  ["(no|without any) <off-types> (found|seen|at all)? <timing>?", none],
  ["(rogued|pulled|threw out) (none|nothing|no plants) <timing>?", none],
  ["(none|nothing) <pulled> <timing>?", none],
  ["(nothing|none) to (rogue|pull) (out)?", none],
  [
    "(looked|walked|went) (for off-types|for rogues|over|through|over them|through them|over {count:looked}|at {count:looked})? ,? (and)? (found|pulled) (none|nothing|no <off-types>)",
    none,
  ],
]);

/** Plants off the type that were seen, not said to be pulled: "yellow ones showed up", "some came up white", "two off-types". */
export const offTypesRule = rule("off-types", [
  [
    "{count}? {adjectives}? (ones|<plants>|<off-types>) (showed up|turned up|appeared|came in|among them|in it|among it|showed|cropped up)",
    seen,
  ],
  [
    "{count} {adjectives}? (ones|<off-types>) (seen|found|about)?",
    (found) => (/\b(?:off|rogue|ones)/i.test(found.words) ? seen(found) : null),
  ],
  [
    "(some|a few|several|{count}) (of them)? (came|turned|came up|turned out|were|was|came out) (off-type|off type|not true|untrue|wrong|off)",
    seen,
  ],
  ["(not|no longer) (quite)? true (to type)?", seen],
  ["(a few|some|several|many) (off-types|off types|rogues|strangers) $", seen],
]);

function seen(found: Found): Reading {
  return likely({ kind: "off-types", value: { count: found.count() } });
}
