import type { Assumption } from "@/lib/science/outcome";
import { type SowingCount, sowingCount } from "@/lib/science/sowing/sowing-count";

/** Plants that come up of the seeds that germinate in a test, where nobody counted it in the field. */
export const assumedEmergence = 0.8;

export const emergenceAssumed: Assumption = {
  code: "emergence-of-0.8",
  text: "of the seeds that germinate in a test, 8 in 10 make a plant in the patch",
};

/** With how much confidence a sowing is to give the plants that are wanted. */
export const sowingConfidence = 0.9;

/** The seeds to sow for so many plants by a lot's test; null where it was never tested, or no number of seeds will do. */
export function sowingFor(
  test: { readonly sown: number; readonly normal: number } | null,
  plantsWanted: number,
): SowingCount | null {
  if (test === null) return null;
  const { sown, normal } = test;
  const counted = sowingCount({
    test: { sown, normal },
    plantsWanted,
    emergence: assumedEmergence,
    confidence: sowingConfidence,
  });
  return counted.ok ? counted.value : null;
}
