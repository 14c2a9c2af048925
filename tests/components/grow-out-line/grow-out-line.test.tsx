import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { GrowOutLine, type LineStage } from "@/components/grow-out-line";
import { dayTicks, lineScale, marksOf, namesWithRoom, placeOf, ticksOf } from "@/components/grow-out-line/line-scale";

const stage = (id: string, grade: LineStage["grade"], first: string | null, last = first): LineStage => ({
  ...{ id, name: id, when: first ?? "nothing written", grade, first, last },
});
const life = [
  stage("sown", "counted", "2026-05-01"),
  stage("up", "unknown", null),
  stage("flowering", "assumed", "2026-07-01", "2026-07-31"),
];

describe("the scale of a life's line", () => {
  it("reaches over all days with a little room, and to today where life goes on", () => {
    const scale = lineScale(life, "2026-09-01", true);
    expect(scale && scale.from < "2026-05-01" && scale.to > "2026-09-01").toBe(true);
    expect((lineScale(life, "2026-09-01", false)?.to ?? "") < "2026-09-01").toBe(true);
    expect(lineScale([stage("sown", "unknown", null)], "2026-09-01", true)).toBeNull();
  });

  it("places days by their number", () => {
    const scale = { from: "2026-05-01", to: "2026-05-11" };
    expect([placeOf("2026-05-01", scale), placeOf("2026-05-06", scale), placeOf("2026-05-11", scale)]).toEqual([
      0, 0.5, 1,
    ]);
    expect([placeOf("2025-01-01", scale), placeOf("2027-01-01", scale)]).toEqual([0, 1]);
  });

  it("puts a stage without a day between its neighbours", () => {
    const scale = { from: "2026-05-01", to: "2026-05-11" };
    const stages = [
      stage("a", "counted", "2026-05-01"),
      stage("b", "unknown", null),
      stage("c", "unknown", null),
      stage("d", "counted", "2026-05-07"),
    ];
    const marks = marksOf(stages, scale);
    expect(marks.map((mark) => Math.round(mark * 1e6) / 1e6)).toEqual([0, 0.2, 0.4, 0.6]);
  });

  it("names months on a short line, years on a long one, days where the beginning has none", () => {
    expect(ticksOf({ from: "2026-04-20", to: "2026-07-10" }).map(({ label }) => label)).toEqual(["May", "Jun", "Jul"]);
    const named = ticksOf({ from: "2026-04-20", to: "2027-09-10" }).flatMap(({ label }) => label ?? []);
    expect(named).toEqual(["Jul 2026", "2027", "Jul"]);
    const years = ticksOf({ from: "2010-06-01", to: "2026-06-01" });
    expect(years[0]).toMatchObject({ day: "2011-01-01" });
    expect(years.filter(({ label }) => label !== null).length).toBeLessThanOrEqual(8);
    expect(dayTicks({ from: "2000-12-20", to: "2001-04-20" }, "2001-01-01").map(({ label }) => label)).toEqual([
      "day 0",
      ...["20", "40", "60", "80", "100"],
    ]);
  });
});

describe("the names over a life's line", () => {
  const scale = { from: "2026-05-01", to: "2026-08-09" };
  const ticks = ticksOf(scale);
  // a hundred days over 100 or 400 pixels, a letter 7 pixels wide: Jun at 31 or 124, Jul at 61 or 244, Aug at 92 or 368
  it("stand where there is room for them, and nowhere over the edge", () => {
    expect([...namesWithRoom(ticks, scale, null, 400)]).toEqual([
      "2026-05-01",
      "2026-06-01",
      "2026-07-01",
      "2026-08-01",
    ]);
    expect([...namesWithRoom(ticks, scale, null, 100)]).toEqual(["2026-05-01", "2026-06-01", "2026-07-01"]);
  });

  it("let a year go before a month", () => {
    const years = { from: "2025-06-01", to: "2026-12-31" };
    const named = namesWithRoom(ticksOf(years), years, null, 150);
    expect([...named]).toEqual(["2026-01-01", "2026-07-01"]);
  });

  it("give way to one another and to today", () => {
    expect([...namesWithRoom(ticks, scale, null, 60)]).toEqual(["2026-05-01", "2026-07-01"]);
    expect([...namesWithRoom(ticks, scale, "2026-06-30", 400)]).toEqual(["2026-05-01", "2026-06-01", "2026-08-01"]);
  });
});

describe("the line of a life", () => {
  const drawn = renderToStaticMarkup(<GrowOutLine stages={life} today="2026-05-20" open label="The life of Sallow" />);

  it("says each stage in words, and what its sign means", () => {
    for (const words of ["on record", "to be expected", "not known"]) expect(drawn).toContain(words);
    expect(drawn).toContain('aria-label="The life of Sallow"');
    expect(drawn.match(/<li /g)).toHaveLength(3);
  });

  it("fills what is counted, hatches what is expected, leaves open what nobody knows", () => {
    const rows = drawn.split("<li ").slice(1);
    expect(rows[0]).toContain('fill="var(--counted)"');
    expect(rows[1]).toContain('stroke-dasharray="2.5 2"');
    expect(rows[2]).toMatch(/fill="url\(#[^"]+\)"/);
    expect(rows[0]).not.toMatch(/fill="url\(/);
  });

  it("shows today only while the life goes on", () => {
    expect(drawn).toContain(">today<");
    const over = renderToStaticMarkup(<GrowOutLine stages={life} today="2026-05-20" open={false} label="x" />);
    expect(over).not.toContain(">today<");
  });
});
