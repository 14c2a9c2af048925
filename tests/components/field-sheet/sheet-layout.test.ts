import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type SheetAsk, sheetLayout } from "@/components/field-sheet/sheet-layout";

const asked = (change: Partial<SheetAsk>): SheetAsk => ({
  ...{ paper: "a4", lie: null, rows: 60, traits: 4, cells: true },
  ...change,
});

function laid(change: Partial<SheetAsk>) {
  const layout = sheetLayout(asked(change));
  if (!layout) throw new Error("too many traits");
  return layout;
}

// By hand. A4 upright leaves 297 - 18 (margins) - 27 (head) - 15 (head of the table) = 237 mm for rows, 203 with the foot; Letter 279.4: 219.4
// and 185.4. With rows of 7.1 mm A4 has 33 + 28 = 61 rows on two pages, with 7.2 mm 32 + 28 = 60, with 7.3 mm 32 + 27 = 59. Letter has with 6.6 mm
// 33 + 28 = 61, with 6.7 mm 32 + 27 = 59.
describe("60 plants", () => {
  it("lie on two pages of A4, rows as high as can be", () => {
    const { pages, rowHeight, lie } = laid({});
    expect([lie, rowHeight, pages]).toEqual([
      "portrait",
      7.2,
      [
        { from: 0, to: 31 },
        { from: 32, to: 59 },
      ],
    ]);
  });

  it("lie on two pages of Letter", () => {
    const { pages, rowHeight } = laid({ paper: "letter" });
    expect([rowHeight, pages]).toEqual([
      6.6,
      [
        { from: 0, to: 32 },
        { from: 33, to: 59 },
      ],
    ]);
  });
});

describe("a field sheet", () => {
  // By hand: 192 - 15 (tag) - 21 (intent) - 12 (cell) - 40 (words) = 104 mm for traits: 7 of 14 mm. On the long side 191 mm: 17 of 11 mm.
  it("lies on its long side where the traits find no room upright", () => {
    expect(laid({ traits: 7 }).lie).toBe("portrait");
    expect(laid({ traits: 8 }).lie).toBe("landscape");
    expect(laid({ traits: 8, lie: "portrait" }).columns.trait).toBe(13);
    expect(laid({ traits: 17 }).lie).toBe("landscape");
    expect(sheetLayout(asked({ traits: 18 }))).toBeNull();
    expect(sheetLayout(asked({ traits: 10, lie: "portrait" }))).toBeNull();
  });

  it("has rows of 9 mm at most, and boxes at the foot of a page that has rows", () => {
    expect(laid({ rows: 3 })).toMatchObject({ rowHeight: 9, pages: [{ from: 0, to: 2 }] });
    // 22 rows of 9 mm find room above the foot; of 32 rows the lowest (6.5 mm: 36 and 31) make two pages already
    expect(laid({ rows: 22 }).pages).toEqual([{ from: 0, to: 21 }]);
    expect(laid({ rows: 32 }).pages).toEqual([
      { from: 0, to: 25 },
      { from: 26, to: 31 },
    ]);
  });

  it("has every row once, in order, and keeps within the page", () => {
    const asks = fc.record({
      paper: fc.constantFrom("a4", "letter"),
      lie: fc.constantFrom("portrait", "landscape", null),
      rows: fc.integer({ min: 1, max: 400 }),
      traits: fc.integer({ min: 0, max: 20 }),
      cells: fc.boolean(),
    });
    fc.assert(
      fc.property(asks as fc.Arbitrary<SheetAsk>, (ask) => {
        const layout = sheetLayout(ask);
        if (!layout) return;
        const { pages, rowHeight, columns, width, height } = layout;
        expect(
          pages.flatMap(({ from, to }) => Array.from({ length: to - from + 1 }, (_, step) => from + step)),
        ).toEqual(Array.from({ length: ask.rows }, (_, row) => row));
        for (const [place, { from, to }] of pages.entries()) {
          expect(to).toBeGreaterThanOrEqual(from);
          const foot = place === pages.length - 1 ? 34 : 0;
          expect(18 + 27 + 15 + foot + (to - from + 1) * rowHeight).toBeLessThanOrEqual(height + 0.02);
        }
        expect(rowHeight).toBeGreaterThanOrEqual(6.5);
        const sum = columns.tag + columns.cell + columns.intent + columns.trait * ask.traits + columns.words;
        expect(sum).toBeCloseTo(width - 18, 6);
        expect(columns.words).toBeGreaterThanOrEqual(40 - 1e-9);
        if (ask.traits > 0) expect(columns.trait).toBeGreaterThanOrEqual(11);
      }),
    );
  });
});
