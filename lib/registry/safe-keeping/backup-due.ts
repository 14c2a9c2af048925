const hour = 3_600_000;

/** A day, less half an hour, so that it stays at its time of day although it is looked for only now and then. */
const between = 23.5 * hour;

/** After a failure it is tried again when this has passed. */
const again = hour;

/** When the next backup is due. */
export interface BackupDue {
  readonly now: boolean;
  /** the moment, UTC as ISO text; not before `now` */
  readonly at: string;
}

/**
 * A backup is due a day after the newest, at once where there is none, and an hour after one that failed. Backups and failures that are dated later
 * than `now` are passed over, so that a clock that was set back neither stops backups for years nor makes one after the other.
 *
 * @param made when backups were begun, UTC as ISO text
 * @param failedAt when the last one that came to nothing was begun
 */
export function backupDue(made: readonly string[], failedAt: string | null, now: string): BackupDue {
  const moment = Date.parse(now);
  const past = made.map((at) => Date.parse(at)).filter((at) => at <= moment);
  const newest = past.length === 0 ? null : Math.max(...past);
  const failed = failedAt === null ? null : Date.parse(failedAt);
  const regular = newest === null ? moment : newest + between;
  // A failure older than the newest backup was made good since.
  const waiting =
    failed !== null && failed <= moment && (newest === null || failed > newest) ? failed + again : regular;
  const due = Math.max(regular, waiting);
  return { now: due <= moment, at: new Date(Math.max(due, moment)).toISOString() };
}
