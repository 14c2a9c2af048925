import type { Option } from "@/components/ui";
import { dateInWords } from "@/lib/display/dates";
import { type Moment, type Organ, passStages, pullReasons, type Stage } from "@/lib/schemas/grow-outs/field-kinds";

/** What a stage of counting is called, and what is meant by it. */
export const stageWords: Readonly<Record<Stage, { name: string; meant: string }>> = {
  sown: { name: "Seeds sown", meant: "the sowing from the jar writes it; else here" },
  up: { name: "Up", meant: "seedlings, about three weeks after sowing" },
  thinned: { name: "After thinning", meant: "what was left; thinning is selection when it goes by vigour" },
  lifted: { name: "Roots lifted", meant: "before any were chosen or lost in store" },
  replanted: { name: "Roots replanted", meant: "what went back into the ground" },
  standing: { name: "Standing", meant: "alive when counted; the size is worked out from it" },
  flowering: { name: "In flower", meant: "all that came to flower: only these give pollen" },
};

/** After the number of plants: "84 standing". */
export const stageAfterCount: Readonly<Record<Stage, string>> = {
  sown: "seeds sown",
  up: "up",
  thinned: "left after thinning",
  lifted: "roots lifted",
  replanted: "roots replanted",
  standing: "standing",
  flowering: "in flower",
};

export const thinningOptions: readonly Option[] = [
  { value: "random", words: "at random" },
  { value: "vigour", words: "by vigour" },
];

/** How it was thinned, behind the stage. */
export function thinningInWords(thinnedBy: string | null): string {
  if (thinnedBy === null) return "";
  return thinnedBy === "random" ? "at random" : thinnedBy === "vigour" ? "by vigour" : `by ${thinnedBy}`;
}

export const timingOptions = [
  { value: "before", words: "Before pollen shed", note: "the plants pulled gave no pollen" },
  { value: "after", words: "After pollen shed", note: "they gave pollen already, and no seed" },
  { value: "not said", words: "Not written down", note: "the figures leave the pass out" },
];

export const passStageOptions: readonly Option[] = passStages.map((stage) => ({ value: stage, words: stage }));

export const reasonOptions: readonly Option[] = pullReasons.map((reason) => ({ value: reason, words: reason }));

export const organWords: Readonly<Record<Organ, string>> = { flower: "Flower", pollen: "Pollen", silk: "Silk" };

export const momentWords: Readonly<Record<Moment, string>> = {
  first: "first",
  half: "half in flower",
  last: "last",
};

/** A day as written, in words; nothing written is said so. */
export function whenSeen(on: string | null): string {
  return on === null ? "day not written" : dateInWords(on);
}
