export { GrowOutLine } from "./grow-out-line";
export type { LineStage } from "./line-stage";
