/** The most bytes that an archive may have: 64 MiB. */
export const LARGEST_ARCHIVE = 64 * 1024 * 1024;
/** The most bytes that may come out of one: 256 MiB. What promises more is not opened. */
export const LARGEST_CONTENT = 256 * 1024 * 1024;
/** The most files that may lie in one. */
export const MOST_FILES = 20_000;

/** The most rows that the tables of one upload may have: a page looks through them while others wait. */
export const MOST_ROWS = 200_000;

export interface ArchiveLimits {
  readonly archiveBytes: number;
  readonly contentBytes: number;
  readonly files: number;
  readonly rows: number;
}

export const archiveLimits: ArchiveLimits = {
  archiveBytes: LARGEST_ARCHIVE,
  contentBytes: LARGEST_CONTENT,
  files: MOST_FILES,
  rows: MOST_ROWS,
};
