import { expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { figuresOfAll } from "@/lib/registry/figures/read-figures";
import { readHarvests } from "@/lib/registry/harvests/read-harvests";
import { recordHarvest } from "@/lib/registry/harvests/record-harvest";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted } from "@/tests/setup/registry";
import { aGrowOut, harvest, weighed } from "../../harvests/a-grow-out";
import { aLot, anEntry } from "../../lots/lots-in-tests";

const owner = ownerHere();
const today = "2026-11-24";
const texts = (files: ReadonlyMap<string, Uint8Array>) =>
  Object.fromEntries([...files].map(([name, bytes]) => [name, new TextDecoder().decode(bytes)]));

onEveryEngine("harvests in the folder", (fresh) => {
  it("come back with their seed parents, their pool and their figures", async () => {
    const first = await fresh();
    // Two lots are told of by the notebook alone: their harvest is called by the grow-out.
    const { id, varietyId, plants } = await aGrowOut(first, { plants: 4, seedParents: 3, seedShares: "equal" });
    for (const number of ["Ford 0", "Ford 00"]) {
      const told = await aLot(first, varietyId, { number, kind: "harvest", growOutId: id, year: "2025" });
      await anEntry(first, told, "harvested", 30, "2025-09");
    }
    const record = async (more: Parameters<typeof harvest>[0]) =>
      granted(await recordHarvest(first, owner, id, harvest(more), today));
    const [a, b, c] = weighed(plants, [12.5, 3, 4]);
    await record({ parents: [a, b, { ...c, lost: "rotted or mouldy" }] as never, number: "Ford 1" });
    await record({
      seedParents: 3,
      parents: weighed([null, null, null], [5, 5, 6]),
      number: "Ford 2",
      bulked: "kept apart",
    });
    await record({ bulked: "equal seeds", seedParents: 8, grams: 40, number: "Ford 3" });
    const out = await exportFolder(first);
    expect(texts(out)["harvest_seed_parents.csv"]?.split("\r\n").slice(0, 6)).toEqual([
      "harvest,grow_out,plant,share,grams,seeds,lost",
      ...new Array(3).fill("Ford 2026,,,0.3333333333333333,,,"),
      "Ford 1,Ford 2026,1,0.8064516129032258,12.5,,",
      "Ford 1,Ford 2026,2,0.1935483870967742,3,,",
    ]);

    const before = await readHarvests(first, id, today);
    const second = await fresh();
    granted(await importFolder(second, owner, out));
    expect(texts(await exportFolder(second))).toEqual(texts(out));
    expect(granted(await importFolder(second, owner, out)).value.nothingNew).toBe(true);
    const growOut = await second.read.growOut.findFirstOrThrow();
    const after = await readHarvests(second, growOut.id, today);
    expect(after?.pool).toMatchObject({ seedParents: before?.pool?.seedParents, detasselled: null });
    expect(after?.harvests.map(({ size }) => size?.effectiveSize)).toEqual(
      before?.harvests.map(({ size }) => size?.effectiveSize),
    );
    const assumed = [...(await figuresOfAll(second)).values()].flatMap((figures) => figures.assumed);
    expect(assumed.join(" ")).toContain("at most 16");
  });

  it("are refused where a harvest or a plant is not there", async () => {
    const db = await fresh();
    const { plants, id } = await aGrowOut(db, { plants: 1 });
    granted(await recordHarvest(db, owner, id, harvest({ parents: weighed(plants, [3]), number: "Ford 1" }), today));
    const out = new Map(await exportFolder(db));
    const text =
      "harvest,grow_out,plant,share,grams,seeds,lost\r\nFord 9,Ford 2026,1,1,3,,\r\nFord 1,Ford 2026,77,1,3,,\r\n";
    out.set("harvest_seed_parents.csv", new TextEncoder().encode(text));
    const outcome = await importFolder(await fresh(), owner, out);
    expect(outcome.ok ? [] : outcome.refusals.map(({ path }) => path.join(":"))).toEqual([
      "harvest_seed_parents.csv:2:harvest",
      "harvest_seed_parents.csv:3:plant",
    ]);
  });
});
