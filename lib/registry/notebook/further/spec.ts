import type { Client, Transaction } from "@/lib/db";
import type { Refusal } from "@/lib/science/outcome";
import type { TableName } from "../../change-set/records";
import type { Fields } from "./cells";
import type { NameBook } from "./names";

/** A record as it is stored. */
export type Stored = { id: string } & Record<string, unknown>;

/** How a field of a record stands in a cell. */
export type CellKind =
  | { readonly as: "text" }
  | { readonly as: "number" }
  | { readonly as: "count" }
  | { readonly as: "yes-no" }
  /** a date whose first and last day stand in `fieldFirst` and `fieldLast` */
  | { readonly as: "date" }
  /** a date as text alone */
  | { readonly as: "day" }
  | { readonly as: "one-of"; readonly words: readonly string[] }
  /** the id of another record, by its name */
  | { readonly as: "name-of"; readonly of: Named }
  /**
   * the id of a record that is known by several cells of the row together, this one the last of them; with `cells` those are its cells, and
   * where this one is empty no record is meant, whatever the others say of the row
   */
  | { readonly as: "joined"; readonly of: Joined; readonly cells?: readonly string[] }
  /** the hash of a stored picture, by the path of its file in the folder */
  | { readonly as: "photo" }
  /** one of the cells before it that belong to such a name */
  | { readonly as: "part"; readonly of: Joined };

/** Records that have a name in the folder. */
export type Named =
  | "steward"
  | "variety"
  | "lot"
  | "grow-out"
  | "test"
  | "crop"
  | "place"
  | "plot"
  | "strain"
  | "transfer"
  | "harvest"
  | "story";

/** Records that are known by several cells together, and those cells: two grow-outs may each have a plant 12. */
export const joinedParts = {
  plant: ["grow_out", "plant"],
  trait: ["trait", "trait_variety", "trait_crop", "trait_version"],
  neighbour: ["grow_out", "neighbour_plot", "neighbour", "neighbour_number"],
} as const;
export type Joined = keyof typeof joinedParts;

export interface FurtherColumn {
  readonly column: string;
  readonly field: string;
  readonly needed: boolean;
  readonly kind: CellKind;
  /** what an empty cell of a new line is stored as, where the record always has something there */
  readonly unsaid?: string;
}

/** One further file of the folder: a kind of record that the seven files do not hold. */
export interface FurtherSpec {
  readonly file: string;
  readonly table: TableName;
  /** what one row is called in a sentence */
  readonly noun: string;
  /**
   * lines: a record known by all its cells and how often they stand;
   * keyed: known by its first columns, a later folder changes it;
   * details: further fields of a record of the seven files, known by the first column
   */
  readonly identity:
    | { readonly by: "lines" }
    | { readonly by: "keyed"; readonly columns: number }
    | { readonly by: "details" };
  readonly columns: readonly FurtherColumn[];
  /** how many of the first columns may stand together in one line alone, where the whole line is what the record is known by */
  readonly once?: number;
  /** rows of the table that belong into this file */
  readonly where?: Readonly<Record<string, unknown>>;
  /** fields that a new record takes besides its cells */
  readonly fixed?: (cells: Readonly<Record<string, unknown>>, names: NameBook) => Readonly<Record<string, unknown>>;
  /** what is wrong with a row as a whole, each of its cells being right; the path is the column */
  readonly refuses?: (fields: Fields) => Refusal | null;
  /** true where a record may be replaced by a later one or taken back: only what stands goes out */
  readonly events?: true;
  /** true where its records must stand before the plants and their scores do */
  readonly beforePlants?: true;
  /**
   * of a file whose records lines of other files make, too: its rows stand by so many of its first cells, and then by entry, since the order of entry is
   * another once the folder came back
   */
  readonly inOrderOf?: number;
  /** which of the table's records belong into this file, where a condition on the record alone does not tell */
  readonly chosen?: (db: Client | Transaction) => Promise<(record: Stored) => boolean>;
  /** records that stand already and only get what a new row says besides: by the row's place, the id */
  readonly completes?: (tx: Transaction, rows: readonly Fields[]) => Promise<ReadonlyMap<number, string>>;
  /** fields of such a record of which the row says that nobody knows them, whatever the seven files put there */
  readonly clears?: readonly string[];
}

type Options = { readonly needed?: boolean; readonly field?: string; readonly unsaid?: string };

const column =
  (kind: CellKind) =>
  (name: string, options: Options = {}): FurtherColumn => ({
    column: name,
    field: options.field ?? camel(name),
    needed: options.needed ?? false,
    kind,
    ...(options.unsaid === undefined ? {} : { unsaid: options.unsaid }),
  });

function camel(name: string): string {
  return name.replace(/_([a-z0-9])/g, (_whole, letter: string) => letter.toUpperCase());
}

export const text = column({ as: "text" });
export const number = column({ as: "number" });
export const count = column({ as: "count" });
export const yesNo = column({ as: "yes-no" });
export const date = column({ as: "date" });
export const day = column({ as: "day" });
export const photoFile = column({ as: "photo" });
export const oneOf = (name: string, words: readonly string[], options: Options = {}) =>
  column({ as: "one-of", words })(name, options);
export const nameOf = (of: Named, options: Options & { column?: string } = {}): FurtherColumn => {
  const name = options.column ?? of.replace("-", "_");
  return column({ as: "name-of", of })(name, { field: `${camel(name)}Id`, ...options });
};
/** The cells that name a record together; the field takes its id. */
export const joined = (of: Joined, options: Options = {}): FurtherColumn[] =>
  joinedParts[of].map((name, place, all) => ({
    ...column({ as: place === all.length - 1 ? "joined" : "part", of })(name, { field: options.field ?? `${of}Id` }),
    needed: (options.needed ?? false) && !name.startsWith(`${of}_`),
  }));
/** One more record of such a kind in a row whose first cell stands already: a plant of the row's grow-out. */
export const another = (of: Joined, name: string, field: string, options: Omit<Options, "field"> = {}): FurtherColumn =>
  column({ as: "joined", of, cells: [...joinedParts[of].slice(0, -1), name] })(name, { field, ...options });
