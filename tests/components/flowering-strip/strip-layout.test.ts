import { describe, expect, it } from "vitest";
import type { StripRow } from "@/components/flowering-strip/strip";
import { stripLayout, stripWidth } from "@/components/flowering-strip/strip-layout";

const end = (first: string | null, last = first) => (first === null || last === null ? null : { first, last });
const row = (id: string, of: StripRow["of"], from: string | null, to: string | null): StripRow => ({
  id,
  name: id,
  of,
  grade: "counted",
  window: { from: end(from), to: end(to) },
});

function laid(rows: readonly StripRow[]) {
  const layout = stripLayout(rows);
  if (layout === null) throw new Error("nothing is laid out");
  return layout;
}

describe("the strip", () => {
  const silk = row("silk", "stigma", "2026-07-10", "2026-07-19");

  it("is laid out by the day: a window of ten days is as wide as ten of one day", () => {
    const { rows } = laid([silk, row("a", "neighbour", "2026-07-15", "2026-07-15")]);
    const wide = rows.map(({ bar }) => bar.outerTo - bar.outerFrom);
    expect((wide[0] ?? 0) / (wide[1] ?? 1)).toBeCloseTo(10, 9);
  });

  it("marks what a neighbour has in common with the stigmas: five of ten days", () => {
    const { rows } = laid([silk, row("a", "neighbour", "2026-07-15", "2026-07-30")]);
    const [own, other] = rows;
    const common = (other?.common?.to ?? 0) - (other?.common?.from ?? 0);
    expect(common / ((own?.bar.outerTo ?? 0) - (own?.bar.outerFrom ?? 0))).toBeCloseTo(0.5, 9);
    expect(own?.common).toBeNull();
  });

  it("marks nothing in common where one is over the evening before the other begins, or has no stigmas beside it", () => {
    const { rows } = laid([silk, row("a", "neighbour", "2026-07-20", "2026-07-30")]);
    expect(rows[1]?.common).toBeNull();
    expect(laid([row("a", "neighbour", "2026-07-20", "2026-07-30")]).rows[0]?.common).toBeNull();
  });

  it("leaves an end that nobody noted open to the rim, and what it may have in common too", () => {
    const { rows } = laid([silk, row("a", "neighbour", "2026-07-15", null)]);
    const bar = rows[1]?.bar;
    expect([bar?.openFrom, bar?.openTo, bar?.outerTo]).toEqual([false, true, stripWidth - 4]);
    expect(rows[1]?.common?.to).toBe(rows[0]?.bar.outerTo);
  });

  it("marks nothing in common with a planting of which no day is known", () => {
    expect(laid([silk, row("a", "neighbour", null, null)]).rows[1]?.common).toBeNull();
  });

  it("draws an end that is known to the month out over its days", () => {
    const vague: StripRow = { ...silk, window: { from: end("2026-07-01", "2026-07-31"), to: end("2026-08-05") } };
    const [drawn] = laid([vague]).rows;
    expect(drawn?.bar.innerFrom).toBeGreaterThan(drawn?.bar.outerFrom ?? 0);
    expect(drawn?.bar.innerTo).toBeGreaterThan(drawn?.bar.innerFrom ?? 0);
  });

  it("lies within its width, over the turn of a year as well, with a tick for each month", () => {
    const { rows, ticks } = laid([row("a", "own-pollen", "2026-12-20", "2027-01-04")]);
    expect(ticks.filter((tick) => tick.month).map((tick) => tick.day)).toEqual(["2027-01-01"]);
    for (const { bar } of rows) expect([bar.outerFrom >= 0, bar.outerTo <= stripWidth]).toEqual([true, true]);
  });

  it("is not drawn where no day is known", () => {
    expect(stripLayout([])).toBeNull();
    expect(stripLayout([row("a", "stigma", null, null)])).toBeNull();
  });
});
