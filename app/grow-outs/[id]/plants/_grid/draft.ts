import { type Edits, type GridRow, readEdits } from "@/components/grid";

/** What is kept on the device until it is stored. */
export interface PlantsDraft {
  readonly edits: Edits;
  readonly on: string;
  readonly steward: string;
  /** shared traits that were brought in */
  readonly traits: readonly string[];
}

export function readPlantsDraft(stored: unknown): PlantsDraft | null {
  if (typeof stored !== "object" || stored === null) return null;
  const { edits: kept, on, steward, traits } = stored as Partial<Record<keyof PlantsDraft, unknown>>;
  const edits = readEdits(kept);
  if (!edits || typeof on !== "string" || typeof steward !== "string" || !Array.isArray(traits)) return null;
  return { edits, on, steward, traits: traits.filter((trait) => typeof trait === "string") };
}

/** Edits of plants that are there or were added; what is typed of a plant that is gone is counted. */
export function editsThatFit(edits: Edits, rows: readonly GridRow[]): { edits: Edits; gone: number } {
  const known = new Set([...rows.map((row) => row.key), ...edits.added]);
  const entries = Object.entries(edits.cells);
  const fitting = entries.filter(([row]) => known.has(row));
  return { edits: { ...edits, cells: Object.fromEntries(fitting) }, gone: entries.length - fitting.length };
}
