import { describe, expect, it } from "vitest";
import { readAmount } from "@/lib/exchange/notebook-lines/amount";
import { readCount } from "@/lib/exchange/notebook-lines/count";
import { readDistance } from "@/lib/exchange/notebook-lines/distance";
import { lineOf } from "@/lib/exchange/notebook-lines/line";
import { freeName } from "@/lib/exchange/notebook-lines/lot-names";
import { readNumber } from "@/lib/exchange/notebook-lines/number-words";
import { find, pattern } from "@/lib/exchange/notebook-lines/pattern";
import { tokenise } from "@/lib/exchange/notebook-lines/tokens";
import { readYear } from "@/lib/exchange/notebook-lines/year";

const line = (text: string, previousYear: number | null = null) => lineOf(text, 2026, previousYear);

describe("tokens", () => {
  it("keep numbers, dates, short years and possessives whole", () => {
    expect(
      tokenise("'94, my aunt's 1,200 seeds (1.5 kg) 20/5/87").map((token) => `${token.kind} ${token.text}`),
    ).toEqual([
      "short-year '94",
      "mark ,",
      "word my",
      "word aunt's",
      "number 1,200",
      "word seeds",
      "mark (",
      "number 1.5",
      "word kg",
      "mark )",
      "date 20/5/87",
    ]);
    expect(tokenise("1,5 kg")[0]?.number).toBe(1.5);
    expect(tokenise("2½ oz")[0]?.number).toBe(2.5);
    expect(tokenise("1994,40").map((token) => token.text)).toEqual(["1994", ",", "40"]);
  });
});

describe("number words", () => {
  it.each([
    ["forty", 40],
    ["twenty-five", 25],
    ["twenty five", 25],
    ["two dozen", 24],
    ["a dozen", 12],
    ["half a dozen", 6],
    ["a score", 20],
    ["a hundred", 100],
    ["two hundred and ten", 210],
    ["a hundred and twenty", 120],
    ["two thousand", 2000],
    ["fourty", 40],
  ])("%s is %i", (text, value) => {
    const { tokens } = line(text);
    expect(readNumber(tokens, 0)).toEqual({ end: tokens.length, value });
  });

  it("are not read from an article or a name", () => {
    expect(readNumber(line("a jar").tokens, 0)).toBeNull();
    expect(readNumber(line("often").tokens, 0)).toBeNull();
  });
});

describe("counts", () => {
  it.each([
    ["40", 40, 40, 40, false],
    ["about 40", 40, 40, 40, true],
    ["c. 40", 40, 40, 40, true],
    ["~40", 40, 40, 40, true],
    ["30-40", null, 30, 40, false],
    ["30 to 40", null, 30, 40, false],
    ["five or six", null, 5, 6, false],
    ["between 30 and 40", null, 30, 40, false],
    ["over 40", null, 40, null, false],
    ["40+", null, 40, null, false],
    ["up to 40", null, null, 40, false],
    ["fewer than 40", null, null, 40, false],
    ["40 or so", 40, 40, 40, true],
    ["40-odd", 40, 40, 40, true],
    ["40ish", 40, 40, 40, true],
    ["a couple", 2, 2, 2, true],
    ["a handful", null, null, null, false],
    ["about 30-40", null, 30, 40, true],
  ])("%s", (text, value, low, high, approximate) => {
    const read = readCount(line(text), 0);
    expect(read?.count).toEqual({ words: text, value, low, high, approximate });
  });

  it("is not a range where the second number is not larger", () => {
    expect(readCount(line("40-30"), 0)?.count).toMatchObject({ value: 40, words: "40" });
  });
});

describe("amounts", () => {
  // pound and ounce: 453.59237 g exactly and a sixteenth of it (international agreement of 1959)
  it.each([
    ["300 g", 300, "g", 300],
    ["2 kg", 2, "kg", 2000],
    ["3 oz", 3, "oz", 85.048569375],
    ["1 lb", 1, "lb", 453.59237],
    ["2 lb 4 oz", 2.25, "lb", 1020.5828325],
    ["half a pound", 0.5, "lb", 226.796185],
    ["a quarter of an ounce", 0.25, "oz", 7.08738078125],
    ["300g", 300, "g", 300],
  ])("%s", (text, value, unit, grams) => {
    const amount = readAmount(line(text), 0)?.amount;
    expect(amount).toMatchObject({ value, givenUnit: unit, unit: "g" });
    expect(amount?.grams?.value).toBeCloseTo(grams, 9);
  });

  it("in seeds, ears and packets have no grams, in vessels words alone", () => {
    expect(readAmount(line("about 500 seeds"), 0)?.amount).toMatchObject({
      value: 500,
      approximate: true,
      unit: "seeds",
      grams: null,
    });
    expect(readAmount(line("a packet of seed"), 0)?.amount).toMatchObject({
      value: 1,
      unit: "packets",
      words: "a packet of seed",
    });
    expect(readAmount(line("a jam jar full"), 0)?.amount).toMatchObject({ value: null, unit: null, grams: null });
    expect(readAmount(line("two jars"), 0)?.amount).toMatchObject({ value: null, words: "two jars" });
    expect(readAmount(line("40 plants"), 0)).toBeNull();
  });
});

describe("distances", () => {
  it.each([
    ["80 m", 80],
    ["half a mile", 804.672],
    ["300 yards", 274.32],
    ["a mile", 1609.344],
    ["2 km", 2000],
    ["60 ft", 18.288],
  ])("%s", (text, metres) => {
    expect(readDistance(line(text), 0)?.distance.metres).toBeCloseTo(metres, 9);
  });

  it("in a range have no single number", () => {
    expect(readDistance(line("80-100 m"), 0)?.distance).toEqual({ words: "80-100 m", metres: null });
  });
});

describe("years", () => {
  it.each([
    ["1994", "1994"],
    ["about 1960", "1960~"],
    ["maybe about 1960", "1960%"],
    ["perhaps 1960", "1960?"],
    ["1960 or so", "1960~"],
    ["'07", "2007"],
    ["'94", "1994"],
    ["the eighties", "198X"],
    ["mid-eighties", "[1984..1986]"],
    ["early 1980s", "[1980..1983]"],
    ["late '70s", "[1977..1979]"],
    ["80s", "198X"],
    ["1987-91", "1987/1991"],
    ["1987 to 91", "1987/1991"],
    ["1987–1991", "1987/1991"],
    ["1994-5", "1994/1995"],
    ["1987-05", "1987-05"],
    ["1987/1991", "1987/1991"],
    ["[1987..1991]", "[1987..1991]"],
    ["198X", "198X"],
    ["1987-XX", "1987-XX"],
    ["1991~", "1991~"],
    ["autumn 1990", "1990-23"],
    ["Sept. 1990", "1990-09"],
    ["May 88", "1988-05"],
    ["20th May 1987", "1987-05-20"],
    ["May 20, 1987", "1987-05-20"],
    ["5/1990", "1990-05"],
  ])("%s is %s", (text, edtf) => {
    expect(readYear(line(text), 0)?.edtf).toBe(edtf);
  });

  it.each(["40", "94", "1200", "30-40 plants", "31 February 1990", "may", "the year of the flood", "3000"])(
    "%s is none",
    (text) => {
      expect(readYear(line(text), 0)).toBeNull();
    },
  );

  it("counted from the line before need that line", () => {
    expect(readYear(line("next year", 1994), 0)).toMatchObject({ edtf: "1995", relative: true, certainty: "likely" });
    expect(readYear(line("three years later", 1994), 0)?.edtf).toBe("1997");
    expect(readYear(line("next year"), 0)).toBeNull();
  });
});

describe("patterns", () => {
  it("take the longest reading and give what their slots took up", () => {
    const shape = pattern("(kept|saved) (the best)? {count} <plants>?");
    expect(find(shape, line("kept the best 12 plants"), 0)).toMatchObject({ end: 5, words: "kept the best 12 plants" });
    expect(find(shape, line("kept 12"), 0)?.count()?.value).toBe(12);
    expect(find(shape, line("kept none"), 0)).toBeNull();
  });

  it("hold an end with $ and a beginning with ^", () => {
    const shape = pattern("^ saved {count} $");
    expect(find(shape, line("saved 12, and"), 0)).not.toBeNull();
    expect(find(shape, line("saved 12 hens"), 0)).toBeNull();
    expect(find(shape, line("we saved 12"), 1)).toBeNull();
  });

  it("with a fault are refused when they are made", () => {
    expect(() => pattern("(kept")).toThrow(RangeError);
    expect(() => pattern("{colour}")).toThrow(RangeError);
    expect(() => pattern("<colours>")).toThrow(RangeError);
  });
});

describe("names of lots", () => {
  it("go on with letters where one is taken", () => {
    expect(freeName("1994", new Set())).toBe("1994");
    expect(freeName("1994", new Set(["1994"]))).toBe("1994 b");
    const taken = new Set(["1994"]);
    for (let step = 0; step < 27; step += 1) taken.add(freeName("1994", taken));
    expect(taken.size).toBe(28);
    expect([...taken].at(-1)).toBe("1994 ab");
  });
});
