import { alleleCaptureCalculation } from "@/lib/schemas/calculations/allele-capture";
import { blendAdviceCalculation } from "@/lib/schemas/calculations/blend-advice";
import { bottleneckCostCalculation } from "@/lib/schemas/calculations/bottleneck-cost";
import type { Calculation } from "@/lib/schemas/calculations/calculation";
import { choosePlantsCalculation } from "@/lib/schemas/calculations/choose-plants";
import { dryToCalculation } from "@/lib/schemas/calculations/dry-to";
import { effectiveSizeCalculation } from "@/lib/schemas/calculations/effective-size";
import { effectiveSizeSpanCalculation } from "@/lib/schemas/calculations/effective-size-span";
import { floweringOverlapCalculation } from "@/lib/schemas/calculations/flowering-overlap";
import { foreignPollenSeenCalculation } from "@/lib/schemas/calculations/foreign-pollen-seen";
import { geneDropCalculation } from "@/lib/schemas/calculations/gene-drop";
import { germinationCompareCalculation } from "@/lib/schemas/calculations/germination-compare";
import { germinationSpeedCalculation } from "@/lib/schemas/calculations/germination-speed";
import { germinationTestCalculation } from "@/lib/schemas/calculations/germination-test";
import { grownOnCalculation } from "@/lib/schemas/calculations/grown-on";
import { harmonicSizeCalculation } from "@/lib/schemas/calculations/harmonic-size";
import { lineageCalculation } from "@/lib/schemas/calculations/lineage";
import { lineageSpanCalculation } from "@/lib/schemas/calculations/lineage-span";
import { offTypeFrequencyCalculation } from "@/lib/schemas/calculations/off-type-frequency";
import { offTypeTrendCalculation } from "@/lib/schemas/calculations/off-type-trend";
import { offTypesCalculation } from "@/lib/schemas/calculations/off-types";
import { outcomeSpreadCalculation } from "@/lib/schemas/calculations/outcome-spread";
import { pollenRiskCalculation } from "@/lib/schemas/calculations/pollen-risk";
import { populationPlanCalculation } from "@/lib/schemas/calculations/population-plan";
import { realisedHeritabilityCalculation } from "@/lib/schemas/calculations/realised-heritability";
import { reserveCalculation } from "@/lib/schemas/calculations/reserve";
import { scorerAgreementCalculation } from "@/lib/schemas/calculations/scorer-agreement";
import { seedMoistureCalculation } from "@/lib/schemas/calculations/seed-moisture";
import { selectionResponseCalculation } from "@/lib/schemas/calculations/selection-response";
import { sowingCountCalculation } from "@/lib/schemas/calculations/sowing-count";
import { thousandSeedWeightCalculation } from "@/lib/schemas/calculations/thousand-seed-weight";
import { traitYearsCalculation } from "@/lib/schemas/calculations/trait-years";
import { viabilityCalculation } from "@/lib/schemas/calculations/viability";
import { viabilityForecastCalculation } from "@/lib/schemas/calculations/viability-forecast";

/** All calculations of the registry: the plants and their lineage, the seed and its tests, the jar, the off-types, the scores. */
export const calculations: readonly Calculation[] = [
  effectiveSizeCalculation,
  effectiveSizeSpanCalculation,
  lineageCalculation,
  lineageSpanCalculation,
  bottleneckCostCalculation,
  harmonicSizeCalculation,
  geneDropCalculation,
  blendAdviceCalculation,
  populationPlanCalculation,
  alleleCaptureCalculation,
  grownOnCalculation,
  outcomeSpreadCalculation,
  germinationTestCalculation,
  germinationCompareCalculation,
  germinationSpeedCalculation,
  viabilityCalculation,
  viabilityForecastCalculation,
  sowingCountCalculation,
  thousandSeedWeightCalculation,
  seedMoistureCalculation,
  dryToCalculation,
  reserveCalculation,
  offTypesCalculation,
  offTypeTrendCalculation,
  offTypeFrequencyCalculation,
  foreignPollenSeenCalculation,
  pollenRiskCalculation,
  floweringOverlapCalculation,
  choosePlantsCalculation,
  realisedHeritabilityCalculation,
  selectionResponseCalculation,
  scorerAgreementCalculation,
  traitYearsCalculation,
];

/** The calculation of that name. */
export function calculationNamed(name: string): Calculation | undefined {
  return calculations.find((calculation) => calculation.name === name);
}
