import type { Column } from "@/components/tables";
import { readLot } from "@/lib/registry/lots/read-lot";
import { current } from "../../../../_session/current";
import { rowsAsCsv } from "../../../../varieties/csv/rows-as-csv";

const columns: readonly Column[] = [
  { key: "code", name: "Container", kind: "words" },
  { key: "kind", name: "Kind", kind: "words" },
  { key: "place", name: "Place", kind: "words" },
  { key: "building", name: "Building", kind: "words" },
  { key: "warmth", name: "Warmth", kind: "count" },
  { key: "humidity", name: "Air humidity", kind: "count" },
  { key: "amount", name: "Holds", kind: "count" },
  { key: "unit", name: "Unit", kind: "words" },
  { key: "sealed", name: "Sealed", kind: "words" },
  { key: "opened", name: "Last opened", kind: "words" },
  { key: "desiccant", name: "Desiccant", kind: "words" },
  { key: "note", name: "Note", kind: "words" },
];

/** In what a lot is kept, and where, as CSV; an empty cell is not known. */
export async function GET(request: Request, { params }: { params: Promise<{ id: string }> }): Promise<Response> {
  const { db, settings, today } = await current();
  const read = await readLot(db, (await params).id, { settings, today });
  if (!read) return new Response("There is no such lot.", { status: 404 });
  const rows = read.containers.map((container) => ({
    id: container.containerId,
    cells: {
      code: container.code,
      kind: container.kind,
      place: container.place,
      building: container.building,
      warmth: container.temperatureC,
      humidity: container.relativeHumidityPercent,
      amount: container.amount,
      unit: container.unit,
      sealed: container.sealedOn,
      opened: container.lastOpened,
      desiccant: container.desiccant,
      note: container.note,
    },
  }));
  return rowsAsCsv(request, "containers", columns, rows, { warmth: "celsius", humidity: "percent" });
}
