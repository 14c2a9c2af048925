import { z } from "zod";
import { neededWords, optionalChoice, optionalWords } from "./fields";

/** What kind of keeper a steward is. */
export const stewardKinds = ["grower", "library", "genebank"] as const;

/** A steward: the name stands apart from the rest, so that a person can be erased. */
export const StewardSchema = z.strictObject({
  name: neededWords("write the name as it is used in the circle"),
  kind: optionalChoice(stewardKinds),
  place: optionalWords,
  note: optionalWords,
});
