/** A year that the circle still talks about: how the harvest and the fresh seed came out of it, in parts of an ordinary year's. */
export interface YearTold {
  readonly words: string;
  readonly harvest: number;
  readonly fresh: number;
}

const told: Readonly<Record<number, YearTold>> = {
  1998: { words: "A summer without a dry week; everything ripened late.", harvest: 0.8, fresh: 0.93 },
  2002: {
    words: "No rain from May to the end of August; the wells at Kestonhalse gave out.",
    harvest: 0.5,
    fresh: 0.95,
  },
  2007: { words: "The Irrenwater stood in the gardens twice in July.", harvest: 0.55, fresh: 0.85 },
  2011: {
    words: "A hard winter and a cold spring; what had stood out over it came late or not at all.",
    harvest: 0.6,
    fresh: 0.97,
  },
  2012: { words: "Cold and wet to the end; seed was dried indoors.", harvest: 0.7, fresh: 0.88 },
  2018: { words: "Heat from Whitsun on, and no rain until the harvest was over.", harvest: 0.65, fresh: 0.96 },
  2021: { words: "Frost on the last night of May, and voles after it.", harvest: 0.75, fresh: 0.97 },
  2024: { words: "Blight early, rain late.", harvest: 0.8, fresh: 0.92 },
  2025: { words: "A good year; the dry September did it.", harvest: 1.15, fresh: 1.01 },
};

const ordinary: YearTold = { words: "", harvest: 1, fresh: 1 };

export function yearTold(year: number): YearTold {
  return told[year] ?? ordinary;
}
