import { atOnce } from "@/lib/science/in-steps";
import { ancestryOf } from "@/lib/science/lineage/ancestry-of";
import type { LineageSpanInput } from "@/lib/science/lineage/span-lots";
import { foundersOfSpan } from "./founders-of-span";
import { lineageNodes, lotNode } from "./lineage-nodes";
import type { FigureRecords } from "./records";
import { recordsAround } from "./records-around";
import { SpanGround } from "./span-ground";
import { knownNodes } from "./spans-of-records";

/** Some lots with all their ancestors, each as far as it is known, as the spans of their figures are worked out from. Lots are named as in the lineage. */
export function linesAsKnown(all: FigureRecords, lotIds: readonly string[]): LineageSpanInput {
  const records = recordsAround(all, lotIds);
  const nodes = lineageNodes(records);
  const ancestors = ancestryOf(
    nodes.map(({ lot }) => lot),
    lotIds.map(lotNode),
  );
  const wanted = new Set(ancestors.map(({ id }) => id));
  const founders = foundersOfSpan(records, nodes);
  const known = atOnce(
    knownNodes(
      records,
      nodes,
      nodes.map(({ lot }) => wanted.has(lot.id)),
      founders.within,
    ),
  );
  return new SpanGround(
    known,
    founders.pairs.filter(({ a, b }) => known.has(a) && known.has(b)),
  ).input();
}
