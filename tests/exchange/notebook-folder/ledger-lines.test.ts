import { describe, expect, it } from "vitest";
import { added, changed, faultsOf, notebookOf, placesOf, read, small } from "./small-notebook";

/** A ledger of one lot. */
const ledger = (...lines: string[]) => ({
  ...small,
  "ledger.csv": ["lot,date,kind,grams", ...lines.map((line) => `Pea 1,${line}`), ""].join("\n"),
});

describe("a lot's balance", () => {
  it("below nothing by more than half a gram is a fault at the first line that passes it, once", () => {
    const texts = ledger("2001,received,10", "2002-01-01,given,10.5", "2003-01-01,given,0.2", "2004-01-01,given,5");
    expect(faultsOf(texts)).toEqual([
      "ledger.csv:4: grams: 0.2 g given on 2003-01-01 leave Pea 1 at -0.7 g; look for seed that came in and is not written down, or for a slip in the grams",
    ]);
  });

  it("may be in debt by half a gram, however the sums are rounded", () => {
    expect(faultsOf(ledger("2001,received,0.3", "2002,given,0.1", "2002,given,0.7"))).toEqual([]);
  });

  it("counts what comes in on the first possible day and what goes on the last", () => {
    expect(faultsOf(ledger("2001-03,given,5", "2001,received,5"))).toEqual([]);
    expect(faultsOf(ledger("2001-03-02,received,5", "2001-03-01,given,5"))).toHaveLength(1);
    expect(faultsOf(ledger("2001/..,received,5", "2001-02,given,5"))).toEqual([]);
    expect(faultsOf(ledger("2001-03-02,received,5", "2001-03~,given,5"))).toEqual([]);
  });

  it("takes lines of one day in the order of the file", () => {
    expect(faultsOf(ledger("2001-03-02,received,5", "2001-03-02,given,5"))).toEqual([]);
    expect(placesOf(ledger("2001-03-02,given,5", "2001-03-02,received,5"))).toEqual(["ledger.csv:2"]);
  });

  it("is set by a weighing on its last possible day", () => {
    expect(faultsOf(ledger("2001,received,5", "2002,weighed,3", "2003,given,3"))).toEqual([]);
    expect(placesOf(ledger("2001,received,5", "2002,weighed,3", "2003,given,4"))).toEqual(["ledger.csv:4"]);
    expect(faultsOf(ledger("2000,weighed,10", "2003,given,4"))).toEqual([]);
  });

  it.each(["sown", "tested", "given", "blended-out", "discarded"])("loses what was %s", (kind) => {
    expect(placesOf(ledger(`2001,${kind},1`))).toEqual(["ledger.csv:2"]);
  });

  it.each(["received", "harvested", "blended-in"])("gains what was %s", (kind) => {
    expect(faultsOf(ledger(`2001,${kind},1`, "2002,given,1"))).toEqual([]);
  });
});

describe("a debt that only follows from another fault", () => {
  it.each([
    ["a kind", "2001,recieved,10"],
    ["grams", "2001,received,ten"],
    ["a date", "spring,received,10"],
    ["a weighing", "2001,weighed,ten"],
  ])("is not repeated: %s", (_what, line) => {
    expect(placesOf(ledger(line, "2002,given,10"))).toEqual(["ledger.csv:2"]);
  });

  it("is not repeated where the seed came in for a lot that nobody knows", () => {
    const texts = ledger("2001,received,10", "2002,given,10");
    const stray = changed("ledger.csv", "Pea 1,2001", "Quince 7,2001", texts);
    expect(placesOf(stray)).toEqual(["ledger.csv:2"]);
  });

  it("is reported where the other fault cannot explain it", () => {
    expect(placesOf(ledger("2001,recieved,10", "2002,given,99"))).toEqual(["ledger.csv:2", "ledger.csv:3"]);
    expect(placesOf(ledger("2001,received,10", "2002,given,ten", "2003,given,99"))).toEqual([
      "ledger.csv:3",
      "ledger.csv:4",
    ]);
    const stray = added("ledger.csv", "Quince 7,2001,received,10", ledger("2001,received,10", "2002,given,30"));
    expect(placesOf(stray)).toEqual(["ledger.csv:3", "ledger.csv:4"]);
  });
});

describe("a later folder", () => {
  const existing = notebookOf(small);

  it("may not take more than the registry and the folder have together", () => {
    const texts = { "ledger.csv": "lot,date,kind,grams\nPea 3,2003,given,80\nPea 3,2004,given,1\n" };
    expect(placesOf(texts, existing)).toEqual(["ledger.csv:3"]);
    expect(faultsOf({ "ledger.csv": "lot,date,kind,grams\nPea 3,2003,given,80\n" }, existing)).toEqual([]);
  });

  it("is at fault in its own line where it makes an entry of the registry pass", () => {
    // The registry's 20 g given in January 2002 leave less than nothing once 90 g went before.
    const texts = { "ledger.csv": "lot,date,kind,grams\nPea 3,2001-12,given,90\n" };
    expect(placesOf(texts, existing)).toEqual(["ledger.csv:2"]);
  });

  it("may say again what the registry has, even of a lot in debt", () => {
    const inDebt = { ...existing, ledger: existing.ledger.filter(({ cells }) => cells.kind !== "harvested") };
    const lines = (small["ledger.csv"] ?? "").split("\n").filter((line) => !line.includes("harvested"));
    expect(faultsOf({ ...small, "ledger.csv": lines.join("\n") }, inDebt)).toEqual([]);
  });

  it("gives a line as often as it stands", () => {
    const twice = added("ledger.csv", "Pea 3,2002-01-10,given,20,The Seed Shelf,");
    const rows = read(twice, existing).notebook?.ledger ?? [];
    expect(rows).toHaveLength(4);
  });

  it("is compared only in the columns that it has", () => {
    const noted = notebookOf(changed("ledger.csv", "harvested,100,,", "harvested,100,,a fine year"));
    const rows = read(small, noted).notebook?.ledger ?? [];
    // The folder has the notes column, and nothing stands in it: another line.
    expect(rows.filter(({ id, cells }) => id === undefined && cells.notes === null)).toHaveLength(3);
    const withoutNotes = (small["ledger.csv"] ?? "").replace(/,[^,\n]*$/gm, "");
    const again = read({ ...small, "ledger.csv": withoutNotes }, noted).notebook?.ledger ?? [];
    expect(again.map(({ cells }) => cells.notes)).toEqual(["a fine year", null, null]);
  });
});
