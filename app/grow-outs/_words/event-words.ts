import { plainNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { distance, type UnitSettings } from "@/lib/display/units";
import type { EventOfGrowOut } from "@/lib/registry/grow-outs/events-of-grow-out";

/** What an event is called. */
export const eventNames: Readonly<Record<EventOfGrowOut["kind"], string>> = {
  count: "Plants counted",
  rogues: "Rogue pass",
  flowering: "Flowering",
  isolation: "Isolation",
  neighbour: "Neighbour source",
};

/** What was seen or done, in a sentence. Looked and none found is not the same as not looked. */
export function eventWords(event: EventOfGrowOut, units: UnitSettings): string {
  const { kind, what, how, plants, amount } = event;
  if (kind === "count") {
    const by = how ? `, thinned by ${how}` : "";
    return `${plants === null ? "unknown" : counted(plants, "plant")} ${what === "up" ? "had come up" : (what ?? "")}${by}`;
  }
  if (kind === "rogues") {
    const when = how ? ` ${how} pollen shed` : "";
    const looked = plants === null ? "; nobody wrote how many were looked at" : ` of ${plainNumber(plants)} looked at`;
    const stage = what ? `, ${what}` : "";
    return `${amount === 0 ? "none pulled" : `${plainNumber(amount ?? 0)} pulled`}${looked}${when}${stage}`;
  }
  if (kind === "flowering")
    return `${what === "first" ? "first" : what === "half" ? "half in" : "last"} ${how ?? "flower"}`;
  if (kind === "isolation") return `${what ?? ""}${how ? `: ${how}` : ""}`;
  const far = amount === null ? "distance unknown" : `${distance(amount, units)} away`;
  return `${what ?? ""}, ${far}${how ? ` ${how}` : ""}${plants === null ? "" : `, ${counted(plants, "plant")}`}`;
}
