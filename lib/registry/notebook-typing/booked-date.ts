import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { parseDate } from "@/lib/science/dates/parse-date";
import type { Path, Refusal } from "@/lib/science/outcome";

export interface StoredDate {
  readonly text: string;
  readonly first: string;
  readonly last: string;
}

/** Reads the dates of a booking, and keeps what cannot be read. */
export class DateReader {
  readonly refusals: Refusal[] = [];

  constructor(private readonly hemisphere: Hemisphere) {}

  /** A date with its first and last possible day; null where none was told. */
  read(text: string | null, path: Path): StoredDate | null {
    if (text === null || text === "") return null;
    const date = parseDate(text, { hemisphere: this.hemisphere, path });
    if (date.ok) return { text: date.value.text, first: date.value.first, last: date.value.last };
    this.refusals.push(...date.refusals);
    return null;
  }
}
