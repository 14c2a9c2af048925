import { Worker } from "node:worker_threads";
import { CalculationQueue, type Thread } from "./calculation-queue";

// One queue for the life of the process, also across reloads of the code while developing.
const shelf = globalThis as unknown as { kinrowCalculations?: CalculationQueue; kinrowOfPages?: CalculationQueue };

/** The queue of long calculations of this process. */
export function longCalculations(): CalculationQueue {
  shelf.kinrowCalculations ??= new CalculationQueue({ startThread: startCalculationThread });
  return shelf.kinrowCalculations;
}

/** A queue of its own for what a page itself waits for, so that no page stands behind somebody's ten thousand runs. */
export function pageCalculations(): CalculationQueue {
  shelf.kinrowOfPages ??= new CalculationQueue({ startThread: startCalculationThread });
  return shelf.kinrowOfPages;
}

/** More memory than any sound input needs; beyond, the thread ends and the calculation is refused, not the server. */
const resourceLimits = { maxOldGenerationSizeMb: 1024 };

/** The thread itself. The server's build takes it along as JavaScript; from the source (command line, tests) it is read as TypeScript. */
export function startCalculationThread(): Thread {
  if (process.env.NEXT_RUNTIME) return new Worker(new URL("./thread.ts", import.meta.url), { resourceLimits });
  const source = JSON.stringify(new URL("./thread.ts", import.meta.url).href);
  const reading = `import("tsx/esm/api").then(({ register }) => { register(); return import(${source}); });`;
  return new Worker(reading, { eval: true, resourceLimits, execArgv: [] });
}
