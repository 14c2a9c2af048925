export { DoubtKey } from "./doubt-key";
export type { Bounds, Grade } from "./grade";
export { Hatch } from "./hatch";
export { SpanBar } from "./span-bar";
export { spindle, uprightSpindle } from "./spindle";
