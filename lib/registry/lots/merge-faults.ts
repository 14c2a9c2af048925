import { type Refusal, refusal } from "@/lib/science/outcome";
import { type Descent, wayInWords, wayUp } from "./descent";
import { parentageOf, type RecordOfLot } from "./record-of-lot";

/** Two records that are said to be of one lot, and which of them leads. */
export interface MergeToBe {
  readonly leading: RecordOfLot;
  readonly other: RecordOfLot;
}

/**
 * What two records cannot be for one lot: one record, of different crops or varieties, one that points to another already or leads others
 * itself (which would leave those without a lead), one an ancestor of the other. The path is that of the form's field.
 */
export function mergeFaults(descent: Descent, { leading, other }: MergeToBe): Refusal[] {
  const say = (code: string, given: string, wrong: string, needed: string) => [
    refusal(code, ["other"], given, wrong, needed),
  ];
  if (leading.id === other.id) return say("of-itself", other.number, "is this record itself", "name another record");
  if (leading.variety.cropId !== other.variety.cropId) {
    const wrong = `is ${other.variety.crop.commonName}, not ${leading.variety.crop.commonName}`;
    return say("other-crop", other.number, wrong, "one lot is of one crop");
  }
  if (leading.varietyId !== other.varietyId) {
    const wrong = `is ${other.variety.name}, not ${leading.variety.name}`;
    return say("other-variety", other.number, wrong, "one lot is of one variety: if a name is wrong, that comes first");
  }
  for (const [one, rest] of [
    [other, leading],
    [leading, other],
  ] as const) {
    if (one.sameAs === null) continue;
    if (one.sameAsId === rest.id)
      return say("same-already", one.number, `is read as ${rest.number} already`, "leave it");
    const needed = `name ${one.sameAs.number} instead`;
    return say("stands-for-another", one.number, `is read as lot ${one.sameAs.number}`, needed);
  }
  if (other.otherRecords.length > 0) {
    const led = other.otherRecords.map(({ number }) => number).join(", ");
    const needed = `let ${other.number} lead, or take that back first`;
    return say("leads-already", other.number, `leads another record (${led})`, needed);
  }
  const way = wayUp(descent, leading.id, other.id) ?? wayUp(descent, other.id, leading.id);
  if (way === null) return [];
  const wrong = `comes from the other (${wayInWords(descent, way)})`;
  const needed = "a lot is not its own ancestor: look whether a parent or a claim is wrong";
  return say("ancestor", descent.nameOf(way[0] ?? ""), wrong, needed);
}

/** Where the two say different things of the parents, a person says that those of the leading record hold. */
export function parentageFaults({ leading, other }: MergeToBe, chosen: boolean): Refusal[] {
  if (chosen || parentageOf(leading) === parentageOf(other)) return [];
  const wrong = `is what ${other.number} says; ${leading.number} says: ${parentageOf(leading)}`;
  const needed = `tick that ${leading.number} is right, or let ${other.number} lead`;
  return [refusal("parentage-differs", ["parentage"], parentageOf(other), wrong, needed)];
}
