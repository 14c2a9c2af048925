import { current } from "@/app/_session/current";
import { rowsAsCsv } from "@/app/varieties/csv/rows-as-csv";
import { metricUnits } from "@/lib/display/units";
import { readGrowOut } from "@/lib/registry/grow-outs/read-grow-out";
import { scoreText } from "@/lib/schemas/traits/read-score";
import { plantColumns, plantRow } from "../../_list/plant-rows";

/** The plants of a grow-out with their scores, as the page's address leaves them; seed in grams. */
export async function GET(request: Request, { params }: { params: Promise<{ id: string }> }): Promise<Response> {
  const { db } = await current();
  const read = await readGrowOut(db, (await params).id);
  if (!read) return new Response("There is no such grow-out.", { status: 404 });
  const { plants, traits, growOut, people } = read;
  const rows = plants.map((plant) => plantRow(plant, traits, metricUnits, people, (_trait, score) => scoreText(score)));
  return rowsAsCsv(
    request,
    `plants-${growOut.name.replace(/[^A-Za-z0-9]+/g, "-")}`,
    plantColumns(plants, traits),
    rows,
    { seed: "g" },
  );
}
