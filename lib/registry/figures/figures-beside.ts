import { lineageSpan } from "@/lib/science/lineage/lineage-span";
import type { LineageSpan, LineageSpanInput } from "@/lib/science/lineage/span-lots";
import { accepted, type Outcome } from "@/lib/science/outcome";
import { pageCalculations } from "@/lib/worker/long-calculations";
import { figuresByLineage, type LotFigure } from "./figures-of-records";
import { inTurns } from "./in-turns";
import { followedInSteps } from "./lineage-of-records";
import type { AllRecords } from "./records";

/** Spans of more lots than this are worked out in the thread beside the server: about 20 ms on one core. */
export const mostSpansHere = 400;

/**
 * `figuresOfRecords` for a server that others ask at the same time, which no calculation may hold for more than 50 ms: points are worked out in turns
 * with what others ask, spans of many lots, which cost most, in the thread beside it. Where the thread does not answer, they are worked out here.
 */
export async function figuresBeside(records: AllRecords): Promise<Outcome<LotFigure[]>> {
  const followed = await inTurns(followedInSteps(records));
  if (!followed.ok) return followed;
  const { spans, whole } = followed.value;
  const lineage = whole(spans === null ? new Map() : spans.read(await spansBeside(spans.input)));
  return accepted(await inTurns(figuresByLineage(records, lineage)));
}

/** Spans here where they are few, else in the thread. */
export async function spansBeside(input: LineageSpanInput): Promise<Outcome<LineageSpan>> {
  if (input.lots.length <= mostSpansHere) return lineageSpan(input);
  const answer = await pageCalculations().ask("lineage-span", input).answer;
  return answer.ok ? accepted(answer.value as LineageSpan) : lineageSpan(input);
}
