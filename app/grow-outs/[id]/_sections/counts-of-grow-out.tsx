import { EventsSection } from "../_components/events-section";
import type { SectionOfGrowOut } from "./section-of-grow-out";

/** Counts by stage, rogue passes and flowering, and what they say of the effective size. */
export function CountsOfGrowOut({ read, units }: SectionOfGrowOut) {
  return <EventsSection read={read} units={units} />;
}
