import { expect, test } from "vitest";
import { type BookedEntry, balanceOf, standingEntries } from "@/lib/registry/ledger/balance";

const entry = (id: string, kind: string, amount: number, on: string, more: Partial<BookedEntry> = {}): BookedEntry => ({
  id,
  kind,
  amount,
  unit: "g",
  onFirst: on,
  onLast: on,
  replacesId: null,
  takenBack: false,
  ...more,
});

// Expected balances are sums worked by hand.

test("what came in and what left make the balance, step by step", () => {
  const balance = balanceOf(
    [
      entry("1", "harvested", 200, "2019-10-01"),
      entry("2", "tested", 5, "2020-02-01"),
      entry("3", "sown", 40, "2020-05-01"),
    ],
    null,
  );
  expect(balance.steps.map((step) => step.balance)).toEqual([200, 195, 155]);
  expect(balance.grams).toBe(155);
});

test("a weighing sets the balance and shows what it changed", () => {
  const balance = balanceOf(
    [
      entry("1", "received", 100, "2019-01-01"),
      entry("2", "weighed", 92, "2020-01-01"),
      entry("3", "given", 2, "2020-02-01"),
    ],
    null,
  );
  expect(balance.steps.map((step) => step.change)).toEqual([100, -8, -2]);
  expect(balance.grams).toBe(90);
});

test("a vague date counts on its first day when seed comes in and on its last when it leaves", () => {
  const balance = balanceOf(
    [
      entry("1", "given", 10, "", { onFirst: "2020-01-01", onLast: "2020-12-31" }),
      entry("2", "received", 50, "", { onFirst: "2020-01-01", onLast: "2020-12-31" }),
      entry("3", "sown", 15, "2020-06-01"),
    ],
    null,
  );
  expect(balance.steps.map((step) => [step.entry.id, step.day, step.balance])).toEqual([
    ["2", "2020-01-01", 50],
    ["3", "2020-06-01", 35],
    ["1", "2020-12-31", 25],
  ]);
});

test("entries of one day stand in the order of entry, and a correction keeps the place of what it corrects", () => {
  const balance = balanceOf(
    [
      entry("1", "received", 30, "2020-05-01"),
      entry("2", "weighed", 28, "2020-05-01"),
      entry("3", "given", 8, "2020-05-01"),
      entry("4", "weighed", 29, "2020-05-01", { replacesId: "2" }),
    ],
    null,
  );
  expect(balance.steps.map((step) => step.entry.id)).toEqual(["1", "4", "3"]);
  expect(balance.grams).toBe(21);
});

test("an entry taken back counts no more, nor does the correction that takes it back", () => {
  const entries = [
    entry("1", "received", 30, "2020-05-01"),
    entry("2", "given", 8, "2020-06-01"),
    entry("3", "given", 8, "2020-06-01", { replacesId: "2", takenBack: true }),
  ];
  expect(standingEntries(entries).map(({ entry }) => entry.id)).toEqual(["1"]);
  expect(balanceOf(entries, null).grams).toBe(30);
});

test("seeds become grams by the lot's own thousand-seed weight", () => {
  // 250 seeds at 320 g a thousand are 80 g
  const balance = balanceOf(
    [entry("1", "received", 200, "2020-01-01"), entry("2", "sown", 250, "2020-05-01", { unit: "seeds" })],
    320,
  );
  expect(balance.grams).toBe(120);
});

test("seeds without a seed weight stay out of the balance and are named", () => {
  const balance = balanceOf(
    [entry("1", "received", 200, "2020-01-01"), entry("2", "sown", 250, "2020-05-01", { unit: "seeds" })],
    null,
  );
  expect(balance.grams).toBe(200);
  expect(balance.withoutWeight.map((each) => each.id)).toEqual(["2"]);
});

test("no entry at all is not known, which is not nothing", () => {
  expect(balanceOf([], null).grams).toBeNull();
  expect(balanceOf([entry("1", "received", 3, "2020-01-01", { unit: "ears" })], null).grams).toBeNull();
  expect(balanceOf([entry("1", "weighed", 0, "2020-01-01")], null).grams).toBe(0);
});
