export type { DescentLine, DescentPoint } from "./descent";
export { DescentOverYears } from "./descent-over-years";
export { OverYears } from "./over-years";
export type { YearPoint, YearSeries } from "./points";
export type { TraitPoint } from "./trait-layout";
export { TraitOverYears, TraitOverYearsKey } from "./trait-over-years";
