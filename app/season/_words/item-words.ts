import { dateInWords, dayInWords } from "@/lib/display/dates";
import { effectiveSize, kOfN, percent, percentSpan, plainNumber, probability } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import type { SeasonRecords } from "@/lib/registry/season/records";
import type { Waiting } from "@/lib/registry/season/waiting";

/** One thing that waits, in words. */
export interface ItemWords {
  readonly key: string;
  /** the record it is about, and whose mark stands before it */
  readonly subject: { readonly words: string; readonly href: string };
  readonly variety: { readonly name: string; readonly crop: string; readonly seedCoat: string | null } | null;
  /** what the subject belongs to: the variety of a lot */
  readonly of: string | null;
  /** with its full stop */
  readonly sentence: string;
  /** where the hand goes */
  readonly hand: { readonly words: string; readonly href: string };
}

/** The records in which the names of what waits are looked up. */
export type NamedRecords = Pick<SeasonRecords, "varieties" | "lots" | "names">;

const maps = new WeakMap<NamedRecords["lots"], ReadonlyMap<string, NamedRecords["lots"][number]>>();

/** Lots by id, made once for a list of them: a thousand items look theirs up. */
function lotsById(lots: NamedRecords["lots"]): ReadonlyMap<string, NamedRecords["lots"][number]> {
  const made = maps.get(lots) ?? new Map(lots.map((lot) => [lot.id, lot]));
  maps.set(lots, made);
  return made;
}

/** What waits, as a grower would say it. */
export function itemWords(item: Waiting, records: NamedRecords): ItemWords {
  const variety = item.varietyId === null ? null : (records.varieties.get(item.varietyId) ?? null);
  const lot = item.lotId === null ? null : (lotsById(records.lots).get(item.lotId) ?? null);
  const mark = variety && { name: variety.name, crop: variety.crop.key, seedCoat: variety.seedCoat };
  const ofLot = lot ? { words: lot.number, href: `/lots/${lot.id}` } : null;
  const ofVariety = variety ? { words: variety.name, href: `/varieties/${variety.id}` } : null;
  const subject = ofLot ?? ofVariety ?? { words: "The registry", href: "/season" };
  const of = lot && variety ? variety.name : null;
  const made = (sentence: string, hand: ItemWords["hand"], key = item.lotId ?? item.varietyId ?? ""): ItemWords => ({
    key: `${item.rule}:${key}`,
    subject,
    variety: mark,
    of,
    sentence: /[.!?]$/.test(sentence) ? sentence : `${sentence}.`,
    hand,
  });
  switch (item.rule) {
    case "germination-below-line": {
      const { test, line, chanceBelow, better } = item.facts;
      const sure =
        chanceBelow >= 0.95
          ? `very likely below ${percent(line, 0)}`
          : `below ${percent(line, 0)} with a chance of ${probability(chanceBelow)}; a larger test would tell`;
      const other = better === null ? "" : `; ${better.number} comes up better, ${percent(better.germination, 0)}`;
      const words = `${kOfN(test.normal, test.sown)} came up, ${percentSpan(test.low, test.high)}, ${dateInWords(test.date)}: ${sure}${other}`;
      return made(words, { words: "Look at the lot", href: `/lots/${item.lotId}` });
    }
    case "past-usual-life": {
      const { years, usual, older } = item.facts;
      const span =
        usual.low === null ? plainNumber(usual.high) : `${plainNumber(usual.low)}–${plainNumber(usual.high)}`;
      const all = older === 0 ? "the only one there is" : `the newest of ${older + 1}`;
      const words = `${plainNumber(years, 0)} years old, ${all}; the seed usually lives ${span} years`;
      return made(words, { words: "Look at the lot", href: `/lots/${item.lotId}` });
    }
    case "failed-grow-out": {
      const { growOut, outcome } = item.facts;
      const year = growOut.sown === null ? "" : `, sown ${dateInWords(growOut.sown)}`;
      const words = `the last grow-out, ${growOut.name}${year}, gave no seed: ${outcome.replace(/^failed[:;,]\s*/, "")}`;
      return made(words, { words: "Plan it again", href: `/grow-outs/new?variety=${item.varietyId}` }, growOut.id);
    }
    case "narrow-grow-out": {
      const { growOut, effectiveSize: size, floor } = item.facts;
      const year = growOut.sown === null ? "" : `, sown ${dateInWords(growOut.sown)},`;
      const words = `the last grow-out, ${growOut.name}${year} counts as ${effectiveSize(size)} plants; the floor is ${floor}`;
      return made(words, { words: "Look at the grow-out", href: `/grow-outs/${growOut.id}` }, growOut.id);
    }
    case "plants-to-choose": {
      const { growOut, scored } = item.facts;
      const words = `${counted(scored, "plant")} of ${growOut.name} are scored, and none is marked keep yet`;
      return made(words, { words: "Choose what to keep", href: `/grow-outs/${growOut.id}/choose` }, growOut.id);
    }
    case "count-day-come": {
      const { test, due, last, daysLate } = item.facts;
      const which = last ? "the last count was due" : "the first look was due";
      const late = daysLate === 0 ? "today" : `${dayInWords(due)}, ${counted(daysLate, "day")} ago`;
      const words = `test ${test.name}, laid out ${dateInWords(test.on)}: ${which} ${late}`;
      return made(words, { words: "Count it", href: `/tests/${test.id}#count` }, test.id);
    }
    case "test-overdue": {
      const { yearsSince, everyYears, pastLife } = item.facts;
      const every = `${pastLife ? "past its usual life it wants one" : "it wants one"} every ${everyYears === 1 ? "year" : `${plainNumber(everyYears, 1)} years`}`;
      const words =
        yearsSince === null ? "never tested" : `last tested ${plainNumber(yearsSince, 1)} years ago; ${every}`;
      const unknown = lot?.gramsOnHand === null ? "; how much is left is unknown" : "";
      return made(`${words}${unknown}`, { words: "Write a test down", href: `/tests/new?lot=${item.lotId}` });
    }
    case "standing-apart": {
      const { status, reason } = item.facts;
      const words = `${status === "hold" ? "on hold" : "in quarantine"}${reason ? `: ${reason}` : "; nobody wrote why"}`;
      return made(words, { words: "Let it go on", href: `/lots/${item.lotId}/status` });
    }
    case "quarantine-long": {
      const { since, reason } = item.facts;
      const words = `in quarantine since ${dayInWords(since)}${reason ? `: ${reason}` : ""}; two seasons are past`;
      return made(words, { words: "Compare and decide", href: `/lots/${item.lotId}/status` });
    }
    case "perhaps-one-lot": {
      const { other, donorNumber } = item.facts;
      const words = `has the giver’s number ${donorNumber}, as ${other.number} has in the same hand: perhaps one lot that was entered twice`;
      const look = {
        words: "One lot or two?",
        href: `/lots/${item.lotId}/same?other=${encodeURIComponent(other.number)}`,
      };
      return made(words, look, `${item.lotId}:${other.id}`);
    }
    case "promise-overdue": {
      const { promise, name, daysLate } = item.facts;
      const words = `${name ?? "somebody"} promised: “${promise.words}”, due ${dateInWords(promise.due ?? "")}, ${counted(daysLate, "day")} ago`;
      return made(words, { words: "Kept, or let go", href: `/sharing#promise-${promise.id}` }, promise.id);
    }
    case "reply-due": {
      const { transfer, name, daysLate } = item.facts;
      const words = `${name ?? "somebody"} got seed of it ${dateInWords(transfer.on)}; an answer was due ${dateInWords(transfer.replyDue ?? "")}, ${counted(daysLate, "day")} ago`;
      return made(words, { words: "Write the answer down", href: `/sharing/${transfer.id}#answer` }, transfer.id);
    }
    case "balance-unknown": {
      const year = item.facts.year === null ? "year unknown" : dateInWords(item.facts.year);
      return made(`${year}; nothing was ever written of how much there is`, {
        words: "Weigh it in",
        href: `/lots/${item.lotId}/ledger/new`,
      });
    }
    case "one-place-only": {
      const { places, notConfirmed } = item.facts;
      const others =
        notConfirmed === 0 ? "" : `; ${counted(notConfirmed, "holder")} more, of whom nothing sure is known`;
      const words = places === 0 ? `no place is certain${others}` : `in one place only${others}`;
      return made(words, { words: "Who has it", href: `/varieties/${item.varietyId}#holders` });
    }
    case "holder-not-confirmed": {
      const { holder, name } = item.facts;
      const heard = holder.last === null ? "nothing was ever heard" : `last heard ${dayInWords(holder.last.day)}`;
      const has = holder.lots.length === 0 ? "no lot on record" : counted(holder.lots.length, "lot");
      const words = `${name ?? "a steward"} has ${has}; ${heard}`;
      const href = `/varieties/${item.varietyId}/add/word?steward=${holder.stewardId}`;
      return made(words, { words: "Write their word down", href }, `${item.varietyId}:${holder.stewardId}`);
    }
    case "open-matter": {
      const { facts } = item;
      if (facts.kind === "field") {
        const way = { words: "Settle it", href: `/field/came-home?growOut=${facts.growOutId}` };
        return made(facts.sentence, way, facts.id);
      }
      const href = facts.testId
        ? `/tests/${facts.testId}`
        : facts.growOutId
          ? `/grow-outs/${facts.growOutId}`
          : subject.href;
      const words = `${facts.kind === "warning" ? "warning: " : ""}${facts.sentence}`;
      return made(words, { words: "Look into it", href }, facts.id);
    }
  }
}
