import type { Found } from "../pattern";
import type { FactOf, TransferManner } from "../reading";
import { likely, type Reading, rule, sure } from "./rule";

/** "Osk's jar" at an end of a clause: seed is meant. */
const SOMEBODYS_SEED = /(?:['’]s|s['’]) (?:\p{L}+ )?(?:jar|seed|seeds|packet|tin|stock|strain)$/iu;
const SHELF = /\b(?:shelf|library|bank|seed bank|genebank|swap table)\b/i;

const given =
  (manner: TransferManner) =>
  (found: Found): Reading | null => {
    const to = found.name() ?? found.name("owner");
    if (to === null) return null;
    const toShelf = manner === "gift" && SHELF.test(to);
    return sure({
      kind: "given",
      value: { amount: found.amount(), to, manner: toShelf ? "to a library" : manner, lot: found.lot() },
    });
  };

/** Seed that leaves: "gave 50 g to Tarn", "sent a packet to the shelf", "gave Tarn some", "lent half to Wend". */
export const givenRule = rule("given", [
  [
    "(<give>) {part} (of it|of them|of seed|of the seed|seed|away|of {lot})? (to|over to|across to|on to) {name}",
    given("gift"),
  ],
  ["(gave|sent|handed|posted) {name} {part}", given("gift")],
  ["(gave|sent|handed|posted|passed) (it|some|seed|them|a few)? (on)? to {name}", given("gift")],
  ["{part} (went|sent|given|passed|posted)? (on)? to {owner}", given("gift")],
  ["{name} (has|took|had) {part} (of it|off me)?", (found) => (isPerson(found) ? likelyGift(found) : null)],
  ["^ (to|->|=>|→) {owner} (:|,|-)? {part}", given("gift")],
  ["<give> {part} (at|into) {owner}", given("gift")],
  ["(lent|loaned) {part} (of {lot})? to {name}", given("loan")],
  ["(lent|loaned) {lot} to {name}", given("loan")],
  ["(lent|loaned) {name} {part}", given("loan")],
  ["(gave|sent) {part} back to {name}", given("return")],
  ["(returned|gave back|sent back) {part} to {name}", given("return")],
  ["(swapped|exchanged|traded) {part} with {name}", given("exchange")],
  ["sold {part} to {name}", given("sale")],
  ["(gave|sent|put|took) {part} (to|in|into|on) (the)? (shelf|library|swap table)", shelved],
]);

/** "Tarn has some": somebody is named there by a capital. */
function isPerson(found: Found): boolean {
  return /^\p{Lu}/u.test(found.name() ?? "") && found.from > 0;
}

function likelyGift(found: Found): Reading | null {
  const reading = given("gift")(found);
  return reading === null ? null : { ...reading, certainty: "likely" };
}

function shelved(found: Found): Reading {
  const place = /(?:the )?(?:shelf|library|swap table)$/i.exec(found.words)?.[0] ?? found.words;
  return sure({
    kind: "given",
    value: { amount: found.amount(), to: place, manner: "to a library", lot: found.lot() },
  });
}

type How = FactOf<"received">["value"]["how"];

const received =
  (how: How, read: typeof sure = sure) =>
  (found: Found): Reading | null => {
    const from = found.name("owner") ?? found.name();
    return from === null ? null : read({ kind: "received", value: { amount: found.amount(), from, how } });
  };

/** Seed that comes in: "from my aunt's jar", "got back from Osk", "swapped with the priest", "bought at the market". */
export const receivedRule = rule("received", [
  [
    "(seed|seeds|first seed|came|it came|original|originally|all|jar|a jar|grown|sown)? (from|out of) {owner}",
    received("not-said", likely),
  ],
  [
    "(got|had|received|have|fetched|brought|took|picked up) (it|them|this|seed|the seed|some|some seed|new seed|fresh seed)? (from|off) {owner}",
    received("given"),
  ],
  ["(got|had|received|fetched|brought|took) (only|just)? {part} (from|off) {owner}", received("given")],
  ["{part} (from|off) {owner}", received("given", likely)],
  ["(got|received) (:)? {amount} {owner}", received("given", likely)],
  ["(got|received|had) from {owner} (:|,)? {amount}", received("given")],
  // "from Wend's '88 seed" is one lot
  ["(from|off|out of) {owner} {lot}", heldBy],
  [
    "(seed|the seed|jar)? (a gift|gift|present|a present|given|given to me|given to us|sent|passed on|handed on|inherited|left to me) (of|from|by) {owner}",
    received("given"),
  ],
  ["{owner} (gave|sent|brought|left|handed) (me|us) {part}", received("given")],
  [
    "{owner} (gave|sent|brought|left|handed) (me|us) (it|them|this|seed|the seed|her seed|his seed|a jar) $",
    received("given"),
  ],
  ["(bought|paid for) (it|them|seed|{part})? (from|at|off|in) (the)? {owner}", received("bought")],
  ["(swapped|exchanged|traded) (it|them|seed|this)? (with|at|from) {name}", received("exchange")],
  [
    "(got|had|came|given|received|sent|handed) (it|them|some|seed|{part})? back (again)? (from|by) {name}",
    received("returned"),
  ],
  ["{name} (sent|gave|brought|handed) (me|us|it|some|seed|{part})? back", received("returned")],
  ["{name} (sent|gave|brought|handed) (me|us)? back {part}", received("returned")],
  ["{owner} $", (place) => (SOMEBODYS_SEED.test(place.words) ? received("not-said", likely)(place) : null)],
  ["(found|turned up|discovered) (it|them|a jar|an old jar|some|seed|{part})? (in|under|behind|among) {rest}", found],
]);

function heldBy(place: Found): Reading | null {
  const [owner, lot] = [place.name("owner"), place.lot()];
  if (owner === null || lot === null || !/(?:['’]s|s['’])$/.test(owner)) return null;
  return likely({ kind: "received", value: { amount: null, from: `${owner} ${lot.words}`, how: "not-said" } });
}

function found(place: Found): Reading | null {
  const from = place.name("rest");
  return from === null ? null : likely({ kind: "received", value: { amount: place.amount(), from, how: "found" } });
}

/** Part of the lot goes to another holder: "split the jar with Wend". */
export const splitRule = rule("split", [
  [
    "(split|shared|halved|divided) (it|the jar|the seed|the lot|the harvest|them|{part})? (with|between me and|between us and) {name}",
    splitWith,
  ],
  ["half (of it|for me|for us)? ,? (and)? half (to|for) {name}", splitWith],
]);

function splitWith(place: Found): Reading | null {
  const to = place.name();
  return to === null ? null : sure({ kind: "split", value: { amount: place.amount(), to } });
}
