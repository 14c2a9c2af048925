import { dateInWords } from "@/lib/display/dates";
import type { CountShown, WalkShown } from "@/lib/field/screen-state";

const timings: Readonly<Record<string, string>> = {
  before: "before pollen shed",
  after: "after pollen shed",
};

export function timingInWords(timing: string | null): string {
  return timing === null ? "not written down" : (timings[timing] ?? timing);
}

/** The last walk: "12 July 2026, 3 pulled before pollen shed". */
export function lastWalkInWords(walks: readonly WalkShown[]): string {
  const last = walks.at(-1);
  if (!last) return "none walked";
  const found = last.pulled === 0 ? "found none" : `${last.pulled} pulled`;
  return `${dateInWords(last.on)}, ${found}${last.timing === null ? "" : ` ${timingInWords(last.timing)}`}`;
}

export const stageNames: Readonly<Record<string, string>> = {
  sown: "Seeds sown",
  up: "Up",
  thinned: "After thinning",
  lifted: "Roots lifted",
  replanted: "Roots replanted",
  standing: "Standing",
  flowering: "In flower",
};

export function lastCountInWords(counts: readonly CountShown[]): string {
  const last = counts.at(-1);
  return last ? `${last.plants} ${(stageNames[last.stage] ?? last.stage).toLowerCase()}` : "none counted";
}
