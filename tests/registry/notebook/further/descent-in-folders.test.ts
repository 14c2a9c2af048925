import { expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { onEveryEngine } from "@/tests/setup/engines";

const encoder = new TextEncoder();
const folder = (files: Readonly<Record<string, string>>) =>
  new Map(
    Object.entries({
      "varieties.csv": "variety,crop\nGrey Morrow,oat\nTarn Oat,oat\n",
      "grow_outs.csv": "grow_out,variety,parents\nK1,Grey Morrow,M 1\n",
      "lots.csv":
        "lot,variety,kind,from\nM 1,Grey Morrow,founder,\nM 2,Grey Morrow,harvest,K1\nM 3,Grey Morrow,founder,\nT 1,Tarn Oat,founder,\n",
      ...files,
    }).map(([name, text]) => [name, encoder.encode(text)]),
  );

onEveryEngine("a folder by which a lot would be its own ancestor", (fresh) => {
  it("is refused at its row, whether records or claims say so", async () => {
    const db = await fresh();
    const at = async (files: Readonly<Record<string, string>>) => {
      const outcome = await importFolder(db, ownerHere(), folder(files));
      return outcome.ok ? [] : outcome.refusals.map(({ code, path }) => `${code} ${path.join(":")}`);
    };
    expect(await at({ "lot_details.csv": "lot,same_as\nM 1,M 2\n" })).toEqual(["cycle lot_details.csv:2:same_as"]);
    expect(await at({ "lot_details.csv": "lot,same_as\nM 3,T 1\n" })).toEqual([
      "other-variety lot_details.csv:2:same_as",
    ]);
    const chain = "lot,same_as\nM 3,M 2\nM 2,M 1\n";
    expect(await at({ "lot_details.csv": chain })).toContain("stands-for-another lot_details.csv:2:same_as");
    expect(await at({ "lot_details.csv": "lot,same_as\nM 1,M 1\n" })).toEqual(["of-itself lot_details.csv:2:same_as"]);
    const claims = "lot,kind,parent_lot,words\nM 3,descends from,T 1,so\nM 1,descends from,M 2,so\n";
    expect(await at({ "lineage_claims.csv": claims })).toEqual(["cycle lineage_claims.csv:3:parent_lot"]);
    expect(await db.read.lot.count()).toBe(0);
    expect(await at({ "lot_details.csv": "lot,same_as\nM 3,M 1\n" })).toEqual([]);
    // a later folder may not let the lead of the first follow a third
    const later = { "lots.csv": "lot,variety,kind,from\nM 1,Grey Morrow,founder,\nM 4,Grey Morrow,founder,\n" };
    expect(await at({ ...later, "lot_details.csv": "lot,same_as\nM 1,M 4\n" })).toEqual([
      "leads-already lot_details.csv:2:same_as",
    ]);
  });
});
