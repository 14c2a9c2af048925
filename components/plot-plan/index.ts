export type { Plan, PlanNeighbour, PlanRing, PlanWeight } from "./plan";
export { PlotPlan } from "./plot-plan";
