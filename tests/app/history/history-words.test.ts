import { describe, expect, it } from "vitest";
import { countsInWords, undoInWords } from "@/app/history/_words/change-words";
import { fieldWords, valueWords } from "@/app/history/_words/field-words";
import { historyHref, readHistoryAddress } from "@/app/history/_words/history-filter";
import { lastDayOf } from "@/app/history/_words/last-day";
import { historyCsv } from "@/app/history/csv/history-csv";

const made = (noun: string, count: number) => ({ noun, action: "create" as const, count });

describe("a change set in words", () => {
  it("says what was made and changed, with plurals that people say", () => {
    expect(
      countsInWords([
        made("lot", 3),
        made("line of the type description", 2),
        { noun: "variety", action: "update", count: 1 },
      ]),
    ).toBe("3 lots and 2 lines of the type description made; 1 variety changed");
  });

  it("names the consequences of taking it back", () => {
    expect(undoInWords([made("lot", 1)])).toBe("1 lot is removed");
    expect(undoInWords([made("lot", 2), { noun: "variety", action: "update", count: 1 }])).toBe(
      "2 lots are removed; 1 variety is set back to what stood before",
    );
    expect(undoInWords([{ noun: "lot", action: "remove", count: 2 }])).toBe("2 lots are put back");
  });

  it("counts together what would make the line long", () => {
    const nouns = ["variety", "lot", "grow-out", "steward", "plot", "plant", "score"].map((noun) => made(noun, 2));
    expect(countsInWords(nouns)).toContain("and 4 records that belong to them made");
  });
});

describe("a field in words", () => {
  it("is what a person calls it", () => {
    expect(fieldWords("thousandSeedGrams")).toBe("thousand-seed weight, g");
    expect(fieldWords("holderId")).toBe("holder");
    expect(fieldWords("lastOpened")).toBe("last opened");
  });

  it("gives names for ids, and nothing where nothing stood", () => {
    const names = new Map([["id", "Aldis"]]);
    expect(valueWords("holderId", "id", names)).toBe("Aldis");
    expect(valueWords("holderId", "gone", names)).toBe("a record that is gone");
    expect(valueWords("note", null, names)).toBe("nothing");
    expect(valueWords("takenBack", true, names)).toBe("yes");
    expect(valueWords("amount", 0, names)).toBe("0");
    expect(valueWords("seedCoat", '{"pattern":"eye","ground":"cream","second":"wine"}', names)).toBe(
      "eye, wine on cream",
    );
  });
});

describe("the history's address", () => {
  it("keeps the filter and comes back as it was", () => {
    const filter = { words: "pea", kind: "entry", from: "2020-01-01" };
    const href = historyHref("/history", filter, 3);
    const back = readHistoryAddress(Object.fromEntries(new URLSearchParams(href.split("?")[1])));
    expect(back).toEqual({ filter: { ...filter, to: undefined }, part: 3 });
  });

  it("leaves out what is no day and no part", () => {
    expect(readHistoryAddress({ from: "May", part: "-2" })).toEqual({
      filter: { words: undefined, kind: undefined, from: undefined, to: undefined },
      part: 1,
    });
  });
});

describe("a day to look back to", () => {
  it("is the last day of a year or month as a person writes it", () => {
    expect([lastDayOf("2019"), lastDayOf("2019-02"), lastDayOf("2019-05-20")]).toEqual([
      "2019-12-31",
      "2019-02-28",
      "2019-05-20",
    ]);
    expect(lastDayOf("yesterday")).toBeNull();
  });
});

describe("the history as CSV", () => {
  it("has who, when, what and why, and no formula", () => {
    const set = {
      id: "x",
      number: 7,
      at: "2026-01-01T23:30:00.000Z",
      day: "2026-01-02",
      time: "00:30",
      kind: "entry",
      title: "=Lot",
      reason: null,
      actor: "the owner",
      undoneBy: null,
      undoes: null,
      counts: [made("lot", 1)],
    };
    expect(historyCsv([set]).split("\r\n")[1]).toBe(
      "7,2026-01-02,00:30,2026-01-01T23:30:00.000Z,entry,'=Lot,,the owner,1 lot made,,",
    );
  });
});
