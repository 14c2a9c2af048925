import { expect, it } from "vitest";
import type { Database } from "@/lib/db";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { correctTransfer } from "@/lib/registry/transfers/correct-transfer";
import { takeInSeed } from "@/lib/registry/transfers/take-in-seed";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { correctTransferSchema, takeInSchema } from "@/lib/schemas/transfers/transfer";
import { onEveryEngine } from "../../../setup/engines";
import { granted } from "../../../setup/registry";
import { aSteward } from "../../lots/lots-in-tests";
import { aJarOfBeans, give, owner, today } from "../../transfers/transfers-in-tests";

/** What each entry of the ledger is a side of, in words that hold in any registry. */
async function sides(db: Database): Promise<string[]> {
  const entries = await db.read.ledgerEntry.findMany({
    where: { takenBack: false, replacedBy: null },
    include: { lot: true, transfer: { include: { lot: true, newLot: true, to: { include: { person: true } } } } },
  });
  return entries
    .map(({ lot, kind, amount, transfer }) => {
      const of = transfer && `${transfer.kind} ${transfer.lot.number} > ${transfer.newLot?.number ?? transfer.toWords}`;
      return `${lot.number} ${kind} ${amount}: ${of ?? "no transfer"} ${transfer?.to?.person?.name ?? ""}`;
    })
    .sort();
}

onEveryEngine("transfers that go out in a folder", (fresh) => {
  it("come in again with both sides of the ledger and their promises, and go out as the same bytes", async () => {
    const first = await fresh();
    const { lotId } = await aJarOfBeans(first);
    await aSteward(first, "Ana Quernby");
    // alike in all but the hand, on one day
    granted(await give(first, lotId, { number: "Ham 3 a", holder: "Ana Quernby", amount: "10" }));
    granted(await give(first, lotId, { number: "Ham 3 r", amount: "10" }));
    granted(await give(first, lotId, { toWords: "a reader", amount: "10" }));
    const loan = { kind: "loan", promise: "brings some back", replyDue: "2028" };
    granted(await give(first, lotId, { ...loan, number: "Ham 3 l", amount: "10" }));
    const second = granted(await give(first, lotId, { ...loan, number: "Ham 3 m", amount: "10", promise: "grows 40" }));
    const right = { on: "2026-11-02", amount: "12", unit: "g", reason: "weighed again" };
    const { transferId } = second.value;
    granted(
      await correctTransfer(first, owner, transferId, granted(parseForm(correctTransferSchema("north"), right)), today),
    );
    const taken = {
      kind: "gift",
      on: "2026-11-05",
      variety: "Hamble Long",
      unit: "seeds",
      amount: "30",
      thousandSeedGrams: "500",
    };
    const story = { giverWords: "a cousin", story: "from the pear bed", number: "Hill 1", holder: "Oda Fenlight" };
    granted(await takeInSeed(first, owner, granted(parseForm(takeInSchema("north"), { ...taken, ...story })), today));

    const before = await sides(first);
    expect(before).toEqual([
      "Ham 3 a received 10: gift Ham 3 > Ham 3 a Ana Quernby",
      "Ham 3 given 10: gift Ham 3 > Ham 3 a Ana Quernby",
      "Ham 3 given 10: gift Ham 3 > Ham 3 r Rin Olderwick",
      "Ham 3 given 10: gift Ham 3 > a reader ",
      "Ham 3 given 10: loan Ham 3 > Ham 3 l Rin Olderwick",
      "Ham 3 given 12: loan Ham 3 > Ham 3 m Rin Olderwick",
      "Ham 3 harvested 220: no transfer ",
      "Ham 3 l received 10: loan Ham 3 > Ham 3 l Rin Olderwick",
      "Ham 3 m received 12: loan Ham 3 > Ham 3 m Rin Olderwick",
      "Ham 3 r received 10: gift Ham 3 > Ham 3 r Rin Olderwick",
      "Hill 1 received 30: gift Hill 1 > Hill 1 Oda Fenlight",
    ]);
    const out = await exportFolder(first);
    const again = await fresh();
    granted(await importFolder(again, owner, out));
    expect(await sides(again)).toEqual(before);
    const promises = await again.read.promise.findMany({ include: { transfer: { include: { newLot: true } } } });
    expect(promises.map((each) => [each.words, each.transfer?.newLot?.number]).sort()).toEqual([
      ["brings some back", "Ham 3 l"],
      ["grows 40", "Ham 3 m"],
    ]);
    expect([...(await exportFolder(again))].map(([file, bytes]) => [file, Buffer.from(bytes).toString()])).toEqual(
      [...out].map(([file, bytes]) => [file, Buffer.from(bytes).toString()]),
    );
    expect(granted(await importFolder(again, owner, out)).value.nothingNew).toBe(true);
  });

  it("are refused where a promise names no transfer", async () => {
    const db = await fresh();
    const files = { "promises.csv": "words,transfer\nwill grow 30,loan Ham 3 2026\n" };
    const bytes = new Map(Object.entries(files).map(([name, text]) => [name, new TextEncoder().encode(text)]));
    const outcome = await importFolder(db, owner, bytes);
    expect(outcome.ok ? [] : outcome.refusals.map((each) => each.path.join(":"))).toEqual(["promises.csv:2:transfer"]);
  });
});
