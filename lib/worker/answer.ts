import { calculationNamed } from "@/lib/schemas/calculations";
import type { Watch } from "@/lib/schemas/calculations/calculation";
import { type Outcome, refusal, refused } from "@/lib/science/outcome";

/** A calculation by its name, worked out. What it throws is a fault of ours: it is refused as an ended calculation is. */
export function answerTo(name: string, input: unknown, watch?: Watch): Outcome<object> {
  const calculation = calculationNamed(name);
  if (!calculation) {
    const needed = "choose one of the calculations on the page of methods";
    return refused(refusal("unknown-calculation", ["name"], name, "is no calculation", needed));
  }
  try {
    return calculation.run(input, watch);
  } catch (fault) {
    return calculationEnded(name, (fault as Error).message);
  }
}

/** No answer came: the thread ended, or there was no memory left for it. */
export function calculationEnded(name: string, why: string): Outcome<never> {
  return refused(
    refusal("calculation-ended", [], name, `ended without an answer (${why})`, "try again, or with less to work out"),
  );
}
