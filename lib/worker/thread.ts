import { parentPort } from "node:worker_threads";
import { answerTo } from "./answer";
import type { Asked, Told } from "./messages";

// Runs in a thread of its own: one calculation after the other, as they are asked.

/** Progress is told so many milliseconds apart: often enough for an eye, seldom enough to cost nothing. */
const TELLING_APART = 50;

const tell = (told: Told) => parentPort?.postMessage(told);

parentPort?.on("message", ({ job, name, input }: Asked) => {
  let last = performance.now();
  const answer = answerTo(name, input, (done, of) => {
    const now = performance.now();
    if (now - last < TELLING_APART) return;
    last = now;
    tell({ job, done, of });
  });
  tell({ job, answer });
});
