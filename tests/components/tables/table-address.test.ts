import { expect, it } from "vitest";
import { type Column, readTableAddress, shownColumns, tableHref } from "@/components/tables";
import { nextSort } from "@/components/tables/table-address";

const columns: Column[] = [
  { key: "lot", name: "Lot", kind: "words" },
  { key: "year", name: "Year", kind: "count" },
  { key: "story", name: "Story", kind: "words", sortable: false, apart: true },
];

it("what stands in the address is what the table shows, and back", () => {
  const address = readTableAddress({ sort: "-year", columns: "story,lot", filter: "wren & co" }, columns);
  expect(address).toEqual({ sort: { key: "year", down: true }, columns: ["lot", "story"], filter: "wren & co" });
  const href = tableHref("/lots", address);
  expect(href).toBe("/lots?filter=wren+%26+co&sort=-year&columns=lot,story");
  const again = Object.fromEntries(new URLSearchParams(href.split("?")[1]));
  expect(readTableAddress(again, columns)).toEqual(address);
});

it("an address that names no column, or one that does not sort, is the table as at first", () => {
  expect(readTableAddress({ sort: "story", columns: "none" }, columns)).toEqual({
    sort: null,
    columns: null,
    filter: "",
  });
  expect(readTableAddress({ sort: "nothing" }, columns).sort).toBeNull();
  expect(tableHref("/lots", readTableAddress({}, columns))).toBe("/lots");
});

it("columns that stand apart are shown only when chosen", () => {
  expect(shownColumns(columns, readTableAddress({}, columns)).map((column) => column.key)).toEqual(["lot", "year"]);
  const chosen = readTableAddress({ columns: ["story", "lot"] }, columns);
  expect(shownColumns(columns, chosen).map((column) => column.key)).toEqual(["lot", "story"]);
});

it("the page's own parameters stay, its place in a long list does not", () => {
  const href = tableHref("/lots", readTableAddress({ sort: "year" }, columns), {
    variety: "x",
    page: "3",
    sort: "-lot",
  });
  expect(href).toBe("/lots?variety=x&sort=year");
});

it("a head that is pressed twice turns the order", () => {
  expect(nextSort(null, "year")).toEqual({ key: "year", down: false });
  expect(nextSort({ key: "year", down: false }, "year")).toEqual({ key: "year", down: true });
  expect(nextSort({ key: "year", down: true }, "year")).toEqual({ key: "year", down: false });
  expect(nextSort({ key: "lot", down: true }, "year")).toEqual({ key: "year", down: false });
});
