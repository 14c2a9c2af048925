import type { SearchParameters } from "@/components/tables";
import type { UnitSettings } from "@/lib/display/units";
import type { GrowOutRead } from "@/lib/registry/grow-outs/read-grow-out";
import type { CivilDay } from "@/lib/science/dates/civil-day";

/** What every section of a grow-out's page is given. */
export interface SectionOfGrowOut {
  readonly read: GrowOutRead;
  readonly units: UnitSettings;
  readonly today: CivilDay;
  /** what the page's address asks for */
  readonly parameters: SearchParameters;
}
