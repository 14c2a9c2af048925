/** A backup as far as keeping it is decided by. */
export interface DatedBackup {
  readonly name: string;
  /** when it was begun, UTC as ISO text */
  readonly at: string;
  readonly sound: boolean;
  readonly byHand: boolean;
}

/** Why a backup is kept. */
export type KeptAs = "day" | "month" | "year" | "by hand" | "unsound" | "dated ahead";

export const keptDays = 7;
export const keptMonths = 12;
export const keptByHand = 7;
export const keptUnsound = 7;

/**
 * Which backups stay, with the reasons; one that is not in the answer may go. The newest of each of the last 7 days that have one, of each of the last 12
 * months that have one, and of every year; days, months and years are those of UTC. The last 7 made by hand stay besides. Days without a
 * backup do not count, so a machine that was off for a month loses nothing.
 *
 * A backup dated later than `now` is never let go and takes no other's place: a clock was or is wrong. An unsound one takes no sound one's
 * place; the last 7 stay for as long as no sound one is newer.
 *
 * @param now the moment, UTC as ISO text
 */
export function keptBackups(backups: readonly DatedBackup[], now: string): Map<string, KeptAs[]> {
  const kept = new Map<string, KeptAs[]>();
  const keep = (backup: DatedBackup, as: KeptAs) => kept.set(backup.name, [...(kept.get(backup.name) ?? []), as]);
  const newestFirst = [...backups].sort((a, b) => compareText(b.at, a.at) || compareText(b.name, a.name));
  for (const backup of newestFirst.filter((each) => each.at > now)) keep(backup, "dated ahead");
  const past = newestFirst.filter((each) => each.at <= now);
  const sound = past.filter((each) => each.sound);
  for (const backup of newestOfEach(sound, 10, keptDays)) keep(backup, "day");
  for (const backup of newestOfEach(sound, 7, keptMonths)) keep(backup, "month");
  for (const backup of newestOfEach(sound, 4, Number.POSITIVE_INFINITY)) keep(backup, "year");
  for (const backup of sound.filter((each) => each.byHand).slice(0, keptByHand)) keep(backup, "by hand");
  const newestSound = sound[0]?.at ?? "";
  const unsound = past.filter((each) => !each.sound && each.at >= newestSound);
  for (const backup of unsound.slice(0, keptUnsound)) keep(backup, "unsound");
  return kept;
}

/** The newest of each span of time (the first `digits` of the moment: 10 a day, 7 a month, 4 a year), of the last so many that have one. */
function newestOfEach(newestFirst: readonly DatedBackup[], digits: number, most: number): DatedBackup[] {
  const spans = new Map<string, DatedBackup>();
  for (const backup of newestFirst) {
    const span = backup.at.slice(0, digits);
    if (!spans.has(span) && spans.size < most) spans.set(span, backup);
  }
  return [...spans.values()];
}

function compareText(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}
