// How far the imports of this process have come, by upload; asked for by the page that waits.
const written = new Map<string, number>();

export function importWrote(upload: string, records: number): void {
  written.set(upload, records);
}

export function importEnded(upload: string): void {
  written.delete(upload);
}

/** Records written so far; 0 where nothing is under way. */
export function importProgress(upload: string): number {
  return written.get(upload) ?? 0;
}
