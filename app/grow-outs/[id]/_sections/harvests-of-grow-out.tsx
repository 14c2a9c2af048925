import { LotsTaken } from "../_components/lots-in-and-out";
import type { SectionOfGrowOut } from "./section-of-grow-out";

/** What was harvested, and the lots that it became. */
export function HarvestsOfGrowOut({ read, units }: SectionOfGrowOut) {
  return <LotsTaken read={read} units={units} />;
}
