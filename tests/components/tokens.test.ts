import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

/*
 * Contrast by WCAG 2.2 (relative luminance, 1.4.3 and 1.4.11); OKLCH to linear sRGB by Ottosson (2020), "A perceptual color
 * space for image processing". Checked against known pairs below before it is used on the tokens.
 */
type Colour = readonly [lightness: number, chroma: number, hue: number];

function luminance([lightness, chroma, hue]: Colour): number {
  const a = chroma * Math.cos((hue * Math.PI) / 180);
  const b = chroma * Math.sin((hue * Math.PI) / 180);
  const l = (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const m = (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const s = (lightness - 0.0894841775 * a - 1.291485548 * b) ** 3;
  const within = (value: number) => Math.min(1, Math.max(0, value));
  const red = within(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s);
  const green = within(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s);
  const blue = within(-0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s);
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: Colour, other: Colour): number {
  const [a, b] = [luminance(one), luminance(other)];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

const css = readFileSync("app/styles/tokens.css", "utf8").replace(/\/\*[\s\S]*?\*\//g, "");
const grounds = ["day", "night", "glare", "print"] as const;
type Ground = (typeof grounds)[number];

function colours(text: string): Map<string, readonly Colour[]> {
  const found = new Map<string, readonly Colour[]>();
  for (const [, name, value] of text.matchAll(/--([a-z-]+):\s*([^;]+);/g)) {
    const all = [...(value ?? "").matchAll(/oklch\(([\d.]+) ([\d.]+) ([\d.]+)\)/g)];
    if (name && all.length > 0)
      found.set(
        name,
        all.map((each) => [Number(each[1]), Number(each[2]), Number(each[3])]),
      );
  }
  return found;
}

const printAt = css.indexOf("@media print");
const glareAt = css.indexOf('[data-ground="glare"]');
const base = colours(css.slice(0, glareAt));
const over: Record<Ground, Map<string, readonly Colour[]>> = {
  day: new Map(),
  night: new Map(),
  glare: colours(css.slice(glareAt, printAt)),
  print: colours(css.slice(printAt)),
};

function token(name: string, ground: Ground): Colour {
  const values = over[ground].get(name) ?? base.get(name);
  const value = values?.[ground === "night" && values.length > 1 ? 1 : 0];
  if (!value) throw new Error(`no token --${name}`);
  return value;
}

const text = ["ink", "ink-quiet", "waiting"];
const backs = ["ground", "ground-sunk", "ground-raised", "ground-waiting", "paper"];
const pairs = [
  ...text.flatMap((ink) => backs.map((back) => [ink, back] as const)),
  ["ink-on-ink", "ink"] as const,
  ["ink-on-waiting", "waiting"] as const,
];
const drawn = ["edge", "counted", "assumed", "unknown", "seed-line", "stem-full", "stem-spent"];

describe("contrast", () => {
  it("is 21 between black and white, and 4.54 between white and #767676", () => {
    expect(contrast([0, 0, 0], [1, 0, 0])).toBeCloseTo(21, 2);
    // #767676: 118/255 is 0.1812 linear, whose cube root is the lightness 0.5659; (1 + 0.05)/(0.1812 + 0.05) = 4.54
    expect(contrast([0.5659, 0, 0], [1, 0, 0])).toBeCloseTo(4.54, 2);
  });

  for (const ground of grounds) {
    const least = ground === "glare" || ground === "print" ? 7 : 4.5;
    it(`of every text on every background is at least ${least} by ${ground}`, () => {
      const faint = pairs.filter(([ink, back]) => contrast(token(ink, ground), token(back, ground)) < least);
      expect(faint).toEqual([]);
    });

    it(`of what is drawn or can be pressed is at least 3 by ${ground}`, () => {
      const faint = drawn.flatMap((mark) =>
        ["ground", "ground-raised", "paper"]
          .filter((back) => contrast(token(mark, ground), token(back, ground)) < 3)
          .map((back) => `${mark} on ${back}`),
      );
      expect(faint).toEqual([]);
    });
  }

  it("is given for day and night in every colour that changes", () => {
    for (const name of [...text, ...backs, "rule", "edge", "counted", "paper"]) expect(base.get(name)).toHaveLength(2);
  });
});
