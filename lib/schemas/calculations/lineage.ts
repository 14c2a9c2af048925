import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { plotParentsKeys, plotParentsShape } from "@/lib/schemas/calculations/plot-parents";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { lineage } from "@/lib/science/lineage/lineage";

const id = z.string().min(1);
const parents = z.array(z.strictObject({ id, share: z.number() }));
const sown = z.array(
  z.strictObject({ id, share: z.number(), role: z.enum(["seed parent", "pollen parent"]).optional() }),
);

/** A lot of a lineage: founder, grow-out, blend or split. */
export const lineageLotShape = z.discriminatedUnion("kind", [
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
    ...plotParentsShape,
    foreignPollen: z.number().optional(),
    plants: z.string().min(1).optional(),
  }),
  z.strictObject({ id, kind: z.literal("blend"), parents }),
  z.strictObject({ id, kind: z.literal("split"), parents }),
]);

const shape = z.strictObject({ lots: z.array(lineageLotShape), pairs: z.array(z.tuple([id, id])).optional() });

export const lineageCalculation = calculation(
  {
    name: "lineage",
    title: "Diversity down a tree of lots",
    answers:
      "How much of the founders' diversity each lot still holds, how inbred its seed is, how near two lots are, and how much foreign pollen came in, " +
      "through every grow-out, blend and split on record.",
    whenToDoubt:
      "When an ancestor's plants were not counted, or founders taken as unrelated were kin. It is an expectation from the records, not a measurement " +
      "of this seed; it knows no selection. Foreign pollen makes plain diversity rise: read the native figure then.",
    formula: [
      "θ_new = ¼ {(1 + s)² G(P_MM) + 2u(1 + s) G(P_MF) + u² G(P_FF)},  G(P) = P·S + (1 − P)·θ̄",
      "F_new = s·S + u·G(P_MF)   (separate sexes, self-incompatible: s·S + u·θ̄)",
      "S = ½(1 + F̄),  θ̄ = ΣΣ w w' Θ,  u = (1 − s)(1 − m)",
      "Θ(new, X) = ½(1 + s + u) Σ w Θ(A, X)",
      "cross of lots A and B: θ_new = ¼ G_A(P_MM) + ½ u Θ(A, B) + ¼ u² G_B(P_FF),  F_new = u Θ(A, B)",
      "two harvests of the same plants: Θ(O, O') = a² θ̄ + Σ c c' (S − θ̄),  c = ½[(1 + s) q + u p]",
      "blend: θ = ΣΣ w w' Θ,  F = Σ w F;  split: as its parent",
      "diversity retained = 1 − θ,  founder equivalents = 1/(2θ),  native diversity retained = 1 − t/k",
    ],
    symbols: [
      { symbol: "θ", meaning: "coancestry: chance that genes of two seeds of a lot are one by descent" },
      { symbol: "Θ(A, X)", meaning: "the same for a seed of each of two lots" },
      { symbol: "F", meaning: "inbreeding: the same inside one seed" },
      { symbol: "w", meaning: "each parent lot's share of the plants grown, or of the blend" },
      { symbol: "s, m", meaning: "selfing beyond chance; foreign part of the outcross pollen" },
      { symbol: "P_MM, P_MF, P_FF", meaning: "chances of one parent in common, as in effective-size" },
      { symbol: "t, k", meaning: "chance that both genes are native and one by descent; that both are native" },
    ],
    source: [
      "Cockerham 1967, Genetics 56:89-104 (group coancestry)",
      "Lindgren & Mullin 1998, Can. J. For. Res. 28:276-283 (foreign pollen, related parents)",
      "Lacy 1989, Zoo Biol. 8:111-123 (founder equivalents)",
      "The native recursion is derived here and was checked by gene drop",
    ],
    input: [
      { key: "lots[].id", shape: "text, each once", meaning: "the lot; lots may stand in any order" },
      { key: "lots[].kind", shape: '"founder", "grow-out", "blend" or "split"', meaning: "how the lot came about" },
      { key: "lots[].inbreeding", shape: "0 to 1, founders only", meaning: "F of a founder", usual: "0" },
      {
        key: "lots[].coancestry",
        shape: "0 to ½(1 + inbreeding), founders only",
        meaning: "θ inside a founder; two founders are unrelated",
        usual: "0",
      },
      {
        key: "lots[].parents",
        shape: "list of {id, share}, shares of sum 1; all kinds but founders",
        meaning:
          "lots it was made from: share of the plants grown, or of the living seeds of a blend; a split has one of share 1",
      },
      ...plotParentsKeys.map((entry) => ({
        ...entry,
        key: `lots[].${entry.key}`,
        meaning: `grow-outs: ${entry.meaning}`,
      })),
      {
        key: "lots[].foreignPollen",
        shape: "0 to 1",
        meaning: "grow-outs: part of the outcross pollen that came from outside",
        usual: "0",
      },
      {
        key: "lots[].parents[].role",
        shape: '"seed parent" or "pollen parent"; one of each, half each',
        meaning: 'a cross: the seed parents are of one lot and the pollen parents of another, sexes "separate"',
        usual: "its plants are both",
      },
      {
        key: "lots[].plants",
        shape: "text",
        meaning:
          "grow-outs: names the plants, where several lots were harvested from the same ones; seedShares are then one number a plant in one " +
          "order, 0 for a plant that gave this lot none, and all else is alike",
        usual: "each lot has plants of its own",
      },
      { key: "pairs", shape: "list of [id, id]", meaning: "two lots each whose coancestry is asked", usual: "none" },
    ],
    output: [
      { key: "lots[].inbreeding", shape: "0 to 1", meaning: "F" },
      { key: "lots[].coancestry", shape: "0 to 1", meaning: "θ" },
      { key: "lots[].diversityRetained", shape: "0 to 1", meaning: "1 − θ" },
      { key: "lots[].founderEquivalents", shape: "plants, or null", meaning: "null where these records set no limit" },
      { key: "lots[].foreignAncestry", shape: "0 to 1", meaning: "share of the genes from foreign pollen" },
      {
        key: "lots[].nativeDiversityRetained",
        shape: "0 to 1, or null",
        meaning: "diversity kept among the variety's own genes",
      },
      { key: "lots[].generations", shape: "number", meaning: "grow-outs since the founders, on average over the ways" },
      { key: "pairs[]", shape: "{a, b, coancestry}", meaning: "Θ(a, b)" },
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
        pollenParents: 40,
        seedParents: 12,
      },
    ],
    pairs: [["from my aunt", "1994"]],
  },
  lineage,
);
