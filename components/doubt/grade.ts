/** How a drawn quantity is known: solid is counted, hatched is assumed, open is unknown. */
export type Grade = "counted" | "assumed" | "unknown";

/** A quantity's low and high end. */
export interface Bounds {
  readonly low: number;
  readonly high: number;
}
