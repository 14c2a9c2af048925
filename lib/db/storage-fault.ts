/** What the disk or another program did to the registry's file. */
export type StorageFaultKind = "disk-full" | "not-writable" | "held-by-another" | "damaged" | "disk-fault";

/** A fault of the place where the registry is kept, not of what was entered; the message says what to do. */
export class StorageFault extends Error {
  constructor(
    readonly kind: StorageFaultKind,
    readonly place: string,
    cause?: unknown,
  ) {
    super(sentences[kind](place), { cause });
  }
}

const sentences: Readonly<Record<StorageFaultKind, (place: string) => string>> = {
  "disk-full": (place) =>
    `The disk that holds ${place} is full, so nothing of this was written; what was stored before stands. Free some space there and do it again.`,
  "not-writable": (place) =>
    `${place} may only be read, so nothing was written. Give yourself the right to write there, or name another folder in KINROW_DATA.`,
  "held-by-another": (place) =>
    `Another program holds ${place} and did not let go in time, so nothing was written. End that program, or wait a moment, and do it again.`,
  damaged: (place) =>
    `${place} is damaged and cannot be read as a registry. Leave it as it is, and bring the newest backup back: npm run restore -- newest.`,
  "disk-fault": (place) =>
    `The disk that holds ${place} did not take or give what was asked of it, so nothing of this was written. Look after the disk; then run npm run verify.`,
};

// The driver's codes, the system's codes, and the driver's own words where it is wrapped and gives no code.
const marks: readonly [StorageFaultKind, RegExp][] = [
  ["disk-full", /\bSQLITE_FULL\b|\bENOSPC\b|\bEDQUOT\b|database or disk is full/],
  [
    "not-writable",
    /\bSQLITE_READONLY|\bEROFS\b|\bEACCES\b|\bEPERM\b|readonly database|\bSQLITE_CANTOPEN|unable to open database/,
  ],
  ["held-by-another", /\bSQLITE_BUSY|\bSQLITE_LOCKED|database (table )?is locked|\bP1008\b/],
  ["damaged", /\bSQLITE_CORRUPT|\bSQLITE_NOTADB|is malformed|is not a database/],
  ["disk-fault", /\bSQLITE_IOERR|\bEIO\b|\bEFBIG\b|disk I\/O error/],
];

/** The fault of storage that an error tells of, however deep it is wrapped; null where it is something else. */
export function storageFaultOf(error: unknown, place: string): StorageFault | null {
  if (error instanceof StorageFault) return error;
  const told = toldBy(error, 0).join("\n");
  const found = marks.find(([, mark]) => mark.test(told));
  return found ? new StorageFault(found[0], place, error) : null;
}

/** An error's codes and words, with those of its causes. */
function toldBy(error: unknown, depth: number): string[] {
  if (typeof error === "string") return [error];
  if (typeof error !== "object" || error === null || depth > 5) return [];
  const { code, message, originalCode, originalMessage, cause, meta } = error as Record<string, unknown>;
  const own = [code, originalCode, message, originalMessage].filter((each) => typeof each === "string");
  const deeper = [cause, meta, (meta as Record<string, unknown> | undefined)?.driverAdapterError];
  return [...own, ...deeper.flatMap((each) => toldBy(each, depth + 1))];
}
