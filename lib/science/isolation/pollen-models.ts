import { type OwnInTable, type OwnOfRow, ownAmong, withOwn } from "@/lib/science/tables/own-in-table";
import type { PollenKernel } from "./pollen-kernel";
import models from "./pollen-models.json";

/** A crop for which a share of foreign pollen may be given, and how, as it stands in the table. */
export type PublishedPollenModel =
  | {
      readonly key: string;
      readonly crops: readonly string[];
      readonly form: "plane";
      readonly kernel: PollenKernel;
      readonly beyondMetres: number;
      readonly source: string;
      readonly verified: string;
    }
  | {
      readonly key: string;
      readonly crops: readonly string[];
      readonly form: "odds";
      readonly curve: { readonly a: number; readonly b: number; readonly cap: number };
      /** the curve was measured from here to there, in metres; beyond it is a guess */
      readonly fromMetres: number;
      readonly beyondMetres: number;
      readonly source: string;
      readonly verified: string;
    };

/** The same with a steward's own values among its numbers. */
export type PollenModel = PublishedPollenModel & { readonly own: readonly OwnOfRow[] };

/** The models as they stand in the table. */
export function pollenModels(): readonly PublishedPollenModel[] {
  return models as unknown as readonly PublishedPollenModel[];
}

/**
 * The model of a crop's pollen flow: a kernel where one was checked against fields (maize), a curve of distance where one was measured
 * (faba bean, grain amaranth, radish); null for every other crop, which gets the distance rule and no number. A steward's own numbers stand in
 * their places where `own` has any.
 */
export function pollenModelOf(cropKey: string, own: readonly OwnInTable[] = []): PollenModel | null {
  const model = pollenModels().find(({ crops }) => crops.includes(cropKey));
  if (!model) return null;
  if (model.form === "plane") {
    const { kernel } = model;
    const numbers: Record<string, number> = kernel.model === "2dt" ? { a: kernel.a, b: kernel.b } : {};
    const instead = ownAmong(own, "pollen-models", model.key, { ...numbers, beyondMetres: model.beyondMetres });
    const { beyondMetres, ...rest } = withOwn({ ...kernel, beyondMetres: model.beyondMetres }, instead);
    return { ...model, kernel: rest, beyondMetres, own: instead };
  }
  const { a, b, cap } = model.curve;
  const { fromMetres, beyondMetres } = model;
  const published = { a, b, cap, fromMetres, beyondMetres };
  const instead = ownAmong(own, "pollen-models", model.key, published);
  const { fromMetres: from, beyondMetres: beyond, ...curve } = withOwn(published, instead);
  return { ...model, curve, fromMetres: from, beyondMetres: beyond, own: instead };
}
