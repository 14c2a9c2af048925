import { expect, it } from "vitest";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { addPlants } from "@/lib/registry/plants/add-plants";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { addPlantsSchema } from "@/lib/schemas/plants/add-plants";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aSteward } from "../lots/lots-in-tests";
import { aGrowOut, owner, plantsInShort } from "./a-grow-out";

const typed = (fields: Record<string, string>) =>
  granted(parseForm(addPlantsSchema("north"), { on: "2024-08-20", ...fields }));

onEveryEngine("plants that are added", (fresh) => {
  it("are numbered and stand in cells; an undo takes all of them back", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db);
    const added = granted(await addPlants(db, owner, id, typed({ from: "1", to: "3", cell: "A", perCell: "2" })));
    expect(added.value).toEqual({ plants: 3, tagsTwice: [] });
    expect((await plantsInShort(db, id)).map((plant) => [plant.name, plant.cell, plant.marks])).toEqual([
      ["1", "A", []],
      ["2", "A", []],
      ["3", "B", []],
    ]);
    granted(await undoChangeSet(db, owner, added.changeSetId as string));
    expect(await plantsInShort(db, id)).toEqual([]);
  });

  it("get a mark each where an intent is chosen, with the day, the words and who marked", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db);
    const steward = await aSteward(db, "Halda Morrow");
    granted(await addPlants(db, owner, id, typed({ from: "1", to: "2", intent: "keep", words: "early", steward })));
    const marks = await db.read.mark.findMany({ orderBy: { id: "asc" } });
    expect(marks).toMatchObject([
      { tag: "1", intent: "keep", on: "2024-08-20", words: "early", stewardId: steward },
      { tag: "2", intent: "keep", on: "2024-08-20", words: "early", stewardId: steward },
    ]);
  });

  it("may have a tag that another has where they are marked, and not where a number is all that tells them apart", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db);
    granted(await addPlants(db, owner, id, typed({ from: "1", to: "3" })));
    const outcome = await addPlants(db, owner, id, typed({ from: "3", to: "5" }));
    expect(outcome.ok ? [] : outcome.refusals.map((each) => [each.path, each.sentence])).toEqual([
      [
        ["from"],
        '"3" stands here already; write other numbers, or choose an intent so that each gets a mark with its tag',
      ],
    ]);
    const twice = granted(await addPlants(db, owner, id, typed({ tag: "3", intent: "watch" })));
    expect(twice.value.tagsTwice).toEqual(["3"]);
    expect((await plantsInShort(db, id)).at(-1)).toMatchObject({ name: "3 (2)", marks: ["3 watch"] });
  });

  it("are refused to a grow-out that is none and by a steward whom nobody knows", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db);
    const unknown = await addPlants(db, owner, "none", typed({ tag: "1" }));
    expect(unknown.ok ? [] : unknown.refusals.map((each) => each.code)).toEqual(["unknown"]);
    const nobody = await addPlants(db, owner, id, typed({ tag: "1", steward: "nobody" }));
    expect(nobody.ok ? [] : nobody.refusals.map((each) => each.path)).toEqual([["steward"]]);
    expect(await db.read.plant.count()).toBe(0);
  });
});
