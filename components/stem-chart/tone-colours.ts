import type { PlacedStem } from "./layout/stems";
import { toneSteps } from "./layout/tones";

type Tones = PlacedStem["tones"];

/** The colour of a step of the tone; null: no figure, and so none: the outline stands alone. */
export function toneColour(step: number | null): string {
  if (step === null) return "var(--paper)";
  return `color-mix(in oklch, var(--stem-full) ${Math.round((step / toneSteps) * 100)}%, var(--stem-spent))`;
}

export function toneName([from, to]: Tones): string {
  return `${from ?? "x"}-${to ?? "x"}`;
}

/** Each pair of tones once, however many stems go from one to the other. */
export function toneStops(stems: readonly PlacedStem[]): { name: string; from: string; to: string }[] {
  const pairs = new Map(stems.map(({ tones }) => [toneName(tones), tones]));
  return [...pairs].map(([name, [from, to]]) => ({ name, from: toneColour(from), to: toneColour(to) }));
}
