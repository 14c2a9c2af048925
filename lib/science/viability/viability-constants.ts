import type { ViabilityConstants } from "./viability";
import listed from "./viability-constants.json";

/** The constants of a species with their standard errors, where they stand in the source that was read. */
export interface ListedConstants extends ViabilityConstants {
  readonly crop: string;
  readonly latinName: string;
  readonly standardErrorKE: number;
  readonly standardErrorCW: number;
  readonly verified: boolean;
  readonly source: string;
  readonly range: string;
}

/** The species whose constants were checked in their source; of all others nothing is said by the equation. */
export function viabilityConstants(): readonly ListedConstants[] {
  return listed;
}
