import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { day, decimal, name, neededField, oneOf, openField, words } from "./form-fields";

export const containerKinds = ["jar", "tin", "foil", "paper", "bag"] as const;
export const placeKinds = ["cupboard", "cellar", "fridge", "freezer", "deposit elsewhere"] as const;
export const containerUnits = ["g", "seeds", "ears", "heads", "pods", "fruits", "packets"] as const;

/** A container of a lot: what it is, where it stands, what is in it. */
export function containerSchema(hemisphere: Hemisphere) {
  return z.object({
    code: openField(name),
    kind: openField(oneOf(containerKinds)),
    place: openField(name),
    placeKind: openField(oneOf(placeKinds)),
    building: openField(name),
    amount: openField(decimal({ atLeast: 0 })),
    unit: neededField(oneOf(containerUnits), "choose what it is counted in"),
    sealedOn: openField(day(hemisphere)),
    lastOpened: openField(day(hemisphere)),
    desiccant: openField(words),
    note: openField(words),
  });
}

export type ContainerInput = z.output<ReturnType<typeof containerSchema>>;
