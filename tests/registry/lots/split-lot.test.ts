import { uuidv7 } from "uuidv7";
import { beforeEach, expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { takeBackLedgerEntry } from "@/lib/registry/ledger/correct-ledger-entry";
import { splitLot } from "@/lib/registry/lots/split-lot";
import { splitSchema } from "@/lib/schemas/lots/blend-lots";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aLot, anEntry, aSteward, aVariety } from "./lots-in-tests";

const owner = ownerHere();

onEveryEngine("a split", (fresh) => {
  let db: Database;
  let lotId: string;
  let oda: string;

  beforeEach(async () => {
    db = await fresh();
    oda = await aSteward(db, "Oda Fenlight");
    lotId = await aLot(db, await aVariety(db), { number: "Ham 3", holderId: oda, thousandSeedGrams: 500 });
    await anEntry(db, lotId, "harvested", 100, "2019-10-10");
  });

  const split = (typed: Record<string, string>, id = lotId) =>
    splitLot(
      db,
      owner,
      id,
      granted(
        parseForm(splitSchema("north"), {
          amount: "25",
          unit: "g",
          on: "2026-03-01",
          holder: "oda fenlight",
          ...typed,
        }),
      ),
    );

  test("a copy of one's own goes into a container at its place", async () => {
    const { value } = granted(await split({ place: "The other house", container: "jar", notes: "for the bad year" }));
    const made = await db.read.lot.findUniqueOrThrow({
      where: { id: value.lotId },
      include: { containers: { include: { place: true } } },
    });
    expect(made).toMatchObject({ holderId: oda, kind: "split", notes: "for the bad year" });
    expect(made.containers).toMatchObject([
      { kind: "jar", amount: 25, unit: "g", place: { name: "The other house", stewardId: oda } },
    ]);
    const changes = await db.read.changeSet.findMany({ select: { title: true } });
    expect(changes.at(-1)?.title).toBe(`Lot Ham 3: part of it as lot ${value.number}`);
  });

  test("somebody who is new here holds it, and goes again when the split is taken back", async () => {
    const done = granted(await split({ holder: "", newHolder: "Rin Olderwick", amount: "50", unit: "seeds" }));
    expect(await db.read.person.count()).toBe(2);
    expect(await db.read.container.count()).toBe(0);
    granted(await undoChangeSet(db, owner, done.changeSetId ?? ""));
    expect([await db.read.person.count(), await db.read.lot.count(), await db.read.ledgerEntry.count()]).toEqual([
      1, 1, 1,
    ]);
  });

  test("neither side of it is corrected alone; another entry of the lot still is", async () => {
    granted(await split({}));
    const sides = await db.read.ledgerEntry.findMany({ where: { otherLotId: { not: null } } });
    expect(sides).toHaveLength(2);
    for (const { id } of sides) {
      const back = await takeBackLedgerEntry(db, owner, id, "slip");
      expect(back.ok ? [] : back.refusals.map(({ code, path }) => [code, ...path])).toEqual([["side-of-act", "entry"]]);
    }
    const harvested = await db.read.ledgerEntry.findFirstOrThrow({ where: { kind: "harvested" } });
    await anEntry(db, lotId, "harvested", 40, "2019-10-11");
    granted(await takeBackLedgerEntry(db, owner, harvested.id, "written twice"));
  });

  test("a holder nobody knows and more than the jar holds are refused together, and nothing is written", async () => {
    const outcome = await split({ holder: "Oda Fenligt", amount: "101" });
    expect(outcome.ok ? [] : outcome.refusals.map((each) => each.path.join("."))).toEqual(["holder", "amount"]);
    const unknown = await split({}, uuidv7());
    expect(unknown.ok ? [] : unknown.refusals.map((each) => each.code)).toEqual(["unknown"]);
    expect([await db.read.lot.count(), await db.read.ledgerEntry.count()]).toEqual([1, 1]);
  });
});

test("what is typed wrongly is refused at its field", () => {
  const outcome = parseForm(splitSchema("north"), { amount: "a pinch", unit: "ears", on: "" });
  expect(outcome.ok ? [] : outcome.refusals.map((each) => each.path.join(".")).sort()).toEqual([
    "amount",
    "on",
    "unit",
  ]);
});
