/** The civil day (YYYY-MM-DD) that it is now in a time zone; the server's own where the browser has not said. */
export function civilDayIn(zone: string | undefined, now: Date = new Date()): string {
  const parts = formatter(zone).formatToParts(now);
  const part = (type: string) => parts.find((each) => each.type === type)?.value ?? "";
  return `${part("year").padStart(4, "0")}-${part("month")}-${part("day")}`;
}

/** Minutes that a zone is ahead of UTC now. */
export function offsetMinutesIn(zone: string | undefined, now: Date = new Date()): number {
  const parts = formatter(zone).formatToParts(now);
  const part = (type: string) => Number(parts.find((each) => each.type === type)?.value ?? 0);
  const asUtc = Date.UTC(part("year"), part("month") - 1, part("day"), part("hour") % 24, part("minute"));
  // The parts have no seconds, so those of the moment are left out, too: else half of every minute would be a minute behind.
  return asUtc / 60_000 - Math.floor(now.getTime() / 60_000);
}

// A format is dear to make, and most people sit in one zone.
const formats = new Map<string | undefined, Intl.DateTimeFormat>();
const mostKept = 100;

function formatter(zone: string | undefined): Intl.DateTimeFormat {
  const made = formats.get(zone) ?? formatOf(zone);
  if (formats.size >= mostKept) formats.clear();
  formats.set(zone, made);
  return made;
}

function formatOf(zone: string | undefined): Intl.DateTimeFormat {
  const options: Intl.DateTimeFormatOptions = {
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
  };
  try {
    return new Intl.DateTimeFormat("en-GB", { ...options, timeZone: zone });
  } catch {
    return new Intl.DateTimeFormat("en-GB", options);
  }
}
