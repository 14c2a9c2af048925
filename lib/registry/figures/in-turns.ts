import type { Steps } from "@/lib/science/in-steps";

/** Milliseconds that long work keeps the server before others come first. */
const mostAtOneGo = 12;

/** Long work between what others ask: none waits longer for it than one turn and a step. */
export async function inTurns<T>(steps: Steps<T>): Promise<T> {
  for (let from = performance.now(); ; ) {
    const step = steps.next();
    if (step.done) return step.value;
    if (performance.now() - from < mostAtOneGo) continue;
    await othersFirst();
    from = performance.now();
  }
}

/** Lets the server answer what waits. */
export function othersFirst(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}
