export { OverYears } from "./over-years";
export type { YearPoint, YearSeries } from "./points";
