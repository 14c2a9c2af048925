import { describe, expect, it } from "vitest";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { editDistance, nearest, slipsAllowed } from "@/lib/registry/search/edit-distance";
import { find } from "@/lib/registry/search/find";
import { foldWords } from "@/lib/registry/search/fold-words";
import { addOtherName } from "@/lib/registry/varieties/add-other-name";
import { correctVariety } from "@/lib/registry/varieties/correct-variety";
import { tellStory } from "@/lib/registry/varieties/tell-story";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { manyLots } from "../lots/many-lots";
import { owner, withLot, withSteward, withVariety } from "../varieties/with-variety";

async function circle(options = {}) {
  const db = await emptyRegistry(options);
  const pea = await withVariety(db, "Purple Podded Wren", "pea");
  await withVariety(db, "Mère Noire", "oat");
  granted(await addOtherName(db, owner, pea, { name: "Cottager's Grey" }));
  granted(await tellStory(db, owner, pea, { words: "It came over the pass in a quarryman's hat." }));
  await withSteward(db, "Odalind Fennwrack");
  const lot = await withLot(db, pea, "Quern 14", { code: "7KQ2M9XA4", notes: "jar by the stairs" });
  return { db, pea, lot };
}
const titles = async (db: Parameters<typeof find>[0], written: string) =>
  (await find(db, written)).found.map((each) => each.title);

describe("a search", () => {
  it("finds a name by the beginnings of its words, in any order", async () => {
    const { db } = await circle();
    expect((await titles(db, "purp pod"))[0]).toBe("Purple Podded Wren");
    expect((await titles(db, "WREN purple"))[0]).toBe("Purple Podded Wren");
  });

  it("finds by another name, and says which", async () => {
    const { db } = await circle();
    expect((await find(db, "cottager’s gr")).found[0]).toMatchObject({
      title: "Purple Podded Wren",
      as: "another name",
      excerpt: "Cottager's Grey",
    });
  });

  it("finds a name with accents by plain letters", async () => {
    const { db } = await circle();
    expect(await titles(db, "mere noire")).toEqual(["Mère Noire"]);
  });

  it("forgives a slip in a name, and says that it did", async () => {
    const { db } = await circle();
    expect((await find(db, "puprle wren")).found[0]).toMatchObject({ title: "Purple Podded Wren", meant: true });
    expect((await titles(db, "Fennwrak"))[0]).toBe("Odalind Fennwrack");
  });

  it("does not forgive a slip in prose or in a short word", async () => {
    const { db } = await circle();
    expect(await titles(db, "quarrimans hat")).toEqual([]);
    expect(await titles(db, "wrn")).toEqual([]);
  });

  it("finds stories and notes with the words around the find", async () => {
    const { db } = await circle();
    expect((await find(db, "quarryman")).found[0]).toMatchObject({
      kind: "story",
      as: "story",
      title: "Purple Podded Wren",
    });
    expect((await find(db, "stairs")).found[0]).toMatchObject({
      kind: "lot",
      as: "note",
      excerpt: "jar by the stairs",
    });
  });

  it("finds prose by the beginnings of words, not by their middles", async () => {
    const { db } = await circle();
    expect(await titles(db, "stair")).toEqual(["Quern 14"]);
    expect(await titles(db, "airs")).toEqual([]);
  });

  it("finds a lot by number and by its label code, in threes or in one", async () => {
    const { db, lot } = await circle();
    for (const written of ["quern 14", "7kq 2m9 xa4", "7KQ2M9XA4", "7KQ2M9"]) {
      expect((await find(db, written)).found[0]?.page, written).toEqual({ kind: "lot", id: lot });
    }
  });

  it("puts a variety before its lots, and lot 2 before lot 10, where all have the word", async () => {
    const { db, pea } = await circle();
    for (const number of ["Wren 10", "Wren 2"]) await withLot(db, pea, number);
    expect(await titles(db, "wren")).toEqual(["Purple Podded Wren", "Wren 2", "Wren 10"]);
    expect((await titles(db, "wren 10"))[0]).toBe("Wren 10");
  });

  it("finds nothing for nothing, and counts by kind", async () => {
    const { db } = await circle();
    expect(await find(db, "   ")).toMatchObject({ total: 0, found: [] });
    const { counts, total } = await find(db, "wren");
    expect(counts).toMatchObject({ variety: 1, steward: 0 });
    expect(total).toBe(1);
    expect((await find(db, "quern", 10, "variety")).found).toEqual([]);
  });
});

describe("what is searched", () => {
  it("follows every write: a new record, a changed name, a record taken back", async () => {
    const { db, pea } = await circle();
    expect(await titles(db, "brindle")).toEqual([]);
    const brindle = await withVariety(db, "Brindle", "oat");
    expect(await titles(db, "brindle")).toEqual(["Brindle"]);
    granted(await correctVariety(db, owner, pea, { name: "Tallow Wren", reason: "misread" }));
    expect(await titles(db, "purple")).toEqual([]);
    expect((await titles(db, "tallow"))[0]).toBe("Tallow Wren");
    const made = await db.read.change.findFirstOrThrow({ where: { recordId: brindle } });
    granted(await undoChangeSet(db, owner, made.changeSetId));
    expect(await titles(db, "brindle")).toEqual([]);
  });

  it("asks one statement of a registry of 10,000 lots where nothing changed", async () => {
    const sent: string[] = [];
    const { db } = await circle({ onStatement: (sql: string) => sent.push(sql) });
    await manyLots(db, 10_000);
    await find(db, "quern");
    sent.length = 0;
    expect((await find(db, "L 9999")).found[0]).toMatchObject({ kind: "lot", title: "L 9999" });
    expect(sent).toHaveLength(1);
  });

  it("reads only what changed after a small write", async () => {
    const sent: string[] = [];
    const { db, pea } = await circle({ onStatement: (sql: string) => sent.push(sql) });
    await find(db, "quern");
    await withLot(db, pea, "Quern 15");
    sent.length = 0;
    expect(await titles(db, "quern 15")).toEqual(["Quern 15"]);
    expect(sent.length).toBeLessThanOrEqual(4);
  });
});

describe("a slip", () => {
  it("is a letter put in, left out, changed or swapped", () => {
    // Counted by hand.
    expect(editDistance("purple", "purpple", 2)).toBe(1);
    expect(editDistance("purple", "purle", 2)).toBe(1);
    expect(editDistance("purple", "purpla", 2)).toBe(1);
    expect(editDistance("purple", "puprle", 2)).toBe(1);
    expect(editDistance("kitten", "sitting", 3)).toBe(3);
    expect(editDistance("", "ab", 2)).toBe(2);
  });

  it("is counted no further than it matters", () => {
    expect(editDistance("abcdef", "uvwxyz", 2)).toBe(3);
    expect(editDistance("abc", "abcdefgh", 2)).toBe(3);
  });

  it("is allowed once from four letters on, twice from eight", () => {
    expect(["pea", "leek", "parsnip", "cauliflower"].map(slipsAllowed)).toEqual([0, 1, 1, 2]);
  });

  it("leads to the nearest names, at most three", () => {
    const names = ["Leek", "Beet", "Parsnip", "Lettuce"];
    expect(nearest("leeks", names, foldWords)).toEqual(["Leek"]);
    expect(nearest("xyz", names, foldWords)).toEqual([]);
  });
});
