import type { UnitSettings } from "@/lib/display/units";
import type { Assessment } from "@/lib/registry/neighbours/assess-neighbours";
import type { NeighboursRead } from "@/lib/registry/neighbours/read-neighbours";

/** What every part of the page of neighbours is given. */
export interface GivenNeighbours {
  readonly read: NeighboursRead;
  readonly assessment: Assessment;
  readonly units: UnitSettings;
  /** the address of the page */
  readonly at: string;
}
