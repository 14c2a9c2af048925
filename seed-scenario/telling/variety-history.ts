import type { CropKey } from "../circle/crop-habits";
import type { PersonName } from "../circle/people";
import type { Telling } from "./telling";

/** What a variety is, before anything is told of it. */
export interface VarietyTold {
  readonly name: string;
  /** the word that its lots are numbered by */
  readonly word: string;
  readonly crop: CropKey;
  readonly story: string;
  readonly type: string;
  readonly aim?: "true-to-type" | "broad-and-alive" | "improved";
  readonly seedCoat: readonly [
    pattern: "plain" | "speckle" | "eye" | "stripe" | "two tones",
    ground: string,
    second: string,
  ];
  readonly cautions?: string;
  readonly sensitivity?: "public" | "circle" | "held";
  readonly plantsWanted?: number;
  readonly seedParentsWanted?: number;
  readonly isolationWanted?: number;
  readonly note?: string;
  readonly traits: readonly (readonly [trait: string, allowed: string, offType: string, part: string])[];
  readonly otherNames?: readonly (readonly [name: string, kind: string, source: string])[];
}

/** Somebody who grows the variety again every so many years, and to whom seed of it goes. */
export interface Keeper {
  readonly who: PersonName;
  readonly from: number;
  readonly to?: number;
  /** years from one grow-out to the next */
  readonly every: number;
  /** the first year in which it is grown; otherwise the first year of keeping */
  readonly first?: number;
  readonly plants?: number;
  /** one after the other gets seed of a new harvest */
  readonly gives?: readonly PersonName[];
  /** plots that are used in turn; otherwise all of the person's */
  readonly plots?: readonly string[];
}

/** What a year of the history brought besides the ordinary. */
export interface TurningPoint {
  readonly winter?: (tell: Telling) => void;
  readonly spring?: (tell: Telling) => void;
  readonly autumn?: (tell: Telling) => void;
  readonly november?: (tell: Telling) => void;
  /** nobody else grew it that year */
  readonly alone?: boolean;
}

export interface VarietyHistory {
  readonly variety: VarietyTold;
  readonly tell: (tell: Telling) => void;
}
