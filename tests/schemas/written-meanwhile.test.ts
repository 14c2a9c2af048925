import { expect, it } from "vitest";
import { joinedWithMeanwhile, stoodAs, stoodField } from "@/lib/schemas/written-meanwhile";

const opened = { year: "2024", notes: "by the stairs", holder: "Osk" };

it("a field that this hand left alone takes what another wrote meanwhile, line ends and blanks aside", () => {
  const sent = {
    year: "2023",
    notes: "by the stairs\r\n",
    holder: "Osk",
    reason: "misread",
    [stoodField]: stoodAs(opened),
  };
  const joined = joinedWithMeanwhile(sent, { ...opened, notes: "in the cellar" });
  expect(joined.refusals).toEqual([]);
  expect(joined.texts).toEqual({ year: "2023", notes: "in the cellar", holder: "Osk", reason: "misread" });
});

it("a field that both changed is asked about once, and stored when it is sent again", () => {
  const sent = { ...opened, notes: "on the shelf", [stoodField]: stoodAs(opened) };
  const now = { ...opened, notes: "in the cellar", holder: "Perrin" };
  const asked = joinedWithMeanwhile(sent, now);
  expect(asked.refusals.map(({ path, sentence }) => [path, sentence])).toEqual([
    [["notes"], '"in the cellar" was written here meanwhile; store again to put yours in its place, or take that over'],
  ]);
  const again = joinedWithMeanwhile(asked.typed, now);
  expect(again.refusals).toEqual([]);
  expect(again.texts).toEqual({ year: "2024", notes: "on the shelf", holder: "Perrin" });
});

it("what both wrote alike, what is not in the form, and a correction that does not say what stood are taken as they are", () => {
  const now = { ...opened, notes: "in the cellar" };
  const alike = { notes: "in the cellar", [stoodField]: stoodAs(opened) };
  expect(joinedWithMeanwhile(alike, now)).toMatchObject({ texts: { notes: "in the cellar" }, refusals: [] });
  expect(joinedWithMeanwhile(opened, now)).toMatchObject({ texts: opened, refusals: [] });
  for (const told of ["not JSON", '["year"]'])
    expect(joinedWithMeanwhile({ ...opened, [stoodField]: told }, now)).toMatchObject({ texts: opened, refusals: [] });
});
