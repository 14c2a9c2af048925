import { lineageSpan } from "@/lib/science/lineage/lineage-span";
import type { LineageSpan, LineageSpanInput } from "@/lib/science/lineage/span-lots";
import { accepted, type Outcome } from "@/lib/science/outcome";
import { pageCalculations } from "@/lib/worker/long-calculations";
import { type AllRecords, figuresByLineage, type LotFigure } from "./figures-of-records";
import { followedRecords } from "./lineage-of-records";

/** Spans of more lots than this are worked out in the thread beside the server: about 20 ms on one core. */
export const mostSpansHere = 400;

/**
 * `figuresOfRecords` for a server that others ask at the same time: spans of many lots are worked out in the thread beside it, since they cost
 * most and none may hold it for more than 50 ms. Where the thread does not answer, they are worked out here.
 */
export async function figuresBeside(records: AllRecords): Promise<Outcome<LotFigure[]>> {
  const followed = followedRecords(records);
  if (!followed.ok) return followed;
  const { spans, whole } = followed.value;
  const lineage = whole(spans === null ? new Map() : spans.read(await spansBeside(spans.input)));
  return accepted(figuresByLineage(records, lineage));
}

async function spansBeside(input: LineageSpanInput): Promise<Outcome<LineageSpan>> {
  if (input.lots.length <= mostSpansHere) return lineageSpan(input);
  const answer = await pageCalculations().ask("lineage-span", input).answer;
  return answer.ok ? accepted(answer.value as LineageSpan) : lineageSpan(input);
}
