import { expect, test } from "vitest";
import { returnsOfLoans, type TransferInTime } from "@/lib/registry/transfers/loans";

const transfer = (id: string, kind: string, day: string, more: Partial<TransferInTime> = {}): TransferInTime => ({
  ...{ id, kind, varietyId: "v", lotId: "L1", newLotId: "L2", fromStewardId: "oda", toStewardId: "rin" },
  ...{ onFirst: day, onLast: day },
  ...more,
});
const back = (id: string, day: string, more: Partial<TransferInTime> = {}) =>
  transfer(id, "return", day, { lotId: "L9", newLotId: "L10", fromStewardId: "rin", toStewardId: "oda", ...more });
const pairs = (...all: TransferInTime[]) =>
  Object.fromEntries([...returnsOfLoans(all)].map(([loan, { id }]) => [loan, id]));

test("a return answers the oldest open loan between the same two hands", () => {
  const loans = [
    transfer("a", "loan", "2020-03-01"),
    transfer("b", "loan", "2021-03-01", { lotId: "L3", newLotId: "L4" }),
  ];
  expect(pairs(...loans, back("r", "2022-01-01"))).toEqual({ a: "r" });
  expect(pairs(...loans, back("r", "2022-01-01"), back("s", "2023-01-01"))).toEqual({ a: "r", b: "s" });
});

test("a return of the very lot goes before the oldest", () => {
  const loans = [
    transfer("a", "loan", "2020-03-01"),
    transfer("b", "loan", "2021-03-01", { lotId: "L3", newLotId: "L4" }),
  ];
  expect(pairs(...loans, back("r", "2022-01-01", { lotId: "L4", fromStewardId: null }))).toEqual({ b: "r" });
});

test("nothing answers a loan that was lent later, of another variety, by another hand, or a gift", () => {
  const loan = transfer("a", "loan", "2022-03-01");
  expect(pairs(loan, back("r", "2021-01-01"))).toEqual({});
  expect(pairs(loan, back("r", "2023-01-01", { varietyId: "w" }))).toEqual({});
  expect(pairs(loan, back("r", "2023-01-01", { fromStewardId: "ana" }))).toEqual({});
  expect(pairs({ ...loan, kind: "gift" }, back("r", "2023-01-01"))).toEqual({});
  expect(pairs({ ...loan, toStewardId: null }, back("r", "2023-01-01", { fromStewardId: null }))).toEqual({});
});
