import type { LineProposal, ProposedLot } from "@/lib/exchange/notebook-lines/proposal";
import type { Count, LineReading } from "@/lib/exchange/notebook-lines/reading";
import { parseTypedDate } from "@/lib/science/dates/parse-typed-date";
import { amountTyped, countTyped, shareTyped, upOfTyped } from "./told-numbers";
import type { Fix, Fixes, ReadLine } from "./typed-line";

/** Stands for seed of which the person says that nobody knows where it came from. */
export const unknownSource = "unknown";

type Draft = { -readonly [Key in keyof LineProposal]: LineProposal[Key] };

/** What is put right: returns a sentence where the typed text cannot be read, and then leaves the proposal as it is. */
type Correction = (proposal: Draft, fix: Fix, place: number) => string | null;

const counts = {
  seedsSown: (proposal, count) => {
    proposal.seedsSown = count;
  },
  emerged: (proposal, count) => {
    proposal.emerged = count;
  },
  plantsStanding: (proposal, count) => {
    proposal.plantsStanding = count;
  },
  seedParents: (proposal, count) => {
    proposal.seedParents = count;
    proposal.seedParentsCounted = count === null ? null : "plants";
    proposal.allKept = false;
  },
  roguedBefore: (proposal, count) => pulled(proposal, "before", count),
  roguedAfter: (proposal, count) => pulled(proposal, "after", count),
  roguedUntimed: (proposal, count) => pulled(proposal, null, count),
} satisfies Record<string, (proposal: Draft, count: Count | null) => void>;

function pulled(proposal: Draft, timing: "before" | "after" | null, count: Count | null): void {
  const others = proposal.rogues.filter((pass) => pass.timing !== timing);
  proposal.rogues = count === null ? others : [...others, { count, timing, looked: null }];
}

const others: Readonly<Record<string, Correction>> = {
  sown: (proposal, fix) => dated(fix, (text) => (proposal.sown = text)),
  lotYear: (proposal, fix) =>
    dated(fix, (text) => {
      proposal.lots = proposal.lots.map((lot) => (lot.kind === "founder" ? { ...lot, year: text } : lot));
    }),
  from: (proposal, fix, place) => {
    if (!("text" in fix)) return null;
    const lot = fix.text === unknownSource ? withUnknownSource(proposal) : fix.text;
    proposal.from = proposal.from.map((parent, index) =>
      index === place ? { ...parent, lot, assumed: false } : parent,
    );
    return null;
  },
  share: (proposal, fix, place) => {
    const share = "text" in fix ? shareTyped(fix.text) : null;
    if ("text" in fix && share === null) return `“${fix.text}” is no share; write 1/3, 30 % or 0.3.`;
    proposal.from = proposal.from.map((parent, index) => (index === place ? { ...parent, share } : parent));
    const blend = proposal.lots.find((lot) => lot.kind === "blend");
    if (blend) proposal.lots = proposal.lots.map((lot) => (lot === blend ? { ...lot, parents: proposal.from } : lot));
    return null;
  },
  seedShares: (proposal, fix) => {
    proposal.seedShares = "text" in fix && (fix.text === "equal" || fix.text === "unequal") ? fix.text : null;
    return null;
  },
  harvested: (proposal, fix) => amountOr(fix, (amount) => (proposal.harvested = amount ? [amount] : [])),
  onHand: (proposal, fix) => amountOr(fix, (amount) => (proposal.onHand = amount)),
  sownAmount: (proposal, fix) => amountOr(fix, (amount) => (proposal.sownAmount = amount)),
  discarded: (proposal, fix) => amountOr(fix, (amount) => (proposal.discarded = amount ? [amount] : [])),
  received: (proposal, fix) =>
    amountOr(fix, (amount) => (proposal.received = proposal.received && { ...proposal.received, amount })),
  given: (proposal, fix, place) => {
    if ("dropped" in fix) {
      proposal.given = proposal.given.filter((_, index) => index !== place);
      return null;
    }
    return amountOr(fix, (amount) => {
      proposal.given = proposal.given.map((gift, index) => (index === place ? { ...gift, amount } : gift));
    });
  },
  givenLot: (proposal, fix, place) => {
    if (!("text" in fix)) return null;
    const lot = { lot: fix.text, share: null, assumed: false, words: null };
    proposal.given = proposal.given.map((gift, index) => (index === place ? { ...gift, lot } : gift));
    return null;
  },
  test: (proposal, fix, place) => {
    if ("dropped" in fix) {
      proposal.germination = proposal.germination.map((test, index) =>
        index === place ? { ...test, isTest: false } : test,
      );
      return null;
    }
    const read = upOfTyped(fix.text);
    if (read === null) return `“${fix.text}” is no count of a test; write it as 18 of 20.`;
    proposal.germination = proposal.germination.map((test, index) =>
      index === place ? { ...test, ...read, isTest: true } : test,
    );
    return null;
  },
  testLot: (proposal, fix, place) => {
    if (!("text" in fix)) return null;
    const lot = { lot: fix.text, share: null, assumed: false, words: null };
    proposal.germination = proposal.germination.map((test, index) => (index === place ? { ...test, lot } : test));
    return null;
  },
  seedKept: (proposal, fix) => {
    if ("text" in fix && fix.text === "yes") return null;
    proposal.lots = proposal.lots.filter((lot) => lot.kind !== "harvest");
    proposal.harvested = [];
    return null;
  },
  failure: (proposal, fix) => {
    if (proposal.failure !== null) proposal.failure = "text" in fix ? fix.text.trim() : "";
    return null;
  },
};

/** A reading with its fixes in place. A fix that cannot be read is said by its field; what it stands for stays as it was understood. */
export function corrected(reading: LineReading, fixes: Fixes): ReadLine {
  const proposal: Draft = { ...reading.proposal };
  const faults: Record<string, string> = {};
  for (const [key, fix] of Object.entries(fixes)) {
    if (key === "year") continue;
    const [field = "", place = "0"] = key.split(".");
    const fault = countOr(proposal, field, fix) ?? others[field]?.(proposal, fix, Number(place)) ?? null;
    if (fault !== null) faults[key] = fault;
  }
  if (fixes.year && "text" in fixes.year && proposal.year === null) {
    faults.year = `“${fixes.year.text}” is no year; write it as 1994, about 1994 or in the 1980s.`;
  }
  return { ...reading, proposal, faults };
}

function countOr(proposal: Draft, field: string, fix: Fix): string | null {
  const set = counts[field as keyof typeof counts];
  if (!set) return null;
  const count = "text" in fix ? countTyped(fix.text) : null;
  if ("text" in fix && count === null) return `“${fix.text}” is no count; write 40, about 40 or 30-40.`;
  set(proposal, count);
  return null;
}

function amountOr(fix: Fix, set: (amount: ReturnType<typeof amountTyped>) => void): string | null {
  const amount = "text" in fix ? amountTyped(fix.text) : null;
  if ("text" in fix && amount === null)
    return `“${fix.text}” is no amount; write it with its unit, as 350 g or 500 seeds.`;
  set(amount);
  return null;
}

function dated(fix: Fix, set: (text: string | null) => void): string | null {
  if ("dropped" in fix) {
    set(null);
    return null;
  }
  const date = parseTypedDate(fix.text);
  if (!date.ok) return date.refusals.map((each) => `${each.sentence}.`).join(" ");
  set(date.value.text);
  return null;
}

/** The name of the founder lot that stands for unknown seed in this line; it is made where there is none yet. */
function withUnknownSource(proposal: Draft): string {
  const stands = proposal.lots.find((lot) => lot.kind === "founder" && lot.assumed);
  if (stands) return stands.name;
  const lot: ProposedLot = {
    name: `before ${proposal.year ?? "this"}, not known`,
    kind: "founder",
    year: null,
    firstSeen: proposal.year,
    words: "",
    person: null,
    parents: [],
    assumed: true,
  };
  proposal.lots = [lot, ...proposal.lots];
  return lot.name;
}
