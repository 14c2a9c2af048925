import { expect, it } from "vitest";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { readChoice } from "@/lib/registry/plants/read-choice";
import { readSeasonRecords } from "@/lib/registry/season/read-season-records";
import { changeTrait } from "@/lib/registry/traits/change-trait";
import { defineTrait } from "@/lib/registry/traits/define-trait";
import { rowsOfChoice } from "@/lib/schemas/plants/rows-of-choice";
import { traitColumn } from "@/lib/schemas/plants/save-plants";
import { defaultSettings } from "@/lib/schemas/settings";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aSteward } from "../lots/lots-in-tests";
import { aGrowOut, owner, plantsInShort, row, save } from "./a-grow-out";

const question = { settings: defaultSettings, today: "2024-09-01" };

onEveryEngine("what a choice is made from", (fresh) => {
  it("is each plant with the last score of each person, its place, and why it is gone", async () => {
    const db = await fresh();
    const { id, vigour, vigourId, silk, silkId } = await aGrowOut(db);
    const [halda, osk] = [await aSteward(db, "Halda Morrow"), await aSteward(db, "Osk Tarn")];
    granted(
      await save(
        db,
        id,
        [
          row("a", { tag: "1", cell: "A", intent: "keep", [vigour]: "7", [silk]: "y", words: "two ears" }, {}, true),
          row("b", { tag: "2", cell: "A", [vigour]: "5", [silk]: "-" }, {}, true),
          row("c", { tag: "3", cell: "B", intent: "pull", [vigour]: "2" }, {}, true),
          row("d", { tag: "4", cell: "B", intent: "watch", fate: "eaten", [silk]: "n" }, {}, true),
          row("e", { tag: "5" }, {}, true),
        ],
        { stewardId: halda },
      ),
    );
    const first = await db.read.plant.findFirstOrThrow({ where: { name: "1" } });
    granted(await save(db, id, [row(first.id, { [vigour]: "6" })], { stewardId: osk }));
    await db.write.plant.update({ where: { id: first.id }, data: { row: "3", position: 12 } });
    await db.write.growOut.update({ where: { id }, data: { plantsStanding: 40, seedParentsPlanned: 12 } });
    const { ground } = (await readChoice(db, id, question)) ?? {};
    expect(ground?.plants.map(({ name, cell, intent, gone }) => [name, cell, intent, gone])).toEqual([
      ["1", "A", "keep", null],
      ["2", "A", "", null],
      ["3", "B", "pull", "to be pulled"],
      ["4", "B", "watch", "eaten"],
      ["5", null, "", null],
    ]);
    expect(ground?.plants[0]).toMatchObject({ row: "3", position: 12, words: "two ears" });
    expect(ground?.plants[0]?.scores).toEqual({
      [vigourId]: [
        { by: halda, value: 7 },
        { by: osk, value: 6 },
      ],
      [silkId]: [{ by: halda, value: 1 }],
    });
    // Not looked is no score; what nobody scored is not there.
    expect(ground?.plants[1]?.scores).toEqual({ [vigourId]: [{ by: halda, value: 5 }] });
    expect(ground?.plants[4]?.scores).toEqual({});
    expect(ground?.traits.map(({ name, better }) => [name, better])).toEqual([
      ["vigour", "higher"],
      ["silk red", null],
    ]);
    expect(ground?.people.map(({ name }) => name)).toEqual(["Halda Morrow", "Osk Tarn"]);
    expect(ground?.wanted).toEqual({ count: 12, from: "plan" });
    // maize of the crop list: no rogues written, 40 stood, seed parents are what is asked
    expect(ground?.plot).toMatchObject({ pollenParents: { low: 40, high: 40 } });
    expect(ground?.plot).not.toHaveProperty("seedParents");
    // the season counts the same plants: one of the four that are scored is marked keep
    const { scoredPlants } = await readSeasonRecords(db, defaultSettings, question.today);
    expect(scoredPlants).toEqual([{ growOutId: id, scored: 4, kept: 1 }]);
  });

  it("mixes no versions of a trait, and reads two records of one plant as one", async () => {
    const db = await fresh();
    const { id, varietyId, vigour, vigourId } = await aGrowOut(db);
    const height = traitColumn(
      granted(
        await defineTrait(db, owner, varietyId, {
          scope: "variety",
          name: "height",
          kind: "measure",
          unit: "cm",
          direction: "lower",
        }),
      ).value.traitId,
    );
    granted(
      await save(db, id, [
        row("a", { tag: "1", cell: "A", [vigour]: "7" }, {}, true),
        row("b", { tag: "2", cell: "A", [height]: "180" }, {}, true),
      ]),
    );
    granted(await changeTrait(db, owner, varietyId, vigourId, { name: "vigour", kind: "scale", scaleHigh: "5" }));
    const [one, other] = await db.read.plant.findMany({ orderBy: { name: "asc" } });
    await db.write.plant.update({ where: { id: other?.id ?? "" }, data: { sameAsId: one?.id ?? null } });
    const { ground } = (await readChoice(db, id, question)) ?? {};
    expect(
      ground?.plants.map(({ name, scores }) => [
        name,
        Object.values(scores)
          .flat()
          .map(({ value }) => value),
      ]),
    ).toEqual([["1", [180]]]);
    expect(ground?.traits.find(({ key }) => key === vigourId)?.olderVersion).toBe(1);
  });

  it("is none where there is no such grow-out", async () => {
    expect(await readChoice(await fresh(), "nowhere", question)).toBeNull();
  });

  it("is written as marks in one entry of the history, which can be taken back; what was written meanwhile is not written over", async () => {
    const db = await fresh();
    const { id, vigour } = await aGrowOut(db);
    granted(
      await save(db, id, [
        row("a", { tag: "1", cell: "A", intent: "keep", [vigour]: "7" }, {}, true),
        row("b", { tag: "2", cell: "A", [vigour]: "9" }, {}, true),
        row("c", { tag: "3", cell: "A", intent: "keep", [vigour]: "8", words: "early" }, {}, true),
      ]),
    );
    const { ground } = (await readChoice(db, id, question)) ?? {};
    const [one, two, three] = ground?.plants ?? [];
    const { rows, ...counts } = rowsOfChoice(ground?.plants ?? [], {
      kept: new Set([two?.id ?? ""]),
      leftOut: new Map([[three?.id ?? "", "smut"]]),
      others: "watch",
    });
    expect(counts).toEqual({ keep: 1, already: 0, watch: 1, leftOut: 1 });
    const saved = granted(await save(db, id, rows));
    expect((await plantsInShort(db, id)).map(({ marks }) => marks)).toEqual([["1 watch"], ["2 keep"], ["3 watch"]]);
    const again = (await readChoice(db, id, question))?.ground.plants.find(({ name }) => name === "3");
    expect(again?.words).toBe("early; left out: smut");
    const stale = await save(db, id, rows);
    expect(stale.ok ? [] : stale.refusals.map(({ code }) => code)).toContain("changed-since");
    granted(await undoChangeSet(db, owner, saved.changeSetId as string));
    expect((await plantsInShort(db, id)).map(({ marks }) => marks)).toEqual([["1 keep"], [], ["3 keep"]]);
    expect(one?.intent).toBe("keep");
  });
});
