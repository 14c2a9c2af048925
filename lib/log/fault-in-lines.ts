/** What is kept of an error: what kind it is and where it arose, never its message, which can quote what somebody wrote. */
export interface FaultTold {
  /** the name of its class */
  readonly kind: string;
  /** such as ENOSPC or P2002, where it has one */
  readonly code?: string;
  /** the mark that the page showed to whoever met it */
  readonly mark?: string;
  /** where it arose, innermost first; paths from the program's folder */
  readonly at: readonly string[];
  /** what it came of */
  readonly cause?: FaultTold;
}

const mostFrames = 12;
const mostCauses = 4;

/** An error as the log may hold it. `folder` is the program's own, which can have a person's name in it. */
export function faultInLines(error: unknown, folder: string, depth = 0): FaultTold {
  if (!(error instanceof Error)) return { kind: typeof error, at: [] };
  const code = wordOf(Reflect.get(error, "code"));
  const mark = wordOf(Reflect.get(error, "digest"));
  return {
    kind: wordOf(error.name) ?? "Error",
    ...(code === null ? {} : { code }),
    ...(mark === null ? {} : { mark }),
    at: framesOf(error, folder),
    ...(error.cause === undefined || depth === mostCauses
      ? {}
      : { cause: faultInLines(error.cause, folder, depth + 1) }),
  };
}

/** A code or a class is one short word; anything else may be a message in disguise. */
function wordOf(given: unknown): string | null {
  return typeof given === "string" && /^[A-Za-z0-9_@:-]{1,60}$/.test(given) ? given : null;
}

function framesOf(error: Error, folder: string): string[] {
  const stack = error.stack ?? "";
  // The message stands before the frames and may itself have lines that look like some.
  const after = error.message === "" ? 0 : stack.lastIndexOf(error.message) + error.message.length;
  if (error.message !== "" && !stack.includes(error.message)) return [];
  return stack
    .slice(after)
    .split("\n")
    .filter((line) => /^\s+at .+:\d+:\d+\)?$/.test(line))
    .slice(0, mostFrames)
    .map((line) => line.trim().replaceAll(`file://${folder}`, "").replaceAll(folder, "").replaceAll(homeFolder, "~"));
}

const homeFolder = /(?:\/home|\/Users|[A-Z]:\\Users)[\\/][^\\/:]+/g;
