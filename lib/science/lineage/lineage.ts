import { eachInSteps, type Steps } from "@/lib/science/in-steps";
import { coancestryOfPairs } from "@/lib/science/lineage/coancestry-of-pair";
import type { LineageFigures } from "@/lib/science/lineage/figures";
import { followInSteps, followLots } from "@/lib/science/lineage/follow-lots";
import { founderEquivalents } from "@/lib/science/lineage/founder-equivalents";
import { lineageAssumed } from "@/lib/science/lineage/lineage-assumed";
import type { LineageInput, LineageResult, LotLineage } from "@/lib/science/lineage/lots";
import { type Pedigree, pedigree } from "@/lib/science/lineage/pedigree";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";

/**
 * Inbreeding, coancestry and diversity down a tree of lots.
 *
 * Grow-out with parent shares w, selfing s, foreign pollen m; F̄ = Σ w F, θ̄ = ΣΣ w w' Θ, S = ½(1 + F̄), u = (1 − s)(1 − m),
 * G(P) = P·S + (1 − P)·θ̄, and P_MM, P_MF, P_FF of sameParentTerms:
 *
 *     θ_new = ¼ { (1 + s)² G(P_MM) + 2u(1 + s) G(P_MF) + u² G(P_FF) }
 *     F_new = s·S + u·G(P_MF)            separate sexes, self-incompatible: s·S + u·θ̄
 *     Θ(new, X) = ½(1 + s + u) Σ w_A Θ(A, X)
 *     n_new = ½(1 + s + u) n̄             g_new = 1 + Σ w g
 *
 * Blend: θ = ΣΣ w w' Θ; F, n, g are means. Split: a copy; only a grow-out drifts. The recursion runs twice more for genes that
 * are native and identical (t) and both native (k); native coancestry is t/k.
 *
 * Takes lots and parents in any order; gives figures in input order. Probabilities 0 to 1.
 * Refused, each with its place (`["lots", 3, "pollenParents"]`): repeated ids, unknown parents, shares not of sum 1, a lot that
 * is its own ancestor (`["lots"]`), a founder's coancestry above ½(1 + F), whatever effectiveSize refuses of a grow-out's parents.
 * Limits: expectations for unlinked neutral genes, relative to the founders; no mutation, no selection.
 * Example: 10 plants, seed of 4; then 20; then 8, seed of 5: θ 0.06875, 0.0915625, 0.156856.
 * Source: coancestry recursion of Cockerham 1967, Genetics 56:89-104 and Lindgren & Mullin 1998, Can. J. For. Res. 28:276-283;
 * founder equivalents Lacy 1989, Zoo Biol. 8:111-123; foreign pollen and natives: derived, checked by gene drop.
 */
export function lineage(input: LineageInput): Outcome<LineageResult> {
  const built = pedigree(input.lots);
  if (!built.ok) return built;
  const { rankOf } = built.value;
  const pairs = input.pairs ?? [];
  const unknown = unknownPairs(pairs, rankOf);
  if (unknown.length > 0) return refused(...unknown);

  const figures = followLots(built.value);
  const between = coancestryOfPairs(built.value, figures);
  return accepted({
    lots: input.lots.map(({ id }) => lotLineage(id, figures, rankIn(built.value, id))),
    pairs: pairs.map(([a, b]) => ({ a, b, coancestry: between(rankIn(built.value, a), rankIn(built.value, b)) })),
    assumed: lineageAssumed(input.lots),
  });
}

/** The figures of the lots of a pedigree, which was checked when it was made; by rank. */
export function* lineageInSteps(checked: Pedigree): Steps<LotLineage[]> {
  const figures = yield* followInSteps(checked);
  return yield* eachInSteps(checked.lots, ({ id }, rank) => lotLineage(id, figures, rank));
}

function rankIn({ rankOf }: Pedigree, id: string): number {
  return rankOf.get(id) as number;
}

function lotLineage(id: string, figures: LineageFigures, rank: number): LotLineage {
  const coancestry = figures.coancestry[rank] as number;
  const native = figures.native[rank] as number;
  const bothNative = native ** 2 + (figures.bothNativeExcess[rank] as number);
  return {
    id,
    inbreeding: figures.inbreeding[rank] as number,
    coancestry,
    diversityRetained: 1 - coancestry,
    founderEquivalents: founderEquivalents(coancestry),
    foreignAncestry: 1 - native,
    nativeDiversityRetained: bothNative === 0 ? null : 1 - (figures.nativeIdentical[rank] as number) / bothNative,
    generations: figures.generations[rank] as number,
  };
}

function unknownPairs(pairs: NonNullable<LineageInput["pairs"]>, known: ReadonlyMap<string, number>): Refusal[] {
  return pairs.flatMap((pair, index) =>
    pair.flatMap((id, side) =>
      known.has(id)
        ? []
        : [
            refusal(
              "unknown-lot",
              ["pairs", index, side],
              id,
              "is no lot of this lineage",
              "name one of the lots above",
            ),
          ],
    ),
  );
}
