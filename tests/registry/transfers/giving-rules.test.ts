import { expect, test } from "vitest";
import {
  type AboutToGive,
  type GivingGround,
  givingRules,
  overruledInWords,
} from "@/lib/registry/transfers/giving-rules";

const hundred = { value: 100, low: 100, high: 100, grade: "counted" as const };

const ground = (
  more: Omit<Partial<GivingGround>, "lot"> & { lot?: Partial<GivingGround["lot"]> } = {},
): GivingGround => ({
  variety: "Hamble Long",
  give: { answer: "yes", why: "above the reserve", free: hundred, keptBack: 200, onlyPlace: false },
  reserveSeeds: 200,
  grams: 150,
  thousandSeedGrams: null,
  otherLotsHere: 1,
  otherLotsElsewhere: 0,
  rights: null,
  sensitivity: "circle",
  ...more,
  lot: {
    ...{ number: "Ham 3", kind: "harvest", origin: null, status: null, statusReason: null },
    ...{ treatment: "none", treatmentSubstance: null, tested: true, openWarnings: [] },
    ...more.lot,
  },
});

const giving = (more: Partial<AboutToGive> = {}): AboutToGive => ({
  ...{ kind: "gift", staysWithHolder: false, toLibrary: false, outside: false, grams: 50 },
  seeds: hundred,
  ...more,
});

const rules = (of: Parameters<typeof ground>[0] = {}, about: Partial<AboutToGive> = {}) =>
  givingRules(ground(of), giving(about)).map((rule) => `${rule.code}${rule.overridable ? "" : ", never"}`);

const seeds = (value: number) => ({ value, low: value, high: value, grade: "counted" as const });

test("what is free may be given, and one seed more asks for a reason", () => {
  expect(rules()).toEqual([]);
  expect(rules({}, { seeds: seeds(101) })).toEqual(["above-what-is-free"]);
  // an amount that is not typed yet breaks no rule of the reserve
  expect(rules({}, { seeds: null, grams: null })).toEqual([]);
});

test("an unsure number of seeds counts at its most, against the fewest that are free", () => {
  const free = { value: 100, low: 60, high: 140, grade: "assumed" as const };
  const give = { ...ground().give, free };
  expect(rules({ give }, { seeds: { value: 50, low: 40, high: 60, grade: "assumed" } })).toEqual([]);
  expect(rules({ give }, { seeds: { value: 50, low: 40, high: 61, grade: "assumed" } })).toEqual([
    "above-what-is-free",
  ]);
});

test("each reason why nobody can tell is said; a return is not held back by the reserve", () => {
  const say = (why: GivingGround["give"]["why"]) =>
    givingRules(ground({ give: { ...ground().give, answer: "cannot tell", why } }), giving()).map((rule) => rule.words);
  expect(say("never tested")).toEqual(["nobody has tested whether it lives"]);
  expect(say("amount not known")).toEqual(["how much is in the jar is not known"]);
  expect(say("reserve not met")).toEqual(["the reserve of 200 seeds is not met"]);
  const short = { ...ground().give, answer: "no" as const, why: "reserve not met" as const };
  expect(rules({ give: short }, { kind: "return" })).toEqual([]);
});

test("a lone copy collides with the reserve: both rules are said where the seed makes a second place", () => {
  const give = { ...ground().give, answer: "no" as const, why: "reserve not met" as const, onlyPlace: true };
  const words = (outside: boolean) => givingRules(ground({ give }), giving({ outside }))[0]?.words;
  expect(words(false)).toBe(
    "the reserve of 200 seeds is not met; nobody else is confirmed to have Hamble Long, and a second place comes first: the two rules collide, and you choose",
  );
  // somebody whose name is not kept is no second place that anybody could ask
  expect(words(true)).toBe("the reserve of 200 seeds is not met");
});

test("how the lot stands is overruled with a reason, but never once it is gone or not for seed", () => {
  expect(rules({ lot: { status: "hold" } })).toEqual(["on-hold"]);
  expect(rules({ lot: { status: "quarantine" } })).toEqual(["in-quarantine"]);
  expect(rules({ lot: { status: "not for seed" } })).toEqual(["not-for-seed, never"]);
  expect(rules({ lot: { status: "dead" } })).toEqual(["dead, never"]);
  expect(rules({ lot: { openWarnings: ["yellow grain"] } })).toEqual(["warned"]);
  expect(rules({ lot: { status: "circle only" } })).toEqual([]);
  expect(rules({ lot: { status: "circle only" } }, { outside: true })).toEqual(["circle-only"]);
  expect(rules({ lot: { status: "circle only" } }, { toLibrary: true })).toEqual(["circle-only"]);
});

test("a library gets nothing that is or may be treated, set apart or warned of", () => {
  expect(rules({ lot: { treatment: "chemical" } })).toEqual(["treated"]);
  for (const lot of [
    { treatment: "chemical" },
    { treatment: "unknown" },
    { status: "quarantine" },
    { status: "hold" },
    { openWarnings: ["bitter"] },
  ])
    expect(rules({ lot }, { toLibrary: true })[0]).toMatch(/, never$/);
  expect(rules({ lot: { treatment: "hot water" } }, { toLibrary: true })).toEqual([]);
});

test("the last seed is said, of the lot, of the holder or of all there is", () => {
  const last = (here: number, elsewhere: number) =>
    givingRules(
      ground({ otherLotsHere: here, otherLotsElsewhere: elsewhere }),
      giving({ grams: 149.996, seeds: hundred }),
    ).map((rule) => rule.words);
  expect(last(1, 0)).toEqual(["this is the last seed of lot Ham 3"]);
  expect(last(0, 2)).toEqual(["this is the last seed of lot Ham 3, and this holder has no other of Hamble Long"]);
  expect(last(0, 0)).toEqual([
    "this is the last seed of lot Ham 3, and no other lot of Hamble Long on record may hold seed",
  ]);
  expect(rules({}, { grams: 149.99 })).toEqual([]);
});

test("rights of others and seed held for others ask for leave; freed rights do not", () => {
  expect(rules({ rights: "protected until 2034" })).toEqual(["rights"]);
  expect(rules({ rights: "hybrid, of a trade house" })).toEqual(["rights"]);
  expect(rules({ rights: "old, not protected" })).toEqual([]);
  expect(rules({ rights: "no patent known" })).toEqual([]);
  expect(rules({ sensitivity: "held" })).toEqual(["held-for-others"]);
});

test("into the holder's own other building nothing leaves: only a closed jar speaks against it", () => {
  const own = { staysWithHolder: true, kind: "safety duplicate" as const };
  expect(rules({ lot: { status: "hold", treatment: "chemical" } }, own)).toEqual([]);
  expect(rules({ lot: { status: "closed" } }, own)).toEqual(["closed"]);
  expect(rules({ lot: { status: "discarded" } }, own)).toEqual(["discarded, never"]);
});

test("what was overruled is kept with its reason", () => {
  const broken = givingRules(ground({ lot: { status: "hold" } }), giving({ seeds: seeds(101) }));
  expect(overruledInWords(broken, "they lost theirs")).toBe(
    "Given although lot Ham 3 is on hold; and although at most 100 seeds are free above the reserve of 200 seeds. Reason: they lost theirs",
  );
  expect(overruledInWords([], "no rule")).toBeNull();
  expect(overruledInWords(broken, null)).toBeNull();
});
