import { PlantsSection } from "../_components/plants-section";
import type { SectionOfGrowOut } from "./section-of-grow-out";

/** Marked plants and their scores. */
export function PlantsOfGrowOut({ read, units, parameters }: SectionOfGrowOut) {
  return <PlantsSection read={read} units={units} parameters={parameters} />;
}
