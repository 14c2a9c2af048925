import { renderToStaticMarkup } from "react-dom/server";
import { expect, it } from "vitest";
import { SpanBar } from "@/components/doubt";

it("says its figure and span in words", () => {
  const bar = renderToStaticMarkup(
    <SpanBar value={0.64} low={0.49} high={0.77} grade="counted" label="64 %, 49–77 %" />,
  );
  expect(bar).toContain('role="img"');
  expect(bar).toContain('aria-label="64 %, 49–77 %"');
});

it("is solid where counted, hatched where assumed, dashed and open where unknown", () => {
  const drawn = (grade: "counted" | "assumed" | "unknown", value: number | null) =>
    renderToStaticMarkup(<SpanBar value={value} low={0.2} high={0.6} grade={grade} label="x" />);
  expect(drawn("counted", 0.4)).toContain('fill="var(--counted)"');
  expect(drawn("counted", 0.4)).not.toContain("<pattern");
  expect(drawn("assumed", 0.4)).toContain("<pattern");
  expect(drawn("unknown", null)).toContain('fill="var(--paper)"');
  expect(drawn("unknown", null)).toContain("stroke-dasharray");
});

it("draws no bar and no value where nothing is known, but an open ring", () => {
  const bar = renderToStaticMarkup(<SpanBar value={null} grade="unknown" label="unknown" />);
  expect(bar).toContain("<circle");
  expect(bar).not.toContain("var(--ink)");
});

it("keeps a value outside the scale on the line's end", () => {
  const bar = renderToStaticMarkup(<SpanBar value={3} grade="counted" label="3" width={100} />);
  expect(bar).toContain("M96 ");
});
