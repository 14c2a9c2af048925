import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { plotParentsKeys, plotParentsShape } from "@/lib/schemas/calculations/plot-parents";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { lineageSpan } from "@/lib/science/lineage/lineage-span";

const id = z.string().min(1);
const parents = z.array(z.strictObject({ id, share: z.number().optional() }));
const sown = z.array(
  z.strictObject({ id, share: z.number().optional(), role: z.enum(["seed parent", "pollen parent"]).optional() }),
);
const plants = z.union([z.int(), z.strictObject({ low: z.int(), high: z.int().nullable() })]).optional();

const { sexes, selfIncompatible, seedShares, pollenShares } = plotParentsShape;

const lot = z.discriminatedUnion("kind", [
  z.strictObject({
    id,
    kind: z.literal("founder"),
    inbreeding: z.number().optional(),
    coancestry: z.number().optional(),
  }),
  z.strictObject({
    id,
    kind: z.literal("grow-out"),
    parents: sown,
    pollenParents: plants,
    seedParents: plants,
    sexes,
    selfingRate: z.union([z.number(), z.strictObject({ low: z.number(), high: z.number() })]).optional(),
    selfIncompatible,
    seedShares: z
      .union([seedShares.unwrap(), z.literal("unknown"), z.strictObject({ largest: z.number() })])
      .optional(),
    pollenShares,
    seedParentsMayNotShed: z.boolean().optional(),
    foreignPollen: z.number().optional(),
    plants: z.string().min(1).optional(),
  }),
  z.strictObject({ id, kind: z.literal("blend"), parents }),
  z.strictObject({
    id,
    kind: z.literal("split"),
    parents: z.array(z.strictObject({ id, share: z.number() })),
  }),
]);

const shape = z.strictObject({
  lots: z.array(lot),
  founderPairs: z
    .array(z.strictObject({ a: id, b: id, coancestry: z.union([z.number(), z.literal("unknown")]) }))
    .optional(),
});

const ends = "{low, high}";

export const lineageSpanCalculation = calculation(
  {
    name: "lineage-span",
    title: "Diversity down a tree of lots where something was not written down",
    answers:
      "From the worst to the best that the records allow of each lot: how much of the founders' diversity it still holds, and how inbred its seed " +
      "is, where plants were not counted, shares not written, or founders may be kin.",
    whenToDoubt:
      "When the bounds themselves are a guess. Pollen of uncounted plants is taken as shared alike, and foreign pollen that nobody assessed as none. " +
      "The span can be a little wider than need be, never narrower. What nothing bounds begins the measure anew, and says so.",
    formula: [
      "θ_new = a² θ̄ + κ_m (S − θ̄),  F_new = α S + (2a − 1 − α) θ̄,  Θ(new, X) = a Σ w Θ(A, X),  S = ½(1 + F̄)",
      "a = ½(1 + s + u),  κ_m = ¼[(1 + s)² P_MM + 2u(1 + s) P_MF + u² P_FF],  α = s + u·P_MF,  u = (1 − s)(1 − m)",
      "all at their least and at their greatest: P_MM, P_MF, P_FF as in effective-size-span, s between its bounds",
      "unknown shares among parents U: Θ(U, X) from the least to the greatest Θ(A, X); θ̄ of U from b + 1/Σ 1/(θ_A − b) to the greatest θ_A",
      "founders who may be kin: Θ(a, b) from 0 to the lesser of θ_a and θ_b",
      "nothing bounds the plants: a new founder, θ = 0, F = s/(2 − s)",
    ],
    symbols: [
      { symbol: "θ, Θ, F, S, w", meaning: "coancestry, inbreeding, self term and parents' shares, as in lineage" },
      { symbol: "a", meaning: "part of the genes that came from the parent lots; the rest is foreign pollen" },
      { symbol: "κ_m", meaning: "chance that two such genes of two seeds came from one plant" },
      { symbol: "α", meaning: "chance that the two genes of one seed came from one plant" },
      { symbol: "b", meaning: "the least coancestry between two parents of unknown share" },
      { symbol: "s, m", meaning: "selfing beyond chance; foreign part of the outcross pollen" },
    ],
    source: [
      "Derived from the recursion of lineage (Cockerham 1967, Genetics 56:89-104; Lindgren & Mullin 1998, Can. J. For. Res. 28:276-283)",
      "No worked example of such bounds in print was found; checked by a program that tries every number of plants the records allow",
    ],
    input: [
      { key: "lots[].id", shape: "text, each once", meaning: "the lot; lots may stand in any order" },
      { key: "lots[].kind", shape: '"founder", "grow-out", "blend" or "split"', meaning: "how the lot came about" },
      { key: "lots[].inbreeding", shape: "0 to 1, founders only", meaning: "F of a founder", usual: "0" },
      {
        key: "lots[].coancestry",
        shape: "0 to ½(1 + inbreeding), founders only",
        meaning: "θ inside a founder",
        usual: "0",
      },
      {
        key: "lots[].parents",
        shape: "list of {id, share}; all kinds but founders",
        meaning: "lots it was made from; a share left out is anything up to what the others leave",
      },
      ...["pollenParents", "seedParents"].map((key) => ({
        key: `lots[].${key}`,
        shape: "whole number, or {low, high}; high null where nothing bounds it",
        meaning: `grow-outs: ${plotParentsKeys.find((entry) => entry.key === key)?.meaning ?? ""}`,
        usual: "not known",
      })),
      ...plotParentsKeys
        .filter(({ key }) => key === "sexes" || key === "selfIncompatible" || key === "pollenShares")
        .map((entry) => ({ ...entry, key: `lots[].${entry.key}`, meaning: `grow-outs: ${entry.meaning}` })),
      {
        key: "lots[].selfingRate",
        shape: "0 to 1, or {low, high}",
        meaning: "grow-outs: share of seed from selfing beyond chance",
        usual: "0",
      },
      {
        key: "lots[].seedShares",
        shape: '"equal", {"cv": number}, one number a plant, {"largest": share} or "unknown"',
        meaning: "grow-outs: how much of the seed each seed parent gave, as far as it is known",
        usual: "unknown",
      },
      {
        key: "lots[].seedParentsMayNotShed",
        shape: "true or false",
        meaning: "grow-outs: plants lost their tassels, and nobody wrote whether the seed parents did",
        usual: "false",
      },
      {
        key: "lots[].foreignPollen",
        shape: "0 to 1",
        meaning: "grow-outs: part of the outcross pollen that came from outside",
        usual: "0",
      },
      {
        key: "lots[].parents[].role",
        shape: '"seed parent" or "pollen parent"; one of each, half each',
        meaning: 'a cross, as in lineage: sexes "separate"',
        usual: "its plants are both",
      },
      {
        key: "lots[].plants",
        shape: "text",
        meaning:
          "grow-outs counted throughout: names the plants, where several lots were harvested from the same ones, as in lineage",
        usual: "each lot has plants of its own",
      },
      {
        key: "founderPairs",
        shape: 'list of {a, b, coancestry}, a number or "unknown"',
        meaning: "how near two founders are; those not named are unrelated",
        usual: "none",
      },
    ],
    output: [
      { key: "lots[].inbreeding", shape: ends, meaning: "F at the best and at the worst" },
      { key: "lots[].coancestry", shape: ends, meaning: "θ at the best and at the worst" },
      { key: "lots[].diversityRetained", shape: ends, meaning: "1 − θ at the worst and at the best" },
      {
        key: "lots[].founderEquivalents",
        shape: "{low, high}, plants, or null",
        meaning: "1/(2θ); null where these records set no limit",
      },
      {
        key: "lots[].effectiveSize",
        shape: "{low, high}, plants, or null",
        meaning: "Ne of a grow-out; high null without bound; null for other lots and where nothing bounds it",
      },
      { key: "lots[].generations", shape: ends, meaning: "grow-outs since the founders, on average over the ways" },
      {
        key: "lots[].since",
        shape: "list of ids",
        meaning: "grow-outs in its line that nothing bounds: the measure begins with them",
      },
      assumedKey,
    ],
  },
  shape,
  {
    lots: [
      { id: "from my aunt", kind: "founder" },
      {
        id: "1994",
        kind: "grow-out",
        parents: [{ id: "from my aunt", share: 1 }],
        pollenParents: { low: 10, high: 60 },
        seedParents: 10,
        seedShares: "equal",
      },
    ],
  },
  lineageSpan,
);
