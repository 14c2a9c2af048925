import { expect, it } from "vitest";
import { checkFolder, importFolder } from "@/lib/exchange/bring-in/import-folder";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { changeTrait } from "@/lib/registry/traits/change-trait";
import { onEveryEngine } from "../../../setup/engines";
import { granted } from "../../../setup/registry";
import { aSteward } from "../../lots/lots-in-tests";
import { aGrowOut, owner, plantsInShort, row, save } from "../../plants/a-grow-out";

const encoder = new TextEncoder();
const csv = (files: Readonly<Record<string, string>>) =>
  new Map(Object.entries(files).map(([name, text]) => [name, encoder.encode(text)]));
const texts = (files: ReadonlyMap<string, Uint8Array>) =>
  Object.fromEntries([...files].map(([name, bytes]) => [name, new TextDecoder().decode(bytes)]));

const folder = {
  "stewards.csv": "steward\nHalda Morrow\n",
  "varieties.csv": "variety,crop\nMere Flint,maize-field\n",
  "lots.csv": "lot,variety,kind\nM 1,Mere Flint,founder\n",
  "grow_outs.csv": "grow_out,variety,parents\nMill 2024,Mere Flint,M 1\n",
  "plants.csv": "grow_out,plant,cell,score:vigour,score:colour\nMill 2024,1,A,7,red\nMill 2024,2,A,5,\n",
};

onEveryEngine("plants, marks and scores that were written on screen", (fresh) => {
  it("come back from a folder as they were, traits with their versions", async () => {
    const first = await fresh();
    // a folder needs a lot that the grow-out was sown from
    granted(
      await importFolder(first, owner, csv({ "lots.csv": "lot,variety,kind\n", "varieties.csv": "variety,crop\n" })),
    );
    const { id, varietyId, vigour, vigourId, silk } = await aGrowOut(first);
    const lot = { id: "lot-1", number: "M 1", numberKey: "m 1", code: "c", varietyId, kind: "founder" };
    await first.write.lot.create({ data: lot });
    await first.write.growOutParent.create({ data: { id: "p-1", growOutId: id, lotId: lot.id, share: 1 } });
    const [halda, osk] = [await aSteward(first, "Halda Morrow"), await aSteward(first, "Osk Tarn")];
    granted(
      await save(
        first,
        id,
        [
          row(
            "a",
            { tag: "12", intent: "keep", cell: "B", words: 'said "two\nears"', [vigour]: "7", [silk]: "-" },
            {},
            true,
          ),
          row("b", { tag: "12", intent: "watch", [vigour]: "4", fate: "lost" }, {}, true),
          row("c", { tag: "13" }, {}, true),
        ],
        { stewardId: halda },
      ),
    );
    granted(
      await changeTrait(first, owner, varietyId, vigourId, { name: "vigour", kind: "scale", direction: "lower" }),
    );
    const plants = await first.read.plant.findMany({ orderBy: { id: "asc" } });
    const [one, two] = plants.map((plant) => plant.id) as [string, string];
    // in the grid his own cell is empty, whatever she scored
    granted(await save(first, id, [row(one, { [vigour]: "3" })], { stewardId: osk, on: "2024-09~" }));
    granted(await save(first, id, [row(two, { [vigour]: "" }, { [vigour]: "4" })], { stewardId: halda }));
    const out = await exportFolder(first);
    const said = await plantsInShort(first, id);
    expect(said).toEqual([
      { name: "12", cell: "B", marks: ["12 keep"], scores: { vigour: [7, 3], "silk red": ["not looked"] } },
      { name: "12 (2)", cell: null, marks: ["12 watch"], scores: {} },
      { name: "13", cell: null, marks: [], scores: {} },
    ]);

    const second = await fresh();
    granted(await importFolder(second, owner, out));
    expect(texts(await exportFolder(second))).toEqual(texts(out));
    const there = await second.read.growOut.findFirstOrThrow();
    expect(await plantsInShort(second, there.id)).toEqual(said);
    const versions = await second.read.trait.findMany({ where: { nameKey: "vigour" }, orderBy: { version: "asc" } });
    expect(versions.map((trait) => [trait.version, trait.direction])).toEqual([
      [1, "higher"],
      [2, "lower"],
    ]);
    expect(versions[1]?.previousId).toBe(versions[0]?.id);
    const scorers = await second.read.score.findMany({ where: { value: { not: null } }, orderBy: { id: "asc" } });
    expect(scorers.map((score) => [score.value, score.on, score.traitId === versions[0]?.id])).toEqual([
      [7, "2024-08-20", true],
      [3, "2024-09~", false],
    ]);
    expect(granted(await importFolder(second, owner, out)).value.nothingNew).toBe(true);
  });

  it("complete the bare scores that stand, and make none twice", async () => {
    const db = await fresh();
    granted(await importFolder(db, owner, csv(folder)));
    const scores =
      "grow_out,plant,trait,trait_version,value,words,on,steward\n" +
      "Mill 2024,1,vigour,1,7,,2024-08-20,Halda Morrow\nMill 2024,1,colour,1,,red,2024-08,\n";
    granted(await importFolder(db, owner, csv({ ...folder, "scores.csv": scores })));
    const stored = await db.read.score.findMany({ orderBy: { id: "asc" } });
    expect(stored.map((score) => [score.value, score.text, score.on])).toEqual([
      [7, null, "2024-08-20"],
      [null, "red", "2024-08"],
      [5, null, null],
    ]);
    expect(stored[0]?.stewardId).toBe((await db.read.person.findFirstOrThrow()).stewardId);
    const again = granted(await importFolder(db, owner, csv({ ...folder, "scores.csv": scores })));
    expect(again.value.nothingNew).toBe(true);
  });

  it("stand once where one folder brings the plants and says more of their scores", async () => {
    const db = await fresh();
    const scores = "grow_out,plant,trait,trait_version,value,on\nMill 2024,2,vigour,1,5.0,2024-08-20\n";
    granted(await importFolder(db, owner, csv({ ...folder, "scores.csv": scores })));
    const stored = await db.read.score.findMany({ where: { value: 5 } });
    expect(stored.map((score) => score.on)).toEqual(["2024-08-20"]);
    expect(await db.read.score.count()).toBe(3);
  });

  it("are refused by row and column where plant or trait is not known, or nothing was scored", async () => {
    const db = await fresh();
    const wrong = csv({
      ...folder,
      "marks.csv": "grow_out,plant,intent,on\nMill 2024,9,keep,2024\nMill 2024,1,eat,2024\n",
      "scores.csv":
        "grow_out,plant,trait,trait_version,value,on\nMill 2024,1,height,1,5,2024\nMill 2024,1,vigour,1,,2024\n",
    });
    const { faults } = await checkFolder(db, wrong);
    expect(faults.map(({ file, line, column }) => `${file}:${line}:${column}`).sort()).toEqual([
      "marks.csv:2:plant",
      "marks.csv:3:intent",
      "scores.csv:2:trait_version",
      "scores.csv:3:value",
    ]);
  });
});
