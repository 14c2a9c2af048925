import { ownerHere } from "@/lib/access/actor";
import { manyStems } from "@/lib/cli/bench/stem-chart";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { inRegistry } from "./field-ground";
import type { TestSite } from "./server";

const variety = "Bench Flint";

/** The lots of the bench's stem chart as a notebook folder. */
function folderOfStems(): ReadonlyMap<string, Uint8Array> {
  const tree = manyStems();
  const numbers = new Map(tree.lots.map(({ id, number }) => [id, number]));
  const named = new Map(tree.bands.map(({ key, name }) => [key, name]));
  const from = (parents: (typeof tree.lots)[number]["parents"]) =>
    parents.map(({ id, share }) => `${numbers.get(id)}:${share ?? 1}`).join(";");
  const files = {
    stewards: ["steward", ...named.values()],
    varieties: ["variety,crop", `${variety},maize-field`],
    grow_outs: [
      "grow_out,variety,steward,sown,parents,plants_standing,seed_parents,seed_shares,foreign_pollen,outcome",
    ],
    lots: ["lot,variety,holder,year,kind,from"],
    ledger: ["lot,date,kind,grams"],
  };
  for (const { id, number, kind, at, band, parents, size, foreign, living } of tree.lots) {
    const [keeper, year] = [named.get(band) ?? "", Number(at?.first ?? 1965)];
    if (kind === "harvest" || kind === "failed") {
      const plants = size?.low ?? 12;
      const outcome = kind === "failed" ? "eaten" : "";
      const counts = kind === "failed" ? ",," : `${plants},${plants},equal`;
      files.grow_outs.push(
        `G ${id},${variety},${keeper},${year}-05,${from(parents)},${counts},${foreign?.rate ?? 0},${outcome}`,
      );
    }
    if (kind === "failed") continue;
    const made = kind === "harvest" ? `G ${id}` : kind === "split" ? numbers.get(parents[0]?.id ?? "") : from(parents);
    files.lots.push(`${number},${variety},${keeper},${year}-10,${kind},${made}`);
    if (living) files.ledger.push(`${number},${year}-11-01,harvested,200`);
  }
  const encoder = new TextEncoder();
  return new Map(
    Object.entries(files).map(([name, lines]) => [`${name}.csv`, encoder.encode(`${lines.join("\r\n")}\r\n`)]),
  );
}

/** Brings six hundred records of one variety into the registry of a site; the server is dead meanwhile. Gives the variety's id. */
export async function withManyLots(site: TestSite): Promise<string> {
  await site.kill();
  const id = await inRegistry(site, async (db) => {
    const done = await importFolder(db, ownerHere(), folderOfStems());
    if (!done.ok) throw new Error(JSON.stringify(done).slice(0, 2000));
    return (await db.read.variety.findFirstOrThrow({ where: { name: variety }, select: { id: true } })).id;
  });
  await site.restart();
  return id;
}
