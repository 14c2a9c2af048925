export { followCalculation, type Heard } from "./follow-calculation";
export { LongCalculation } from "./long-calculation";
export { type LongState, useLongCalculation } from "./use-long-calculation";
