import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { day, name, neededField, openField, words } from "../lots/form-fields";

/** What is told of a picture; each as far as it is known. */
function fields(hemisphere: Hemisphere) {
  return {
    caption: openField(words),
    takenOn: openField(day(hemisphere)),
    /** a steward by name */
    takenBy: openField(name),
    /** the step of a trait's scale that it shows */
    scale: openField(words),
  };
}

/** What is told of pictures as they are added; `plant` names one of the grow-out that they are added to. */
export function photoWordsSchema(hemisphere: Hemisphere) {
  return z.object({ ...fields(hemisphere), plant: openField(name) });
}

/** The same put right, with what was wrong. */
export function correctPhotoSchema(hemisphere: Hemisphere) {
  return z.object({ ...fields(hemisphere), why: neededField(words, "say in a few words what was wrong") });
}
