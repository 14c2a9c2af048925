import { ancestryOf } from "@/lib/science/lineage/ancestry-of";
import type { LotAsKnown } from "@/lib/science/lineage/span-lots";
import { spansBeside } from "./figures-beside";
import { founderHolding, foundersOfSpan } from "./founders-of-span";
import { lineageNodes, lotNode } from "./lineage-nodes";
import type { FigureRecords } from "./records";
import { recordsAround } from "./records-around";

/**
 * How near lots are to each other at the cautious end: founders as near as their records allow, own θ on the diagonal, in the order of the
 * lots. Null where no record of a founder moves it (then the lineage's own coancestry is the cautious one), or where it makes no lineage.
 *
 *     Θ(A, B) = 2 θ of half A and half B − ½ θ_A − ½ θ_B, each at its high end
 *
 * Lots whose own line is not known throughout stand with what the records have for them: look at each lot's own first. Of many lots, each two of
 * which are mixed, it is worked out in the thread beside the server.
 */
export async function cautiousKinship(all: FigureRecords, lotIds: readonly string[]): Promise<number[][] | null> {
  const records = recordsAround(all, lotIds);
  const nodes = lineageNodes(records);
  const { within, pairs } = foundersOfSpan(records, nodes);
  if (within.size === 0) return null;
  const ids = lotIds.map(lotNode);
  const inside = new Map([...within].map(([id, theta]) => [lotNode(id), theta]));
  const lots = ancestryOf(
    nodes.map(({ lot }) => lot),
    ids,
  ).map((lot): LotAsKnown => (lot.kind === "founder" ? founderHolding(lot, inside.get(lot.id) ?? 0) : lot));
  const known = new Set(lots.map(({ id }) => id));
  const mixed = ids.flatMap((a, i) =>
    ids.slice(i + 1).map((b, k): LotAsKnown => {
      const parents = [a, b].map((id) => ({ id, share: 0.5 }));
      return { id: `half ${i} and ${i + 1 + k}`, kind: "blend", parents };
    }),
  );
  const founderPairs = pairs.filter(({ a, b }) => known.has(a) && known.has(b));
  const found = await spansBeside({ lots: [...lots, ...mixed], founderPairs });
  if (!found.ok) return null;
  const high = new Map(found.value.lots.map(({ id, coancestry }) => [id, coancestry.high]));
  const at = (id: string) => high.get(id) ?? 0;
  return ids.map((a, i) =>
    ids.map((b, j) => {
      if (i === j) return at(a);
      const half = at(`half ${Math.min(i, j)} and ${Math.max(i, j)}`);
      return Math.max(0, 2 * half - (at(a) + at(b)) / 2);
    }),
  );
}
