import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { count, day, name, oneOf, openField, ticked } from "../lots/form-fields";

/** What stands down a field sheet: the plants on record; numbered rows for the next free tags; rows whose tags are written by hand. */
export const sheetDowns = ["record", "next", "hand"] as const;
export type SheetDown = (typeof sheetDowns)[number];

/** By their tags, by the cells in which they stand, or as they came onto record. */
export const sheetOrders = ["tag", "cell", "entry"] as const;
export type SheetOrder = (typeof sheetOrders)[number];

export const mostRowsOfSheet = 400;

/** How a field sheet is asked for in the address of its page; what is left out is chosen by what is on record. */
export function sheetAskedSchema(hemisphere: Hemisphere) {
  return z.object({
    /** ticked: the form was sent, so traits that are not named are not wanted */
    asked: ticked,
    down: openField(oneOf(sheetDowns)),
    order: openField(oneOf(sheetOrders)),
    letters: openField(name),
    from: openField(count),
    many: openField(count),
    cell: openField(name),
    perCell: openField(count),
    paper: openField(oneOf(["a4", "letter"])),
    lie: openField(oneOf(["fits", "portrait", "landscape"])),
    on: openField(day(hemisphere)),
  });
}

export type SheetAsked = z.output<ReturnType<typeof sheetAskedSchema>>;

/** How plant tags are asked for: a run, as for a sheet, how they are cut, and whether each is wanted twice. */
export function tagsAskedSchema(hemisphere: Hemisphere) {
  return sheetAskedSchema(hemisphere).extend({ kind: openField(oneOf(["hang", "loop"])), twice: ticked });
}
