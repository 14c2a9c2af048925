export { FloweringStrip } from "./flowering-strip";
export type { StripRow } from "./strip";
