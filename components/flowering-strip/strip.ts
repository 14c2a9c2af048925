import type { Grade } from "@/components/doubt/grade";
import type { FloweringWindow } from "@/lib/science/isolation/flowering-window";

/** One planting's flowering on the strip. */
export interface StripRow {
  readonly id: string;
  readonly name: string;
  readonly window: FloweringWindow;
  /** noted in the field, or told and assumed */
  readonly grade: Grade;
  /** the grow-out itself: its stigmas receive, its pollen sends; a neighbour sends */
  readonly of: "stigma" | "own-pollen" | "neighbour";
  /** worded, at the end of the row's name: "6 of 10 days" */
  readonly says?: string;
}
