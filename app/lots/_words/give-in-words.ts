import { dateInWords } from "@/lib/display/dates";
import { kOfN, percent } from "@/lib/display/numbers";
import { counted, countedInWords } from "@/lib/display/plurals";
import type { LotRead } from "@/lib/registry/lots/read-lot";
import type { GiveVerdict } from "@/lib/registry/reserve/may-give";
import type { Settings } from "@/lib/schemas/settings";
import { seedsInWords, seedsOfRule } from "./seeds-in-words";

/** The answer to "may I give of it, and how much": the figure and what it means. */
export interface GiveInWords {
  readonly figure: string;
  readonly sentence: string;
  /** whether something waits for a hand before it can be answered */
  readonly waiting: boolean;
}

/** The answer at the head of a lot's page. */
export function giveInWords(read: LotRead, settings: Settings): GiveInWords {
  const { give, lot, reserve } = read;
  const kept = reserve.reserve ? seedsOfRule(reserve.reserve.seeds) : "the reserve";
  const over = reserve.good.length > 1 ? ` They lie in ${countedInWords(reserve.good.length, "lot")} together.` : "";
  switch (give.why) {
    case "above the reserve":
      return say(
        freeInWords(give.free),
        `may be given away; ${kept} are kept back.${over}${whatToSay(give.onlyPlace, lot)}`,
      );
    case "status":
      return say("Nothing", `may be given: ${statusInWords(lot.status, lot.statusReason)}.`);
    case "warning":
      return say("Nothing", "may be given: a warning stands on this lot.", true);
    case "empty":
      return say("Nothing", "is left of it, by its ledger.");
    case "tests too low":
      return say(
        "Nothing",
        `may be given: it tests below ${percent(settings.renewalUrgent, 0)}, where renewing is urgent (setting).`,
        true,
      );
    case "reserve not met":
      return say("Nothing", `may be given: the reserve of ${kept} is not met.`);
    case "reserve may not be met":
      return say(
        give.free === null ? "Unknown" : `At most ${counted(Math.floor(give.free.high), "seed")}`,
        "may be free, perhaps none: count out and weigh 100 seeds, and it can be told.",
        true,
      );
    case "amount not known":
      return say("Unknown", "how much is left: weigh the jar, and it can be told what may be given.", true);
    case "never tested":
      return say("Unknown", `what may be given: ${neverTestedInWords(read)}. Lay out twenty seeds.`, true);
    case "tested too long ago":
      return say(
        "Unknown",
        "what may be given: its last test is older than seed of this crop usually lives. Test it.",
        true,
      );
    case "likely below the line":
      return say(
        "Unknown",
        `what may be given: by its ${isTested(read) ? "tests and its age" : "age"} it is likely below ${percent(settings.renewalPlan, 0)} by now, the line for renewing (setting). Renew it, or test it again.`,
        true,
      );
    case "plants not known":
      return say("Unknown", "what may be given: say how many plants a grow-out of this variety wants.", true);
    case "seeds not known":
      return say("Unknown", "what may be given: count out and weigh 100 seeds, and grams become seeds.", true);
  }
}

/** Whether the lot's own tests speak in the forecast. */
function isTested({ keeping }: LotRead): boolean {
  return !("why" in keeping) && keeping.used.length > 0;
}

/** That nobody tested a lot; of one that was split off, how the seed that it was parted from came up. */
export function neverTestedInWords({ testedBefore }: LotRead): string {
  if (testedBefore === null) return "nobody has tested whether it lives";
  const { number, test } = testedBefore;
  return `it was not tested under this number; of ${number}, from which it was split, ${kOfN(test.normal, test.sown)} came up, ${dateInWords(test.date)}`;
}

function freeInWords(free: GiveVerdict["free"]): string {
  if (free === null) return "Some";
  return free.low === free.high ? seedsInWords(free) : `at least ${counted(Math.floor(free.low), "seed")}`;
}

/** What goes with seed that is given: to whom first, within which bounds, and what must be said with it. */
function whatToSay(onlyPlace: boolean, { status, treatment }: LotRead["lot"]): string {
  const parts = [
    status === "circle only" ? "Within the circle only." : "",
    treatment === "chemical" ? "Say that it is treated." : treatment === "unknown" ? "Say that it may be treated." : "",
    onlyPlace ? "Nobody else is confirmed to have it: a second keeper comes first." : "",
  ].filter(Boolean);
  return parts.length > 0 ? ` ${parts.join(" ")}` : "";
}

function say(figure: string, sentence: string, waiting = false): GiveInWords {
  return { figure, sentence, waiting };
}

const statuses: Readonly<Record<string, string>> = {
  quarantine: "the lot is in quarantine",
  hold: "the lot is on hold",
  closed: "the lot is closed and not to be opened",
  "not for seed": "the lot is not for seed",
  finished: "the lot is finished",
  dead: "the lot is dead",
  discarded: "the lot was discarded",
};

/** How a lot stands, with the reason where one was given. */
export function statusInWords(status: string | null, reason: string | null): string {
  const words = statuses[status ?? ""] ?? `it stands as "${status}"`;
  return reason ? `${words} (${reason})` : words;
}
