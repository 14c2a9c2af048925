import { expect, test } from "vitest";
import type { StoredTransfer } from "@/lib/registry/season/records";
import { readSharing } from "@/lib/registry/transfers/read-sharing";
import { readTransfer } from "@/lib/registry/transfers/read-transfer";
import { sharingByYear } from "@/lib/registry/transfers/sharing-by-year";
import { takeInSeed } from "@/lib/registry/transfers/take-in-seed";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { takeInSchema } from "@/lib/schemas/transfers/transfer";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aLot, anEntry, aVariety } from "../lots/lots-in-tests";
import { aJarOfBeans, give, owner, settings, today } from "./transfers-in-tests";

const transfer = (id: string, kind: string, year: string, more: Partial<StoredTransfer> = {}): StoredTransfer => ({
  ...{ id, kind, varietyId: "v1", lotId: "l1", newLotId: "l2", fromStewardId: "s1", toStewardId: "s2", toWords: null },
  ...{ on: year, onFirst: `${year}-01-01`, onLast: `${year}-12-31`, amount: 10, unit: "g", grams: 10, replyDue: null },
  ...more,
});

test("a year tells how much went out to how many hands, what came back and what came in, and what has no weight", () => {
  const years = sharingByYear([
    transfer("a", "gift", "2024"),
    transfer("b", "gift", "2024", { varietyId: "v2", grams: 5 }),
    transfer("c", "gift", "2024", {
      toStewardId: null,
      newLotId: null,
      toWords: "a reader",
      unit: "packets",
      grams: null,
    }),
    transfer("d", "gift", "2024", { toStewardId: null, newLotId: null, toWords: "a reader" }),
    transfer("e", "return", "2024"),
    transfer("f", "exchange", "2024", { lotId: "l9", newLotId: "l9" }),
    transfer("g", "loan", "2025"),
    transfer("h", "safety duplicate", "2025", { toStewardId: "s1", newLotId: null }),
  ]);
  // by hand: four gifts to Rin (once) and two readers, 10 + 5 + 10 g and one without a weight
  expect(
    years.map(({ year, outAll, hands, varieties, grams, withoutWeight, cameBack, cameIn }) => [
      ...[year, outAll, hands, varieties, grams, withoutWeight, cameBack, cameIn],
    ]),
  ).toEqual([
    ["2025", 1, 1, 1, 10, 0, 0, 0],
    ["2024", 4, 3, 2, 25, 1, 1, 1],
  ]);
  expect(years[1]?.out).toEqual({ gift: 4 });
});

onEveryEngine("sharing", (fresh) => {
  test("shows what is out until it comes back, what waits in quarantine, and sole copies first", async () => {
    const db = await fresh();
    const { lotId, oda } = await aJarOfBeans(db);
    const lone = await aVariety(db, "Cinder Pea", "pea");
    const cinder = await aLot(db, lone, { number: "Cin 1", year: "2025", holderId: oda });
    await anEntry(db, cinder, "harvested", 30, "2026-08-01");
    const loan = { kind: "loan", promise: "brings 20 g back", replyDue: "2026-11-10", on: "2026-09-01" };
    const lent = granted(await give(db, lotId, loan));
    granted(await give(db, lotId, { kind: "loan", promise: "grows 30", replyDue: "2029", on: "2026-09-02" }));

    const out = await readSharing(db, settings, today);
    expect(out.loans.map((each) => [each.due, each.late, each.promises[0]?.words])).toEqual([
      ["2026-11-10", true, "brings 20 g back"],
      ["2029", false, "grows 30"],
    ]);
    expect(
      out.promises.map((each) => [each.promise.words, each.late, each.transfer?.id === lent.value.transferId]),
    ).toEqual([
      ["brings 20 g back", true, true],
      ["grows 30", false, false],
    ]);
    expect(out.held.map((each) => [each.variety.name, each.places, each.confirmed])).toEqual([
      ["Cinder Pea", 1, 1],
      ["Hamble Long", 2, 2],
    ]);

    const taken = {
      kind: "return",
      on: "2026-11-20",
      variety: "Hamble Long",
      unit: "g",
      amount: "15",
      nothingTold: "yes",
    };
    const back = {
      ...taken,
      giver: "Rin Olderwick",
      holder: "Oda Fenlight",
      answers: lent.value.transferId,
      keepsPromise: "yes",
    };
    const came = granted(await takeInSeed(db, owner, granted(parseForm(takeInSchema("north"), back)), today));
    const after = await readSharing(db, settings, today);
    expect(after.loans.map((each) => each.promises[0]?.words)).toEqual(["grows 30"]);
    expect(after.promises.map((each) => each.promise.words)).toEqual(["grows 30"]);
    expect(after.quarantine.map((each) => [each.lot.id, each.came?.kind, each.long])).toEqual([
      [came.value.lotId, "return", false],
    ]);
    expect(after.years.map((each) => [each.year, each.outAll, each.cameBack, each.grams])).toEqual([
      ["2026", 2, 1, 40],
    ]);
  });

  test("one transfer is read with its lots, hands, both sides and the change set that wrote it", async () => {
    const db = await fresh();
    const { lotId } = await aJarOfBeans(db);
    const done = granted(await give(db, lotId, { number: "Ham 3 r", promise: "grows 30", replyDue: "2028" }));
    const read = await readTransfer(db, done.value.transferId);
    expect(read).toMatchObject({
      ...{ from: "Oda Fenlight", to: "Rin Olderwick", newNumber: "Ham 3 r", changeSetId: done.changeSetId },
      lot: { number: "Ham 3", variety: "Hamble Long" },
      sides: [
        { number: "Ham 3", kind: "given", amount: 20 },
        { number: "Ham 3 r", kind: "received", amount: 20 },
      ],
      promises: [{ words: "grows 30", due: "2028" }],
    });
    expect(await readTransfer(db, "no-such")).toBeNull();
  });
});
