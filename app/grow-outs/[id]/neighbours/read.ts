import { cache } from "react";
import { assessNeighbours } from "@/lib/registry/neighbours/assess-neighbours";
import { readNeighbours } from "@/lib/registry/neighbours/read-neighbours";
import type { IsolationPurpose } from "@/lib/science/isolation/distance-rule";
import { current } from "../../../_session/current";

/** The neighbourhood of a grow-out and what the rule says of it, read once a request; null where there is no such grow-out. */
export const neighboursOfPage = cache(async (id: string, purpose: IsolationPurpose) => {
  const { db, settings } = await current();
  const read = await readNeighbours(db, id);
  if (!read) return null;
  return { read, assessment: assessNeighbours(read, { purpose, hemisphere: settings.hemisphere }) };
});

/** Whose distances the address asks for; a steward's unless it says home. */
export function purposeAsked(given: string | readonly string[] | undefined): IsolationPurpose {
  return given === "home" ? "home" : "stewardship";
}
