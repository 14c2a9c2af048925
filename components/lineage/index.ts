export { layLineage } from "./layout";
export { LineageDrawing } from "./lineage-drawing";
export type { LineageLot } from "./lots";
