import type { PlotToChooseIn } from "@/lib/science/effective-size/size-of-cut";
import type { WeightedTrait } from "@/lib/science/selection/scored-plant";
import type { TraitDefinition } from "../traits/trait";

/** One person's score of a plant, as a number. */
export interface ScoreToCompare {
  /** who gave it; null: not said */
  readonly by: string | null;
  readonly value: number;
}

/** A plant that may be chosen, with what is known of it. */
export interface PlantToChoose {
  readonly id: string;
  /** by which it is told from the others of its grow-out; no two have one */
  readonly name: string;
  /** what stands on its tag */
  readonly tag: string;
  readonly cell: string | null;
  readonly row: string | null;
  readonly position: number | null;
  /** as its newest mark says: "" where it is not marked */
  readonly intent: string;
  readonly words: string;
  /** why it cannot be chosen: pulled, lost, eaten, rogued later */
  readonly gone: string | null;
  /** by trait; what cannot be compared is not there */
  readonly scores: Readonly<Record<string, readonly ScoreToCompare[]>>;
  /** by trait, as they are written */
  readonly said: Readonly<Record<string, string>>;
}

/** A trait by which plants were scored. */
export interface TraitToWeigh {
  /** the id of its first version */
  readonly key: string;
  readonly name: string;
  /** as it is read and told */
  readonly definition: TraitDefinition;
  readonly unit: string | null;
  readonly better: WeightedTrait["better"] | null;
  /** lowest and highest step, of a scale */
  readonly scale: readonly [number, number] | null;
  /** differences of its numbers are days */
  readonly days: boolean;
  /** yes or no, or wanted or not: means are shares */
  readonly share: boolean;
  /** where it is put right */
  readonly href: string;
  /** plants of which scores were given by an older version, which is not compared with this one */
  readonly olderVersion: number;
  /** what of a differential stayed over cycles beside another variety; a person says whether that one is a check to plan by. null: not found */
  readonly heritability: { readonly low: number; readonly high: number; readonly from: string } | null;
}

/** How many seed parents are wanted, and who says so. */
export interface WantedParents {
  readonly count: number;
  readonly from: "plan" | "variety";
}

/** All that a choice of plants is made from; plain, so that a browser, or a phone in the field, works it out by itself. */
export interface ChoiceGround {
  readonly growOut: { readonly id: string; readonly name: string };
  readonly plants: readonly PlantToChoose[];
  /** as far as some plant has a score by it */
  readonly traits: readonly TraitToWeigh[];
  /** those who scored */
  readonly people: readonly { readonly id: string | null; readonly name: string }[];
  /** what the effective size is worked out from; null where seed does not mix the plants */
  readonly plot: PlotToChooseIn | null;
  /** assumed of the plot, in sentences */
  readonly assumed: readonly string[];
  /** the fewest plants of its crop */
  readonly floor: number | null;
  readonly wanted: WantedParents | null;
  /** seeds of one next sowing, and by which lot's test; null where nothing tells */
  readonly seeds: { readonly count: number; readonly from: string } | null;
  /** roots are chosen before they flower, so that only chosen plants shed pollen */
  readonly chosenBeforeFlower: boolean;
}
