import { describe, expect, it } from "vitest";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { plantsOfGrowOut } from "@/lib/registry/grow-outs/plants-of-grow-out";
import { readPlantsGrid } from "@/lib/registry/plants/read-plants-grid";
import { tagsTwice } from "@/lib/registry/plants/tags-twice";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aSteward } from "../lots/lots-in-tests";
import { aGrowOut, owner, plantsInShort, row, save } from "./a-grow-out";

const sentences = (outcome: Awaited<ReturnType<typeof save>>) =>
  outcome.ok ? [] : outcome.refusals.map((each) => each.sentence);
const places = (outcome: Awaited<ReturnType<typeof save>>) =>
  outcome.ok ? [] : outcome.refusals.map((each) => each.path);

onEveryEngine("one save of the grid", (fresh) => {
  it("writes plants, marks and scores as one entry of the history, and takes them back as one", async () => {
    const db = await fresh();
    const { id, vigour, silk } = await aGrowOut(db);
    const before = await db.read.changeSet.count();
    const saved = granted(
      await save(db, id, [
        row("n1", { tag: "1", intent: "keep", cell: "A", [vigour]: "7", words: "stood the gale" }, {}, true),
        row("n2", { tag: "2", [vigour]: "strong", [silk]: "-" }, {}, true),
      ]),
    );
    expect(saved.value).toEqual({ plants: 2, marks: 1, scores: 3 });
    expect(await db.read.changeSet.count()).toBe(before + 1);
    expect(await plantsInShort(db, id)).toEqual([
      { name: "1", cell: "A", marks: ["1 keep"], scores: { vigour: [7] } },
      { name: "2", cell: null, marks: [], scores: { vigour: [9], "silk red": ["not looked"] } },
    ]);
    granted(await undoChangeSet(db, owner, saved.changeSetId as string));
    expect(await plantsInShort(db, id)).toEqual([]);
  });

  it("makes a changed score a new event that points to the old, and takes an emptied one back", async () => {
    const db = await fresh();
    const { id, vigour } = await aGrowOut(db);
    granted(await save(db, id, [row("n", { tag: "1", [vigour]: "7" }, {}, true)]));
    const plant = (await db.read.plant.findFirstOrThrow()).id;
    granted(await save(db, id, [row(plant, { [vigour]: "5" }, { [vigour]: "7" })]));
    expect((await plantsInShort(db, id))[0]?.scores).toEqual({ vigour: [5] });
    const last = granted(await save(db, id, [row(plant, { [vigour]: "" }, { [vigour]: "5" })]));
    expect((await plantsInShort(db, id))[0]?.scores).toEqual({});
    const events = await db.read.score.findMany({ orderBy: { id: "asc" } });
    expect(events.map((event) => [event.value, event.takenBack])).toEqual([
      [7, false],
      [5, false],
      [5, true],
    ]);
    expect(events.map((event) => event.replacesId)).toEqual([null, events[0]?.id, events[1]?.id]);
    granted(await undoChangeSet(db, owner, last.changeSetId as string));
    expect((await plantsInShort(db, id))[0]?.scores).toEqual({ vigour: [5] });
  });

  it("is all or nothing: every refusal names row and column", async () => {
    const db = await fresh();
    const { id, vigour, silk } = await aGrowOut(db);
    const outcome = await save(db, id, [
      row("a", { tag: "1", [vigour]: "7" }, {}, true),
      row("b", { tag: "2", [vigour]: "12", [silk]: "maybe" }, {}, true),
      row("c", { [vigour]: "3" }, {}, true),
      row("gone", { [vigour]: "3" }),
    ]);
    expect(sentences(outcome)).toEqual([
      'plant 2, vigour: "12" is no step of 1 to 9; write a whole number from 1 to 9',
      'plant 2, silk red: "maybe" is neither yes nor no; write y for yes, n for no, or - for not looked',
      "plant without a tag, tag: nothing stands here; write what stands on the plant's tag",
      '"gone" is no plant of this grow-out any more; read the page again',
    ]);
    expect(places(outcome)).toEqual([["b", vigour], ["b", silk], ["c", "tag"], ["gone"]]);
    expect(await db.read.plant.count()).toBe(0);
    expect(await db.read.score.count()).toBe(0);
  });

  it("does not write over what somebody else wrote meanwhile", async () => {
    const db = await fresh();
    const { id, vigour } = await aGrowOut(db);
    granted(await save(db, id, [row("n", { tag: "1", [vigour]: "7" }, {}, true)]));
    const plant = (await db.read.plant.findFirstOrThrow()).id;
    const outcome = await save(db, id, [row(plant, { [vigour]: "5" }, { [vigour]: "" })]);
    expect(sentences(outcome)).toEqual([
      'plant 1, vigour: "5" was written over meanwhile: "7" stands there now; look again, and write it anew if it is still right',
    ]);
  });

  it("keeps two people's scores and marks side by side, and replaces one's own", async () => {
    const db = await fresh();
    const { id, vigour, vigourId } = await aGrowOut(db);
    const [halda, osk] = [await aSteward(db, "Halda Morrow"), await aSteward(db, "Osk Tarn")];
    const by = (stewardId: string) => ({ stewardId });
    granted(
      await save(db, id, [row("n", { tag: "1", intent: "keep", words: "early", [vigour]: "7" }, {}, true)], by(halda)),
    );
    const plant = (await db.read.plant.findFirstOrThrow()).id;
    // Osk's own cell is empty, whatever Halda wrote in hers
    const typed = row(plant, { [vigour]: "4", intent: "pull" }, { intent: "keep" });
    granted(await save(db, id, [typed], by(osk)));
    expect(await plantsInShort(db, id)).toMatchObject([{ marks: ["1 keep", "1 pull"], scores: { vigour: [7, 4] } }]);
    granted(await save(db, id, [row(plant, { [vigour]: "6" }, { [vigour]: "7" })], by(halda)));
    const { plants } = await plantsOfGrowOut(db, id);
    expect(plants[0]?.scores.get(vigourId)?.map((score) => [score.value, score.stewardId])).toEqual([
      [4, osk],
      [6, halda],
    ]);
    // Osk said nothing in words: Halda's stay hers
    expect(plants[0]?.marks.map((mark) => [mark.words, mark.stewardId])).toEqual([
      ["early", halda],
      [null, osk],
    ]);
    // the same step as Halda's counts as Osk's own; what Osk takes back leaves hers
    granted(await save(db, id, [row(plant, { [vigour]: "6" }, { [vigour]: "4" })], by(osk)));
    expect((await plantsInShort(db, id))[0]?.scores).toEqual({ vigour: [6, 6] });
    granted(await save(db, id, [row(plant, { [vigour]: "" }, { [vigour]: "6" })], by(osk)));
    expect((await plantsInShort(db, id))[0]?.scores).toEqual({ vigour: [6] });
    expect(sentences(await save(db, id, [row(plant, { [vigour]: "5" }, { [vigour]: "4" })], by(halda)))[0]).toContain(
      'was written over meanwhile: "6" stands there now',
    );
    expect(sentences(await save(db, id, [typed], by("nobody")))).toEqual([
      '"nobody" is no steward here; choose one of the list',
    ]);
  });

  it("asks which is which where two plants have one tag, and renames neither", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db);
    granted(await save(db, id, [row("a", { tag: "12", intent: "keep" }, {}, true)]));
    granted(await save(db, id, [row("b", { tag: "12", intent: "watch" }, {}, true)]));
    expect(await plantsInShort(db, id)).toMatchObject([
      { name: "12", marks: ["12 keep"] },
      { name: "12 (2)", marks: ["12 watch"] },
    ]);
    const { plants } = await plantsOfGrowOut(db, id);
    expect(tagsTwice(plants).map(({ tag, plants: same }) => [tag, same.length])).toEqual([["12", 2]]);
    // a number that has no mark to stand on must be told apart
    expect(sentences(await save(db, id, [row("c", { tag: "12" }, {}, true)]))).toEqual([
      `plant 12, tag: "12" is another plant's too; write keep, watch or pull as its intent`,
    ]);
  });

  it("changes a mark by a new event, and takes it away whole where its intent is emptied", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db);
    granted(await save(db, id, [row("a", { tag: "12", intent: "watch", words: "late" }, {}, true)], { on: "2024-06" }));
    const plant = (await db.read.plant.findFirstOrThrow()).id;
    granted(await save(db, id, [row(plant, { tag: "12b", intent: "k" }, { tag: "12", intent: "watch" })]));
    const marks = await db.read.mark.findMany({ orderBy: { id: "asc" } });
    expect(marks).toMatchObject([
      { tag: "12", intent: "watch", on: "2024-06", onFirst: "2024-06-01", replacesId: null },
      { tag: "12b", intent: "keep", on: "2024-08-20", words: "late", replacesId: marks[0]?.id },
    ]);
    const away = granted(await save(db, id, [row(plant, { intent: "" }, { intent: "keep" })]));
    expect((await plantsInShort(db, id))[0]).toMatchObject({ name: "12", marks: [] });
    granted(await undoChangeSet(db, owner, away.changeSetId as string));
    expect((await plantsInShort(db, id))[0]).toMatchObject({ marks: ["12b keep"] });
  });

  it("puts the number of an unmarked plant right, unless another has it; words need a mark", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db);
    granted(await save(db, id, [row("a", { tag: "1" }, {}, true), row("b", { tag: "2" }, {}, true)]));
    const [one] = await db.read.plant.findMany({ orderBy: { id: "asc" } });
    granted(await save(db, id, [row(one?.id ?? "", { tag: "7", cell: "B" }, { tag: "1" })]));
    expect((await plantsInShort(db, id)).map((plant) => [plant.name, plant.cell])).toEqual([
      ["7", "B"],
      ["2", null],
    ]);
    expect(sentences(await save(db, id, [row(one?.id ?? "", { tag: "2", words: "tall" }, { tag: "7" })]))).toEqual([
      `plant 7, tag: "2" is another plant's too; write keep, watch or pull as its intent`,
      'plant 7, words: "tall" belongs to a mark; write keep, watch or pull as its intent',
    ]);
  });

  it("of a cell that says what stands there writes nothing", async () => {
    const db = await fresh();
    const { id, vigour } = await aGrowOut(db);
    granted(await save(db, id, [row("a", { tag: "1", [vigour]: "7" }, {}, true)]));
    const plant = (await db.read.plant.findFirstOrThrow()).id;
    const again = granted(await save(db, id, [row(plant, { [vigour]: "strong" }, { [vigour]: "7" })]));
    expect(again.value.scores).toBe(1);
    const same = granted(await save(db, id, [row(plant, { [vigour]: "9" }, { [vigour]: "9" })]));
    expect(same.changeSetId).toBeNull();
  });
});

describe("the grid", () => {
  it("of 500 plants with four traits is read whole in one statement", async () => {
    const { emptyRegistry } = await import("../../setup/registry");
    let statements = 0;
    const db = await emptyRegistry({ onStatement: () => (statements += 1) });
    const { id, vigour } = await aGrowOut(db);
    const rows = Array.from({ length: 500 }, (_, at) =>
      row(`n${at}`, { tag: String(at + 1), [vigour]: "5" }, {}, true),
    );
    expect(granted(await save(db, id, rows)).value).toEqual({ plants: 500, marks: 0, scores: 500 });
    statements = 0;
    const grid = await readPlantsGrid(db, id);
    expect(grid?.plants).toHaveLength(500);
    expect(statements).toBe(1);
  });

  it("is null where there is no such grow-out", async () => {
    const { emptyRegistry } = await import("../../setup/registry");
    expect(await readPlantsGrid(await emptyRegistry(), "none")).toBeNull();
  });
});
