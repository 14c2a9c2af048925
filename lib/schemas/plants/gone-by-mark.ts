/** Why seed cannot be kept of a plant, by what its mark says; null where it can. What was harvested of it is no reason. */
export function goneByMark({ intent, fate }: { readonly intent: string; readonly fate: string | null }): string | null {
  if (fate !== null && fate !== "harvested") return fate;
  return intent === "pull" ? "to be pulled" : null;
}
