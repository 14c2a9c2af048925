import { type Cell, csvText } from "./csv-text";
import { type ColumnOf, type FolderFile, folderFiles } from "./files";

export type Line<File extends FolderFile> = Readonly<Partial<Record<ColumnOf<File>, Cell>>>;

/**
 * What the folder cannot say of a lot without the label code that the registry makes: the columns of lot_details.csv, code aside.
 */
export interface LotDetail {
  readonly lot: string;
  readonly year_words?: string;
  readonly founder_lines?: "one" | "many";
  readonly origin?: string;
  readonly status?:
    | "quarantine"
    | "usable"
    | "share freely"
    | "circle only"
    | "closed"
    | "hold"
    | "not for seed"
    | "finished"
    | "discarded";
  readonly status_reason?: string;
  readonly treatment?: "none" | "hot water" | "chemical" | "unknown";
  readonly original_sample?: "yes" | "no";
  readonly isolation_grade?: "controlled" | "isolated" | "partly" | "open" | "unknown";
  readonly isolation_reasons?: string;
  readonly how_sure?: string;
}

/** The folder while it is being written: lines in the order in which they are told. */
export class Book {
  readonly #lines = new Map<FolderFile, Readonly<Record<string, Cell>>[]>();

  write<File extends FolderFile>(file: File, line: Line<File>): void {
    const lines = this.#lines.get(file) ?? [];
    this.#lines.set(file, lines);
    lines.push(line as Readonly<Record<string, Cell>>);
  }

  /** File name to CSV text, in the order of the file list; a file without a line is left out. */
  texts(): ReadonlyMap<string, string> {
    const texts = new Map<string, string>();
    for (const file of Object.keys(folderFiles) as FolderFile[]) {
      const lines = this.#lines.get(file);
      if (lines) texts.set(file, csvText(folderFiles[file], lines));
    }
    return texts;
  }
}
