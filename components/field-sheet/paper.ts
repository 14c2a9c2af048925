/** The papers that we print on, upright, in millimetres: ISO 216 A4 and the North American letter size (8.5 by 11 inches of 25.4 mm). */
export const papers = {
  a4: { name: "A4", width: 210, height: 297 },
  letter: { name: "Letter", width: 215.9, height: 279.4 },
} as const;
export type Paper = keyof typeof papers;

export const lies = ["portrait", "landscape"] as const;
export type Lie = (typeof lies)[number];

/** Printers leave about 5 mm of a sheet white; so much stays free on each side. */
export const margin = 9;

/** Width and height of a sheet as it lies. */
export function sizeOf(paper: Paper, lie: Lie): { readonly width: number; readonly height: number } {
  const { width, height } = papers[paper];
  return lie === "portrait" ? { width, height } : { width: height, height: width };
}
