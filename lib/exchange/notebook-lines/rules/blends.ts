import type { Found } from "../pattern";
import { doubtful, type Reading, rule, sure } from "./rule";

const withOwn = (found: Found): Reading | null => {
  const lot = found.lot() ?? found.lot("loose");
  if (lot === null) return null;
  // somebody's seed or the neighbour's plants: "mixed" may mean a blend or a cross
  const read = lot.kind === "whose" ? doubtful : sure;
  return read({ kind: "blend", value: { parts: [{ lot, share: found.share() }], withOwn: true } });
};

/** "mixed '96, '97 and '98 seed". */
const ofThree = (found: Found): Reading | null => {
  const lots = [found.lot("loose"), found.lot("second"), found.lot("third")];
  const parts = lots.flatMap((lot) => (lot === null ? [] : [{ lot, share: null }]));
  return parts.length < 3 ? null : sure({ kind: "blend", value: { parts, withOwn: false } });
};

const ofTwo = (found: Found): Reading | null => {
  const [first, second] = [found.lot("loose") ?? found.lot(), found.lot("second")];
  if (first === null || second === null) return null;
  const [one, other] = [found.share("one"), found.share("other")];
  return sure({
    kind: "blend",
    value: {
      parts: [
        { lot: first, share: one },
        { lot: second, share: other ?? (one === null ? null : 1 - one) },
      ],
      withOwn: false,
    },
  });
};

/** Lots mixed into one: "mixed with the 1990 seed", "mixed the 1990 and the 1992 seed", "half old half new". */
export const blendRule = rule("blend", [
  [
    "<mix> (it|this|them|some|some of it|the lot|all of it|half of it)? (in|up|together)? (with|into|in with|to) {lot}",
    withOwn,
  ],
  ["(mixed|blended|bulked|combined) (it|this|them|the lot)? (in|up|together)? (with|in with) {loose}", withOwn],
  [
    "(mixed|blended|bulked|combined|tipped|put|stirred) (together)? {loose} (and|with|into|in with) {lot:second} (together|into one jar)?",
    ofTwo,
  ],
  ["(mixed|blended|bulked|combined) (together)? {loose} (and|with) {loose:second} (together|into one jar)?", ofTwo],
  [
    "(mixed|blended|bulked|combined|tipped) (together)? {loose} , {loose:second} ,? and ({lot:third}|{loose:third}) (together)?",
    ofThree,
  ],
  ["(a)? (mix|mixture|blend) of {loose} and {loose:second}", ofTwo],
  ["{share:one} (of)? {loose} (,|and|with|/)? (and)? {share:other} (of)? {loose:second}", ofTwo],
]);
