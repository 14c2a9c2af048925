import type { PlantToChoose } from "@/lib/schemas/plants/choice-ground";

export interface PlacedPlant {
  readonly plant: PlantToChoose;
  readonly column: number;
  readonly row: number;
}

export interface PlacesInCell {
  readonly columns: number;
  readonly rows: number;
  readonly placed: readonly PlacedPlant[];
}

const usualColumns = 8;

/**
 * Where the plants of one cell are drawn: by row and position where every one has both written, each row a line and the positions in their order; else in the order of
 * entry, eight a line.
 */
export function placesInCell(plants: readonly PlantToChoose[]): PlacesInCell {
  if (plants.length > 0 && plants.every(({ row, position }) => row !== null && position !== null))
    return byRows(plants);
  const columns = Math.max(1, Math.min(usualColumns, plants.length));
  return {
    columns,
    rows: Math.max(1, Math.ceil(plants.length / columns)),
    placed: plants.map((plant, at) => ({ plant, column: at % columns, row: Math.floor(at / columns) })),
  };
}

function byRows(plants: readonly PlantToChoose[]): PlacesInCell {
  const names = [...new Set(plants.map(({ row }) => row ?? ""))].sort((a, b) =>
    a.localeCompare(b, "en", { numeric: true }),
  );
  const rows = names.map((name) =>
    plants.filter(({ row }) => row === name).sort((a, b) => (a.position ?? 0) - (b.position ?? 0)),
  );
  return {
    columns: Math.max(...rows.map((own) => own.length)),
    rows: rows.length,
    placed: rows.flatMap((own, row) => own.map((plant, column) => ({ plant, column, row }))),
  };
}
