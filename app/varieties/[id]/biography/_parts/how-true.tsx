import { Section } from "@/components/frame";
import type { PassOfYears } from "@/lib/registry/traits/read-trait-years";
import { OffTypeYears } from "../../traits/years/off-type-years";

/** The off-types of each year with their exact interval, and whether they became more or fewer. */
export function HowTrue({ passes, variety }: { passes: readonly PassOfYears[]; variety: string }) {
  return (
    <Section id="true" title="How true it came">
      <OffTypeYears passes={passes} variety={variety} />
    </Section>
  );
}
