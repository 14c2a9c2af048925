import type { PollenKernel } from "./pollen-kernel";
import models from "./pollen-models.json";

/** A crop for which a share of foreign pollen may be given, and how. */
export type PollenModel =
  | {
      readonly crops: readonly string[];
      readonly form: "plane";
      readonly kernel: PollenKernel;
      readonly beyondMetres: number;
      readonly source: string;
    }
  | {
      readonly crops: readonly string[];
      readonly form: "odds";
      readonly curve: { readonly a: number; readonly b: number; readonly cap: number };
      /** the curve was measured from here to there, in metres; beyond it is a guess */
      readonly fromMetres: number;
      readonly beyondMetres: number;
      readonly source: string;
    };

/**
 * The model of a crop's pollen flow: a kernel where one was checked against fields (maize), a curve of distance where one was measured
 * (faba bean, grain amaranth, radish); null for every other crop, which gets the distance rule and no number.
 */
export function pollenModelOf(cropKey: string): PollenModel | null {
  return (models as unknown as readonly PollenModel[]).find((model) => model.crops.includes(cropKey)) ?? null;
}
