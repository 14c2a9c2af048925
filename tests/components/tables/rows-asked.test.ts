import { expect, it } from "vitest";
import { type Row, rowsAsked } from "@/components/tables";

const row = (id: string, year: number | null, name: string): Row => ({ id, cells: { year, name } });
const rows = [
  row("a", 1994, "Wren Pea"),
  row("b", null, "Mere Pea"),
  row("c", 2003, "Hollow Oat"),
  row("d", 1987, "Mère Rye"),
];
const ids = (asked: readonly Row[]) => asked.map((each) => each.id).join("");

it("rows are sorted up and down, and what is unknown stands last either way", () => {
  expect(ids(rowsAsked(rows, { sort: { key: "year", down: false }, filter: "" }))).toBe("dacb");
  expect(ids(rowsAsked(rows, { sort: { key: "year", down: true }, filter: "" }))).toBe("cadb");
});

it("rows without a wish for an order keep their own", () => {
  expect(ids(rowsAsked(rows, { sort: null, filter: "" }))).toBe("abcd");
});

it("every word that is looked for must be found, whatever its accents or letter case", () => {
  expect(ids(rowsAsked(rows, { sort: null, filter: "mere" }))).toBe("bd");
  expect(ids(rowsAsked(rows, { sort: { key: "name", down: true }, filter: "PEA" }))).toBe("ab");
  expect(ids(rowsAsked(rows, { sort: null, filter: "pea rye" }))).toBe("");
});
