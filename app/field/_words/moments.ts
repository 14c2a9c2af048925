const hourMinute = new Intl.DateTimeFormat("en-GB", { hour: "numeric", minute: "2-digit" });
const dayMonth = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short" });

/** An instant by the phone's clock: "8:10" today, "24 Nov, 8:10" on another day. */
export function momentInWords(instant: string, now: number): string {
  const at = new Date(instant);
  const time = hourMinute.format(at);
  return at.toDateString() === new Date(now).toDateString() ? time : `${dayMonth.format(at)}, ${time}`;
}

/** Whole days that have gone since an instant. */
export function daysSince(instant: string, now: number): number {
  return Math.max(0, Math.floor((now - Date.parse(instant)) / 86_400_000));
}

/** How far a clock is out, in whole minutes or hours: "58 minutes", "2 hours", "3 days". */
export function spanInWords(milliseconds: number): string {
  const minutes = Math.round(Math.abs(milliseconds) / 60_000);
  if (minutes < 120) return minutes === 1 ? "1 minute" : `${minutes} minutes`;
  const hours = Math.round(minutes / 60);
  return hours < 48 ? `${hours} hours` : `${Math.round(hours / 24)} days`;
}
