import { faultsAmong, positiveFault } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";

export interface DryToInput {
  /** weight of the seed now */
  readonly grams: number;
  /** moisture now, percent of the wet weight */
  readonly moisturePercent: number;
  /** moisture wanted, percent of the wet weight, below the present */
  readonly targetPercent: number;
}

export interface DryTo {
  /** what the seed weighs when it is dry enough */
  readonly targetGrams: number;
  readonly assumed: readonly Assumption[];
}

/**
 * What a lot will weigh when it has dried to a moisture: it needs only a balance.
 *
 *     targetGrams = grams · (100 − m) / (100 − target)          m, target: percent, wet basis
 *
 * Refused: no weight, moistures outside 0 to 100, a target that is not below the present moisture.
 * Limits: nothing but water leaves the seed. Never warm seed above 35 °C; seed of recalcitrant crops must not be dried at all.
 * Example: 200 g at 12 % weigh 187.23 g at 6 %. Source: the dry matter stays the same.
 */
export function dryTo({ grams, moisturePercent, targetPercent }: DryToInput): Outcome<DryTo> {
  const faults = [
    ...faultsAmong(positiveFault([], "grams", grams)),
    ...percentFaults("moisturePercent", moisturePercent),
    ...percentFaults("targetPercent", targetPercent),
  ];
  if (faults.length === 0 && targetPercent >= moisturePercent) {
    const wrong = `percent is not below the present ${moisturePercent} percent`;
    const needed = "drying leads to less moisture: a smaller target, or none";
    faults.push(refusal("not-drier", ["targetPercent"], targetPercent, wrong, needed));
  }
  if (faults.length > 0) return refused(...faults);
  return accepted({ targetGrams: (grams * (100 - moisturePercent)) / (100 - targetPercent), assumed: [] });
}

function percentFaults(key: string, percent: number): Refusal[] {
  if (percent >= 0 && percent < 100) return [];
  const needed = "a percentage of the wet weight from 0 to below 100 is needed";
  return [refusal("out-of-range", [key], percent, `cannot stand for ${key}`, needed)];
}
