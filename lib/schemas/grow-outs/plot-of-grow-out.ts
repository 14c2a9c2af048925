import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { day, decimal, openField } from "../lots/form-fields";
import { plotFields } from "./plan-grow-out";

/** Where a grow-out stands, from when and until when. */
export function plotOfGrowOutSchema(hemisphere: Hemisphere) {
  return z.object({
    ...plotFields,
    areaM2: openField(decimal({ above: 0 })),
    fromOn: openField(day(hemisphere)),
    toOn: openField(day(hemisphere)),
    /** when it left the plot on which it stood before */
    leftOn: openField(day(hemisphere)),
  });
}
export type PlotOfGrowOutInput = z.output<ReturnType<typeof plotOfGrowOutSchema>>;

/** The days on one plot, put right. */
export function plotDatesSchema(hemisphere: Hemisphere) {
  return z.object({ fromOn: openField(day(hemisphere)), toOn: openField(day(hemisphere)) });
}
export type PlotDatesInput = z.output<ReturnType<typeof plotDatesSchema>>;
