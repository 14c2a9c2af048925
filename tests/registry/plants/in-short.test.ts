import { describe, expect, it } from "vitest";
import { scoreInWords } from "@/lib/display/scores";
import { plantsOfGrowOut } from "@/lib/registry/grow-outs/plants-of-grow-out";
import { marksInShort } from "@/lib/registry/plants/marks-in-short";
import { scoresInShort } from "@/lib/registry/plants/scores-in-short";
import { changeTrait } from "@/lib/registry/traits/change-trait";
import { emptyRegistry, granted } from "../../setup/registry";
import { aSteward } from "../lots/lots-in-tests";
import { aGrowOut, owner, row, save } from "./a-grow-out";

async function marked() {
  const db = await emptyRegistry();
  const grown = await aGrowOut(db);
  const { id, varietyId, vigour, vigourId, silk } = grown;
  const [halda, osk] = [await aSteward(db, "Halda Morrow"), await aSteward(db, "Osk Tarn")];
  const rows = [
    row("a", { tag: "1", cell: "A", intent: "keep", [vigour]: "7", [silk]: "y" }, {}, true),
    row("b", { tag: "2", cell: "A", intent: "keep", [vigour]: "9", [silk]: "-" }, {}, true),
    row("c", { tag: "3", cell: "B", intent: "pull", [silk]: "y" }, {}, true),
    row("d", { tag: "4", cell: "B" }, {}, true),
  ];
  granted(await save(db, id, rows, { stewardId: halda }));
  granted(await changeTrait(db, owner, varietyId, vigourId, { name: "vigour", kind: "scale", scaleHigh: "5" }));
  const first = await db.read.plant.findFirstOrThrow({ where: { name: "1" } });
  const typed = row(first.id, { [vigour]: "4", intent: "watch" }, { intent: "keep" });
  granted(await save(db, id, [typed], { stewardId: osk }));
  return { ...(await plantsOfGrowOut(db, id)), halda, osk };
}

describe("marks in short", () => {
  it("count each plant by its newest mark, and those to be kept by the cell they stand in", async () => {
    const { plants } = await marked();
    const short = marksInShort(plants);
    expect(short).toMatchObject({ plants: 4, intents: { keep: 1, watch: 1, pull: 1 }, unmarked: 1 });
    expect(short.cells).toEqual([
      { cell: "A", plants: 2, keep: 1 },
      { cell: "B", plants: 2, keep: 0 },
    ]);
    expect(short.disputed.map((plant) => plant.name)).toEqual(["1"]);
  });
});

describe("scores in short", () => {
  it("never mix versions of a trait, and say who scored", async () => {
    const { plants, traits, halda, osk } = await marked();
    const short = scoresInShort(plants, traits);
    expect(short.map((each) => [each.trait.name, each.trait.version, each.old, each.plants])).toEqual([
      ["vigour", 1, true, 2],
      ["vigour", 2, false, 1],
      ["silk red", 1, false, 3],
    ]);
    expect(short.map((each) => each.ends)).toEqual([[7, 9], [4, 4], null]);
    expect(short.map((each) => [...each.by])).toEqual([[[halda, 2]], [[osk, 1]], [[halda, 3]]]);
    expect([...(short[2]?.answers ?? [])]).toEqual([
      ["yes", 2],
      ["not looked", 1],
    ]);
  });

  it("are said with the words of their step, their unit, or as a day", async () => {
    const { traits } = await marked();
    const [vigour] = traits;
    const [old, newer] = vigour?.versions ?? [];
    if (!old || !newer) throw new Error("two versions were made");
    expect(scoreInWords(old, { value: 9, text: null })).toBe("9, strong");
    expect(scoreInWords(newer, { value: 4, text: null })).toBe("4");
    expect(scoreInWords({ ...old, kind: "measure", unit: "cm" }, { value: 1820.5, text: null })).toBe(
      "1,820.5\u00a0cm",
    );
    expect(scoreInWords({ ...old, kind: "date" }, { value: null, text: "2024-07~" })).toBe("about July 2024");
    expect(scoreInWords({ ...old, kind: "yes-no" }, { value: null, text: "not looked" })).toBe("not looked");
  });
});
