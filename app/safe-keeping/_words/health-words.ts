import { civilDayIn } from "@/app/_session/civil-day-in";
import { dayInWords } from "@/lib/display/dates";
import { bytesInWords } from "@/lib/display/numbers";
import { counted, listed } from "@/lib/display/plurals";
import type { Health, HealthConcern } from "@/lib/registry/safe-keeping/health";
import type { KeptAs } from "@/lib/registry/safe-keeping/kept-backups";

/** A moment as the person's clock says it: "today at 03:15", "yesterday at 21:40", "24 November 2026 at 03:15". */
export function momentInWords(at: string, zone: string | undefined, now: Date): string {
  const moment = new Date(at);
  const day = civilDayIn(zone, moment);
  const time = clockIn(zone, moment);
  if (day === civilDayIn(zone, now)) return `today at ${time}`;
  if (day === civilDayIn(zone, new Date(now.getTime() - 86_400_000))) return `yesterday at ${time}`;
  if (day === civilDayIn(zone, new Date(now.getTime() + 86_400_000))) return `tomorrow at ${time}`;
  return `${dayInWords(day)} at ${time}`;
}

function clockIn(zone: string | undefined, moment: Date): string {
  const options: Intl.DateTimeFormatOptions = { hour: "2-digit", minute: "2-digit", hourCycle: "h23" };
  try {
    return new Intl.DateTimeFormat("en-GB", { ...options, timeZone: zone }).format(moment);
  } catch {
    return new Intl.DateTimeFormat("en-GB", options).format(moment);
  }
}

/** Each thing to be done in a sentence or two, the gravest first. */
export function whatToDo(health: Health, zone: string | undefined, now: Date): { id: HealthConcern; words: string }[] {
  return health.concerns.map((id) => ({ id, words: concernWords[id](health, zone, now) }));
}

const concernWords: Readonly<Record<HealthConcern, (health: Health, zone: string | undefined, now: Date) => string>> = {
  "no-answer": () =>
    "The registry does not answer. Read the lines that Kinrow printed where it was started, then run npm run verify.",
  "space-out": (health) =>
    `The disk is full (${spaceOf(health)}): nothing more can be stored. Free some space before you enter anything.`,
  "backup-failed": ({ failure, nextAt }, zone, now) =>
    `The last backup came to nothing, ${failure ? momentInWords(failure.at, zone, now) : "lately"}: ${failure?.sentence ?? ""} It is tried again ${momentInWords(nextAt, zone, now)}.`,
  "faults-found": ({ verified }) =>
    `The last check found ${counted(verified?.faults ?? 0, "fault")}, first: ${verified?.first ?? ""} Keep every backup, and run npm run verify, which names each fault.`,
  "backup-old": ({ newest }, zone, now) =>
    `The last backup was made ${newest ? momentInWords(newest.at, zone, now) : ""}. Leave Kinrow running, or make one now.`,
  "no-backup-yet": () => "There is no backup yet. The first is made a minute after the start, or now by the button.",
  "space-low": (health) => `Space is getting low: ${spaceOf(health)}. Free some before it runs out.`,
  "database-apart": () =>
    "The database is kept by a PostgreSQL server: see that its own dump (pg_dump) is made every day, too. The backups here hold the plain files and the photos.",
  "one-disk": () =>
    "Backups lie on the same disk as the registry, and one disk is no backup. Name a folder on another disk in KINROW_BACKUPS, or copy the newest backup to another disk now and then.",
};

/** How much may still be written. */
export function spaceOf({ freeForData, freeForBackups }: Health): string {
  if (freeForData === null) return "how much is free is not known";
  const data = `${bytesInWords(freeForData)} free`;
  return freeForBackups === null || freeForBackups === freeForData
    ? data
    : `${data} for the registry, ${bytesInWords(freeForBackups)} for backups`;
}

const keptWords: Readonly<Record<KeptAs, string>> = {
  day: "one of the last seven days",
  month: "its month",
  year: "its year",
  "by hand": "made by hand",
  unsound: "looked at by nobody yet",
  "dated ahead": "dated ahead of the clock",
};

/** Why a backup stays: "for its month and its year". */
export function keptInWords(keptAs: readonly KeptAs[]): string {
  return keptAs.length === 0 ? "goes after the next one" : listed(keptAs.map((each) => keptWords[each]));
}
