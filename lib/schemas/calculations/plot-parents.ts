import { z } from "zod";
import type { CalculationKey } from "@/lib/schemas/calculations/calculation";
import type { PlotParents } from "@/lib/science/effective-size/plot-parents";

const shares = z.union([z.literal("equal"), z.strictObject({ cv: z.number() }), z.array(z.number())]);

/** The plants that took part in one grow-out, as effective-size and lineage take them. */
export const plotParentsShape = {
  pollenParents: z.int(),
  seedParents: z.int(),
  sexes: z.enum(["hermaphrodite", "separate"]).optional(),
  selfingRate: z.number().optional(),
  selfIncompatible: z.boolean().optional(),
  seedShares: shares.optional(),
  pollenShares: shares.optional(),
} satisfies Record<keyof PlotParents, z.ZodType>;

const SHARES = '"equal", or {"cv": number}, or one number a plant in any unit';

export const plotParentsKeys: readonly CalculationKey[] = [
  {
    key: "pollenParents",
    shape: "whole number, 1 or more",
    meaning: "plants that shed pollen: all that flowered, less those rogued before; males where the sexes are separate",
  },
  {
    key: "seedParents",
    shape: "whole number, 1 or more",
    meaning: "plants whose seed was kept; among the pollen parents, or females where the sexes are separate",
  },
  {
    key: "sexes",
    shape: '"hermaphrodite" or "separate"',
    meaning: "both sexes on a plant, or male and female plants",
    usual: "hermaphrodite",
  },
  { key: "selfingRate", shape: "0 to 1", meaning: "share of seed from selfing beyond chance", usual: "0" },
  { key: "selfIncompatible", shape: "true or false", meaning: "no plant can father its own seed", usual: "false" },
  { key: "seedShares", shape: SHARES, meaning: "how much of the seed each seed parent gave", usual: "equal" },
  {
    key: "pollenShares",
    shape: `${SHARES}, the seed parents first`,
    meaning: "how much of the pollen each plant shed; 0 for a tassel taken",
    usual: "equal",
  },
];
