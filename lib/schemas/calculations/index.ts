import type { Calculation } from "@/lib/schemas/calculations/calculation";
import { effectiveSizeCalculation } from "@/lib/schemas/calculations/effective-size";
import { germinationCompareCalculation } from "@/lib/schemas/calculations/germination-compare";
import { germinationTestCalculation } from "@/lib/schemas/calculations/germination-test";
import { lineageCalculation } from "@/lib/schemas/calculations/lineage";
import { offTypesCalculation } from "@/lib/schemas/calculations/off-types";
import { reserveCalculation } from "@/lib/schemas/calculations/reserve";
import { sowingCountCalculation } from "@/lib/schemas/calculations/sowing-count";
import { thousandSeedWeightCalculation } from "@/lib/schemas/calculations/thousand-seed-weight";
import { viabilityForecastCalculation } from "@/lib/schemas/calculations/viability-forecast";

/** All calculations of the registry, in the order in which a grower meets them. */
export const calculations: readonly Calculation[] = [
  effectiveSizeCalculation,
  lineageCalculation,
  germinationTestCalculation,
  germinationCompareCalculation,
  offTypesCalculation,
  reserveCalculation,
  thousandSeedWeightCalculation,
  sowingCountCalculation,
  viabilityForecastCalculation,
];

/** The calculation of that name. */
export function calculationNamed(name: string): Calculation | undefined {
  return calculations.find((calculation) => calculation.name === name);
}
