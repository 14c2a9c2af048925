import { type Moment, moments, type Organ } from "@/lib/schemas/grow-outs/field-kinds";
import { type Path, type Refusal, refusal } from "@/lib/science/outcome";
import type { GrowOutInField } from "./count-faults";
import { dayFaults } from "./day-faults";
import { type FloweringOnRecord, surelyBefore } from "./field-records";

/** A flowering note as it is typed in. */
export interface FloweringSeen {
  readonly organ: Organ;
  readonly moment: Moment;
  readonly on: string;
  readonly onFirst: string;
  readonly onLast: string;
}

const words: Readonly<Record<Moment, string>> = { first: "the first", half: "half in flower", last: "the last" };

/** What is wrong with a flowering note beside those that stand: a second of its kind, or days in an order that cannot be. */
export function floweringFaults(
  seen: FloweringSeen,
  others: readonly FloweringOnRecord[],
  growOut: GrowOutInField,
  at: Path = [],
): Refusal[] {
  const faults = dayFaults(seen, growOut, at);
  const same = others.filter((other) => other.organ === seen.organ);
  const twin = same.find((other) => other.moment === seen.moment);
  if (twin)
    faults.push(
      refusal(
        "noted-already",
        at,
        seen.on,
        `cannot stand beside ${twin.on}, noted already`,
        "put that note right instead",
      ),
    );
  for (const other of same) {
    const order = moments.indexOf(seen.moment) - moments.indexOf(other.moment);
    const crossed = order > 0 ? surelyBefore(seen, other) : order < 0 ? surelyBefore(other, seen) : false;
    if (!crossed) continue;
    const wrong = `cannot be ${words[seen.moment]}: ${words[other.moment]} was on ${other.on}`;
    faults.push(refusal("out-of-order", at, seen.on, wrong, "first, half and last come in this order"));
  }
  return faults;
}
