import { expect, it } from "vitest";
import { itemWords } from "@/app/season/_words/item-words";
import { waitingItems } from "@/lib/registry/season/waiting";
import { madeLot, madeRecords } from "@/tests/registry/season/made-records";

it("says who promised or owes an answer, since when, and what is apart for too long", () => {
  const transfer = {
    ...{ id: "t1", kind: "gift", varietyId: "v1", lotId: "l1", newLotId: "l2", fromStewardId: null, toStewardId: "s2" },
    ...{ toWords: null, on: "2023-04", onFirst: "2023-04-01", onLast: "2023-04-30", amount: 20, unit: "g", grams: 20 },
    replyDue: "2026-03-01",
  };
  const promise = {
    id: "p1",
    transferId: null,
    varietyId: "v1",
    lotId: null,
    stewardId: null,
    words: "will grow 100",
    due: "2026-03-09",
    keptOn: null,
  };
  const records = madeRecords({
    lots: [madeLot({ id: "l2", status: "quarantine", statusReason: "came back" })],
    transfers: [transfer],
    promises: [promise],
    names: new Map([["s2", "Rin"]]),
  });
  const said = new Map(
    waitingItems(records).map((item) => {
      const { sentence, hand } = itemWords(item, records);
      return [item.rule as string, [sentence, hand.href]];
    }),
  );
  expect(said.get("promise-overdue")).toEqual([
    "somebody promised: “will grow 100”, due 9 March 2026, 1 day ago.",
    "/sharing#promise-p1",
  ]);
  // from 1 to 10 March are nine days
  expect(said.get("reply-due")).toEqual([
    "Rin got seed of it April 2023; an answer was due 1 March 2026, 9 days ago.",
    "/sharing/t1#answer",
  ]);
  expect(said.get("quarantine-long")).toEqual([
    "in quarantine since 30 April 2023: came back; two seasons are past.",
    "/lots/l2/status",
  ]);
});
