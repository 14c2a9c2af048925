import { expect, it } from "vitest";
import { parseTypedDate } from "@/lib/science/dates/parse-typed-date";

it("a date that is typed may be as the registry writes it or in words, and is refused as it was typed", () => {
  const read = (text: string) => parseTypedDate(text, { hemisphere: "south", path: ["on"] });
  expect(read("1991~")).toMatchObject({ ok: true, value: { text: "1991~" } });
  // spring in the south is September to November
  expect(read("spring 1988")).toMatchObject({ ok: true, value: { text: "1988-21", first: "1988-09-01" } });
  expect(read("about 1960")).toMatchObject({ ok: true, value: { text: "1960~", approximate: true } });
  expect(read("30 February 1988")).toMatchObject({
    ok: false,
    refusals: [{ path: ["on"], given: "30 February 1988" }],
  });
  expect(read("last year")).toMatchObject({ ok: false, refusals: [{ given: "last year", code: "date-not-edtf" }] });
  const ofTwo = '"5/6/1987" can mean more than one day; it was 1987-06-05 or 1987-05-06: look, and write the right one';
  expect(read("5/6/1987")).toMatchObject({ ok: false, refusals: [{ sentence: ofTwo }] });
  expect(read("May-96")).toMatchObject({ ok: false, refusals: [{ code: "date-ambiguous", path: ["on"] }] });
});
