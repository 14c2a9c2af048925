import { uuidv7 } from "uuidv7";
import type { NewRowOf } from "@/lib/registry/change-set/records";
import type { BookedGrowOut } from "@/lib/schemas/notebook-typing/notebook-booking";
import { howSureTold, type Told } from "@/lib/schemas/notebook-typing/told";
import type { StoredDate } from "./booked-date";
import { wholeOf } from "./grow-out-rows";

type Subject = { readonly growOutId: string } | { readonly lotId: string } | { readonly varietyId: string };

/** What somebody told of a thing, in their words, on the day it is about. */
export function observation(
  subject: Subject,
  words: string,
  on: StoredDate | null,
  told: { value: number | null; unit: string | null; howSure: string | null } | null = null,
): NewRowOf<"Observation"> {
  return {
    id: uuidv7(),
    ...subject,
    words,
    on: on?.text ?? null,
    onFirst: on?.first ?? null,
    onLast: on?.last ?? null,
    value: told?.value ?? null,
    unit: told?.unit ?? null,
    howSure: told?.howSure ?? null,
  };
}

/** A number that is not simply a number, kept with its words and how sure it is; null where the number says all. */
export function toldObservation(
  subject: Subject,
  told: Told | null,
  unit: string,
  on: StoredDate | null,
): NewRowOf<"Observation"> | null {
  if (told === null) return null;
  const howSure = howSureTold(told);
  if (howSure === null && Number.isInteger(told.value)) return null;
  return observation(subject, told.words, on, { value: told.value, unit, howSure });
}

/** Every number of a grow-out that was told as about, as a span, in words, or counted in something else than plants. */
export function growOutObservations(
  growOut: BookedGrowOut,
  growOutId: string,
  on: StoredDate | null,
): NewRowOf<"Observation">[] {
  const subject = { growOutId };
  const parents = growOut.seedParentsCounted;
  const inParts =
    growOut.seedParents && parents !== null && parents !== "plants"
      ? observation(subject, growOut.seedParents.words, on, {
          value: growOut.seedParents.value,
          unit: `${parents} kept for seed`,
          howSure: howSureTold(growOut.seedParents),
        })
      : toldObservation(subject, growOut.seedParents, "seed parents", on);
  const rows = [
    toldObservation(subject, growOut.seedsSown, "seeds sown", on),
    toldObservation(subject, growOut.emerged, "plants up", on),
    toldObservation(subject, growOut.plantsStanding, "plants standing", on),
    toldObservation(subject, growOut.roguedBeforePollen, "rogued before pollen shed", on),
    toldObservation(subject, growOut.roguedAfterPollen, "rogued after pollen shed", on),
    wholeOf(growOut.roguedUntimed) === null ? toldObservation(subject, growOut.roguedUntimed, "rogued", on) : null,
    inParts,
    growOut.bulked === null ? null : observation(subject, `seed taken: ${growOut.bulked}`, on),
    growOut.seedShares === "unequal" ? observation(subject, "shares of the seed parents unequal", on) : null,
  ];
  return rows.filter((row) => row !== null);
}
