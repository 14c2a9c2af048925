import type { GivingKind } from "@/lib/schemas/transfers/transfer";
import { type Refusal, refusal } from "@/lib/science/outcome";
import type { SeedCount } from "../lots/live-seeds";
import { type LotInHand, objectionsTo } from "../lots/objections";
import type { GiveReason, GiveVerdict } from "../reserve/may-give";
import { noSeedGrams } from "./after-giving";

/** What is known of the lot, its variety and who else has it. */
export interface GivingGround {
  readonly lot: LotInHand;
  readonly variety: string;
  readonly give: GiveVerdict;
  /** seeds that the reserve of the holder's good lots is; null not known */
  readonly reserveSeeds: number | null;
  readonly grams: number | null;
  readonly thousandSeedGrams: number | null;
  /** other lots of the variety that may hold seed: of this holder, and of anybody */
  readonly otherLotsHere: number;
  readonly otherLotsElsewhere: number;
  readonly rights: string | null;
  readonly sensitivity: string;
}

/** What is about to be given, and to what kind of hand. */
export interface AboutToGive {
  readonly kind: GivingKind;
  /** into the same holder's other building: nothing leaves their hand */
  readonly staysWithHolder: boolean;
  /** to a library, whatever the kind */
  readonly toLibrary: boolean;
  /** to somebody who is no steward of this registry */
  readonly outside: boolean;
  /** null where it is not typed yet, or has no weight */
  readonly grams: number | null;
  readonly seeds: SeedCount | null;
}

/** A rule that stands against giving. */
export interface GivingRule {
  readonly code: string;
  /** a sentence without its full stop */
  readonly words: string;
  /** whether a steward may overrule it with a reason that is kept */
  readonly overridable: boolean;
}

/** Rights in a variety that are somebody's: its seed is not passed on without their leave. */
const someonesRights = /\b(protected|patent\w*|contract|licen[cs]ed?|hybrid)\b/i;
const noRights =
  /\b(not|no longer|never|un-?)\s*(protected|patent\w*|licen[cs]ed?)|\bno\s+(protection|patent|contract|licen[cs]e)/i;

/**
 * The rules that stand against giving seed of a lot: how it stands and what it was treated with, warnings, the reserve, the last seed,
 * rights, and what never goes to a library. None: it may be given. A return and a deposit in the holder's own other building are not held
 * back by the reserve; nothing is given silently that is the last.
 * Source: trade.md 3.5 (reserve, lone copy), 4 (libraries, rights, treated seed), 5 (treated seed).
 */
export function givingRules(ground: GivingGround, giving: AboutToGive): GivingRule[] {
  const number = ground.lot.number;
  const jar = objectionsTo("split", ground.lot).map(
    ({ code, words, overridable }): GivingRule => ({
      code,
      words: `lot ${number} ${words}`,
      overridable: overridable && !(giving.toLibrary && neverOnAShelf.has(code)),
    }),
  );
  if (jar.some((rule) => !rule.overridable)) return jar;
  if (giving.staysWithHolder) return jar.filter((rule) => rule.code === "closed");
  return [
    ...jar,
    ...ofVariety(ground),
    ...ofCircle(ground, giving),
    ...ofReserve(ground, giving),
    ...lastSeed(ground, giving),
  ];
}

/** What a library does not shelve. */
const neverOnAShelf: ReadonlySet<string> = new Set([
  "treated",
  "treatment-unknown",
  "in-quarantine",
  "on-hold",
  "warned",
]);

function ofVariety({ variety, rights, sensitivity }: GivingGround): GivingRule[] {
  const rules: GivingRule[] = [];
  if (rights !== null && someonesRights.test(rights) && !noRights.test(rights)) {
    const words = `${variety} is somebody's by right (${rights}): passing it on needs their leave`;
    rules.push({ code: "rights", words, overridable: true });
  }
  if (sensitivity === "held") {
    const words = `${variety} is held for people who must be asked first`;
    rules.push({ code: "held-for-others", words, overridable: true });
  }
  return rules;
}

function ofCircle({ lot }: GivingGround, { outside, toLibrary }: AboutToGive): GivingRule[] {
  if (lot.status !== "circle only" || !(outside || toLibrary)) return [];
  return [{ code: "circle-only", words: `lot ${lot.number} is for the circle only`, overridable: true }];
}

function ofReserve(ground: GivingGround, giving: AboutToGive): GivingRule[] {
  if (giving.kind === "return" || giving.seeds === null) return [];
  const { give, variety } = ground;
  const secondPlace = give.onlyPlace && !giving.outside;
  const collides = `; nobody else is confirmed to have ${variety}, and a second place comes first: the two rules collide, and you choose`;
  const say = (code: string, words: string): GivingRule[] => [
    { code, words: `${words}${secondPlace && short.has(code) ? collides : ""}`, overridable: true },
  ];
  const reserve = ground.reserveSeeds === null ? "the reserve" : `the reserve of ${ground.reserveSeeds} seeds`;
  if (give.answer === "yes") {
    const free = Math.floor(give.free?.low ?? 0);
    if (giving.seeds.high <= free) return [];
    return say("above-what-is-free", `at most ${free} seeds are free above ${reserve}`);
  }
  if (give.why === "reserve not met") return say("reserve-not-met", `${reserve} is not met`);
  const words = unsure[give.why];
  return words === undefined ? [] : say("reserve-not-known", words);
}

const short: ReadonlySet<string> = new Set(["above-what-is-free", "reserve-not-met"]);

/** Why nobody can tell what may be given. How the lot stands, warnings and an empty jar are other rules' matters. */
const unsure: Readonly<Partial<Record<GiveReason, string>>> = {
  "amount not known": "how much is in the jar is not known",
  "never tested": "nobody has tested whether it lives",
  "tests too low": "it tests so low that renewing is urgent",
  "tested too long ago": "its last test is older than its seed usually lives",
  "likely below the line": "by its tests and its age it is likely below the line for renewing by now",
  "plants not known": "how many plants a grow-out wants is not known, so neither is the reserve",
  "seeds not known": "how many seeds are in a gram is not known, so nobody can tell what the reserve leaves",
  "reserve may not be met": "the reserve may not be met: how many seeds there are is not sure",
};

function lastSeed(ground: GivingGround, { grams }: AboutToGive): GivingRule[] {
  if (grams === null || ground.grams === null || ground.grams - grams >= noSeedGrams(ground.thousandSeedGrams))
    return [];
  const whose =
    ground.otherLotsHere > 0
      ? ""
      : ground.otherLotsElsewhere > 0
        ? `, and this holder has no other of ${ground.variety}`
        : `, and no other lot of ${ground.variety} on record may hold seed`;
  return [{ code: "last-seed", words: `this is the last seed of lot ${ground.lot.number}${whose}`, overridable: true }];
}

/** The refusals that are left when a reason overrules what may be overruled. */
export function givingRefusals(rules: readonly GivingRule[], lotNumber: string, override: string | null): Refusal[] {
  return rules.flatMap((rule) => {
    if (rule.overridable && override !== null) return [];
    const needed = rule.overridable
      ? "leave it, give less, or say why it is given all the same"
      : "leave it; if the record is wrong, put the lot right first";
    const path = rule.overridable ? ["override"] : ["kind"];
    return [refusal(rule.code, path, `lot ${lotNumber}`, `is kept back: ${rule.words}`, needed)];
  });
}

/** What was overruled and why, as it is kept with the transfer; null where no rule stood against it. */
export function overruledInWords(rules: readonly GivingRule[], override: string | null): string | null {
  if (override === null || rules.length === 0) return null;
  return `Given although ${rules.map((rule) => rule.words).join("; and although ")}. Reason: ${override}`;
}
