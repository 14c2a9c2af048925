import { expect, test } from "vitest";
import { addressOfLotList, LotListQuerySchema } from "@/lib/schemas/lots/list-query";

test("an address says the whole list, and back again", () => {
  const address = "?filter=purp+pod&crop=pea&seed=some&sort=-grams&columns=number,variety,notes&page=3";
  const query = LotListQuerySchema.parse(Object.fromEntries(new URLSearchParams(address)));
  expect(query).toMatchObject({
    filter: "purp pod",
    crop: "pea",
    seed: "some",
    sort: { key: "grams", down: true },
    columns: ["number", "variety", "notes"],
    page: 3,
  });
  expect(addressOfLotList(query)).toBe(address);
  expect(addressOfLotList(query, { page: 1, crop: null, sort: null, columns: null })).toBe(
    "?filter=purp+pod&seed=some",
  );
});

test("an empty address is the usual list", () => {
  const query = LotListQuerySchema.parse({});
  expect(query).toMatchObject({ filter: null, sort: null, columns: null, page: 1 });
  expect(addressOfLotList(query)).toBe("");
});

test("what is not understood in an address is left out", () => {
  const query = LotListQuerySchema.parse({ seed: "plenty", sort: "weight", page: "-2", columns: "x,y", crop: 3 });
  expect(query).toMatchObject({ seed: null, sort: null, page: 1, columns: null, crop: null });
});

test("columns named in any order stand in the list's own order", () => {
  const query = LotListQuerySchema.parse({ columns: ["notes", "crop,number"] });
  expect(query.columns).toEqual(["number", "crop", "notes"]);
});

test("a name that a list was given goes with its address", () => {
  const query = LotListQuerySchema.parse({ seed: "some", named: `  For the spring\n sowing ${"x".repeat(100)}` });
  expect(query.named).toHaveLength(80);
  const named = LotListQuerySchema.parse({ seed: "some", named: " For the spring\n sowing " });
  expect(addressOfLotList(named)).toBe("?seed=some&named=For+the+spring+sowing");
  expect(addressOfLotList(named, { named: null })).toBe("?seed=some");
});
