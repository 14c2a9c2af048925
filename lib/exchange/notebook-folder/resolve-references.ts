import type { LotShare, LotSource } from "@/lib/schemas/notebook/kinds";
import { type Refusal, refusal } from "@/lib/science/outcome";
import type { DraftNotebook, DraftRow, DraftRowOf } from "./draft";
import type { NamedEntries, NamedTable } from "./entries";
import type { Findings } from "./finding";
import { readLotShares } from "./lot-shares";
import type { UnknownName } from "./unknown-names";

/**
 * Reads every cell that names another record, and writes the name as its bearer does. A cell that names nothing is
 * marked faulty; the names are handed back, to be reported together.
 */
export function resolveReferences(drafts: DraftNotebook, entries: NamedEntries, findings: Findings): UnknownName[] {
  const references = new References(entries, findings);
  for (const row of drafts.growOuts.rows) {
    references.name(row, "varieties", "variety");
    references.name(row, "stewards", "steward");
    references.parents(row);
  }
  for (const row of drafts.lots.rows) {
    references.name(row, "varieties", "variety");
    references.name(row, "stewards", "holder");
    references.source(row);
  }
  for (const row of drafts.plants.rows) references.name(row, "growOuts", "grow_out");
  for (const row of drafts.tests.rows) references.name(row, "lots", "lot");
  for (const row of drafts.ledger.rows) references.name(row, "lots", "lot");
  return references.unknown;
}

class References {
  readonly unknown: UnknownName[] = [];

  constructor(
    private readonly entries: NamedEntries,
    private readonly findings: Findings,
  ) {}

  /** A cell that holds one name. */
  name<Column extends string, Cells extends { [Name in Column]: string | null }>(
    row: DraftRow<Cells>,
    table: NamedTable,
    column: Column & keyof Cells,
  ): void {
    const name: string | null = row.cells[column];
    if (name === null) return;
    const spelled = this.entries[table].spelled(name);
    if (spelled === undefined) this.#missed(row, table, column, name);
    else (row.cells as Record<string, unknown>)[column] = spelled;
  }

  parents(row: DraftRowOf<"growOuts">): void {
    const text = row.written("parents");
    if (text.trim() !== "" && !row.faulty.has("parents")) row.cells.parents = this.#lots(row, "parents", text);
  }

  source(row: DraftRowOf<"lots">): void {
    const text = row.written("from");
    const kind = row.cells.kind;
    if (row.faulty.has("from")) return;
    if (kind === null) row.faulty.add("from");
    else if (kind === "founder") {
      if (text.trim() !== "") this.#fault(row, "from", founderFrom(text));
    } else if (text.trim() === "") this.#fault(row, "from", sourceMissing(kind));
    else row.cells.from = this.#sourceOf(row, kind, text);
  }

  #sourceOf(row: DraftRowOf<"lots">, kind: "harvest" | "blend" | "split", text: string): LotSource | null {
    if (kind === "blend") {
      const lots = this.#lots(row, "from", text);
      return lots === null ? null : { lots };
    }
    const name = text.normalize("NFC").replace(/\s+/g, " ").trim();
    const table = kind === "harvest" ? "growOuts" : "lots";
    const spelled = this.entries[table].spelled(name);
    if (spelled === undefined) this.#missed(row, table, "from", name);
    else return kind === "harvest" ? { growOut: spelled } : { lots: [{ lot: spelled, share: 1 }] };
    return null;
  }

  #lots<Cells extends { variety: string | null }>(
    row: DraftRow<Cells>,
    column: string,
    text: string,
  ): readonly LotShare[] | null {
    const { lots, unknown, faults } = readLotShares(text, (name) => this.entries.lots.has(name));
    for (const fault of faults) this.#fault(row, column, fault);
    for (const name of unknown) this.#missed(row, "lots", column, name);
    if (row.faulty.has(column)) return null;
    return lots.map(({ lot, share }) => ({ lot: this.entries.lots.spelled(lot) ?? lot, share }));
  }

  #missed<Cells extends object>(row: DraftRow<Cells>, table: NamedTable, column: string, name: string): void {
    row.faulty.add(column);
    const variety = "variety" in row.cells && typeof row.cells.variety === "string" ? row.cells.variety : null;
    this.unknown.push({ table, name, spot: { ...row.origin, column }, variety });
  }

  #fault<Cells>(row: DraftRow<Cells>, column: string, fault: Refusal): void {
    row.faulty.add(column);
    this.findings.fault({ ...row.origin, column }, fault);
  }
}

function founderFrom(text: string): Refusal {
  const needed = "leave it empty, or say harvest, blend or split where its parents are on record";
  return refusal("founder-with-source", [], text, "cannot stand for a founder lot", needed);
}

function sourceMissing(kind: "harvest" | "blend" | "split"): Refusal {
  const needed = {
    harvest: "write the grow-out that it was harvested from",
    blend: "write the lots that were mixed, as lot:share;lot:share",
    split: "write the lot that it is part of",
  }[kind];
  return refusal("source-missing", [], "", `stands for where a ${kind} came from`, needed);
}
