import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { floweringOverlap } from "@/lib/science/isolation/flowering-overlap";

const days = z.union([
  z.strictObject({ peak: z.number(), sd: z.number() }),
  z.strictObject({ first: z.number(), last: z.number(), peak: z.number().optional() }),
]);

const shape = z.strictObject({
  stigma: days,
  ownPollen: days,
  foreignPollen: days,
  loadRatio: z.number().optional(),
});

const DAYS = '{"peak", "sd"} or {"first", "last", "peak"}, days';

export const floweringOverlapCalculation = calculation(
  {
    name: "flowering-overlap",
    title: "How far another planting's flowering meets ours",
    answers:
      "From the days on which our stigmas were receptive and another planting shed pollen: how much of the two falls together, and what part of that pollen was in time for us. With the amount of pollen that comes in, the share of seed from it.",
    whenToDoubt:
      "When flowering came in several flushes, or its end was not noted. Crops that bloom for months (squash, tomato, faba bean) are no bell, and time parts them from nothing. " +
      "Over two standard deviations apart the share with a load ratio is the truer one: late stigmas meet little pollen of their own.",
    formula: [
      "overlap = ∫ min(foreign pollen, stigmas) dt",
      "synchrony = exp(−δ² / (2(σf² + σs²))),  δ = foreign peak − stigma peak",
      "share = ∫ stigmas · ρ·foreign / (own + ρ·foreign) dt",
      "from first to last: peak in the middle unless seen, σ = (last − first)/4",
    ],
    symbols: [
      { symbol: "σf, σs", meaning: "standard deviation of the foreign pollen and of our stigmas, days" },
      { symbol: "ρ", meaning: "load ratio: foreign pollen that comes in all, for each part of our own" },
    ],
    source: [
      "Inman & Bradley 1989, Commun. Stat. Theory Methods 18:3851-3874 (overlap of two normal curves)",
      "The spread as a quarter of first to last is a rule of the trade; no paper was read for it",
    ],
    input: [
      { key: "stigma", shape: DAYS, meaning: "when our stigmas are receptive", usual: "peak in the middle" },
      { key: "ownPollen", shape: DAYS, meaning: "when our own plants shed pollen", usual: "peak in the middle" },
      { key: "foreignPollen", shape: DAYS, meaning: "when the other planting sheds", usual: "peak in the middle" },
      { key: "loadRatio", shape: "0 or more", meaning: "ρ; without it no share is given" },
    ],
    output: [
      { key: "overlap", shape: "0 to 1", meaning: "area that both curves have in common" },
      { key: "synchrony", shape: "0 to 1", meaning: "its pollen that is in time for us, against pollen fully in time" },
      { key: "daysApart", shape: "days", meaning: "from our stigmas' peak to its peak; negative where it is earlier" },
      { key: "share", shape: "0 to 1, or null", meaning: "share of seed from it, where a load ratio was given" },
      assumedKey,
    ],
  },
  shape,
  {
    stigma: { first: 196, last: 204 },
    ownPollen: { first: 194, last: 202 },
    foreignPollen: { peak: 204, sd: 2 },
    loadRatio: 0.1,
  },
  floweringOverlap,
);
