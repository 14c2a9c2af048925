import { expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { emptyRegistry, granted } from "@/tests/setup/registry";

const files = (texts: Readonly<Record<string, string>>) =>
  new Map(Object.entries(texts).map(([name, text]) => [name, new TextEncoder().encode(text)]));

// What a spreadsheet is known to turn into numbers, dates or powers of ten.
const names = ["007", "3-4", "1E5", "MAR1", "2/3", "1.10", "TRUE", "-5", "=Grey", "@Tarn"];

it("names that look like numbers, dates or formulas go in and out as they were written", async () => {
  const db = await emptyRegistry();
  const lots = names.map((name, at) => `${name},MAR1,${at % 2 ? "3-4" : "007"},founder,${name} note`).join("\r\n");
  const folder = {
    "stewards.csv": "steward\r\n007\r\n3-4\r\n",
    "varieties.csv": "variety,crop\r\nMAR1,pea\r\n",
    "lots.csv": `lot,variety,holder,kind,notes\r\n${lots}\r\n`,
  };
  granted(await importFolder(db, ownerHere(), files(folder)));
  const stored = await db.read.lot.findMany({ orderBy: { id: "asc" } });
  expect(stored.map((lot) => lot.number)).toEqual(names);
  const out = new TextDecoder().decode((await exportFolder(db)).get("lots.csv"));
  const first = out
    .split("\r\n")
    .slice(1, -1)
    .map((row) => row.split(",")[0]);
  expect(first).toEqual(names);
});
