// How the server is started: with room for what one page works out. A page over thousands of lots makes some tens of megabytes that are gone when it
// is sent; where the room for what is young is small, the engine copies them about while the page is still at work (a fifth of its time). Where a
// machine has little memory, the engine's own measure stands. Documented in Node's list of V8 options.
import { totalmem } from "node:os";

const roomMebibytes = 64;
const enoughMemory = 4 * 1024 ** 3;

/** Arguments for the program that runs the server. */
export function serverFlags(memory = totalmem()) {
  return memory >= enoughMemory * 0.9 ? [`--max-semi-space-size=${roomMebibytes}`] : [];
}
