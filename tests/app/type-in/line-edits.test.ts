import { describe, expect, it } from "vitest";
import { draftOfLines, emptyDraft, isEmptyDraft } from "@/app/type-in/_lines/draft-of-lines";
import { fixed, parted, pasted, removed, retyped } from "@/app/type-in/_lines/line-edits";
import { typed } from "./typed-lines";

const words = (lines: readonly { words: string }[]) => lines.map((line) => line.words);

describe("a column of lines", () => {
  it("parts at the caret with Enter", () => {
    const edited = parted(typed(["1994, 40 plants 1995, 30 plants"]), "0", 16, "new");
    expect(words(edited.lines)).toEqual(["1994, 40 plants", "1995, 30 plants"]);
    expect(edited.focus).toEqual({ id: "new", at: 0 });
  });

  it("loses an empty line with Backspace, but never the last", () => {
    const edited = removed(typed(["1994", ""]), "1");
    expect([words(edited.lines), edited.focus]).toEqual([["1994"], { id: "0", at: 4 }]);
    expect(removed(typed([""]), "0").lines).toHaveLength(1);
  });

  it("takes a whole notebook that is pasted, a line each, empty ones left out", () => {
    const edited = pasted(
      typed(["19", "2001"]),
      "0",
      { from: 2, to: 2 },
      "94, 40 plants\r\n\r\n1995, 30\n1996, 20",
      (place) => `new ${place}`,
    );
    expect(words(edited.lines)).toEqual(["1994, 40 plants", "1995, 30", "1996, 20", "2001"]);
    expect(edited.focus).toEqual({ id: "new 1", at: 8 });
    expect(words(pasted(typed(["1994, plants"]), "0", { from: 6, to: 6 }, "40 ", () => "x").lines)).toEqual([
      "1994, 40plants",
    ]);
  });

  it("keeps fixes while it is typed on, and lets go of one that is taken away", () => {
    const once = fixed(typed(["1994, 40 plants"]), "0", "plantsStanding", { text: "45" });
    expect(retyped(once, "0", "1994, 41 plants")[0]?.fixes.plantsStanding).toEqual({ text: "45" });
    expect(fixed(once, "0", "plantsStanding", null)[0]?.fixes).toEqual({});
  });
});

describe("a draft of lines", () => {
  it("is read again as it was kept, and what is none is left", () => {
    const draft = { ...emptyDraft, lines: typed(["1994"]), holder: "Perrin" };
    expect(draftOfLines(JSON.parse(JSON.stringify(draft)))).toEqual(draft);
    expect([draftOfLines(null), draftOfLines({ lines: [] }), draftOfLines({ lines: [{ words: 3 }] })]).toEqual([
      null,
      null,
      null,
    ]);
    expect([isEmptyDraft(emptyDraft), isEmptyDraft(draft)]).toEqual([true, false]);
  });
});
