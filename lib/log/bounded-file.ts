import { chmodSync, closeSync, fstatSync, mkdirSync, openSync, renameSync, writeSync } from "node:fs";
import path from "node:path";

/** Takes lines in; what the disk will not take is left out, since a log must never stop the work it tells of. */
export interface BoundedFile {
  write(line: string): void;
}

/**
 * A file that only its owner reads and that never grows beyond `mostBytes`: then it is put aside as `NAME.1.log`, the one before that as
 * `NAME.2.log`, and so on; the oldest of `kept` goes.
 */
export function boundedFile(folder: string, name: string, mostBytes = 2_000_000, kept = 4): BoundedFile {
  let open: { readonly file: number; size: number } | null = null;
  const place = (number: number) => path.join(folder, number === 0 ? `${name}.log` : `${name}.${number}.log`);

  function opened(): { readonly file: number; size: number } {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    const file = openSync(place(0), "a", 0o600);
    chmodSync(place(0), 0o600);
    return { file, size: fstatSync(file).size };
  }

  function putAside(file: number): void {
    closeSync(file);
    open = null;
    for (let number = kept; number > 0; number -= 1) {
      try {
        renameSync(place(number - 1), place(number));
      } catch (error) {
        if ((error as NodeJS.ErrnoException).code !== "ENOENT") throw error;
      }
    }
  }

  return {
    write(line) {
      try {
        const bytes = Buffer.byteLength(line);
        open ??= opened();
        if (open.size > 0 && open.size + bytes > mostBytes) {
          putAside(open.file);
          open = opened();
        }
        writeSync(open.file, line);
        open.size += bytes;
      } catch {
        // Tried again with the next line.
      }
    },
  };
}
