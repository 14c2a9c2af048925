export { readStemAddress, type StemAddress, stemAddress } from "./address";
export type { LotCard, LotCards } from "./cards";
export { orderTree } from "./layout/lay-stems";
export { toneScale } from "./layout/tones";
export type { StemBand, StemClaim, StemKind, StemLot, StemTree } from "./stem";
export { StemChart } from "./stem-chart";
export { StemLegend } from "./stem-legend";
export { followed, kinOf, sharedAncestors } from "./trace";
