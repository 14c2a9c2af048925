import { Section } from "@/components/frame";
import { ButtonLink } from "@/components/ui";
import { CountsTable } from "../_counts/counts-table";
import { Flowering } from "../_counts/flowering";
import { Rogues } from "../_counts/rogues";
import { SizeByNow } from "../_counts/size-by-now";
import { fieldOfPage } from "../read";
import type { SectionOfGrowOut } from "./section-of-grow-out";

/** Counts by stage, rogue passes and flowering, and what they say of the effective size. */
export async function CountsOfGrowOut({ read }: SectionOfGrowOut) {
  const field = await fieldOfPage(read.growOut.id);
  if (!field) return null;
  const { id } = read.growOut;
  return (
    <Section id="counts" title="Counted, pulled and in flower">
      <div className="stack">
        <SizeByNow ground={field.size} />
        <CountsTable read={read} field={field} />
        <Rogues read={read} field={field} />
        <Flowering read={read} field={field} />
        <div className="row">
          <ButtonLink href={`/grow-outs/${id}/count`}>Count plants</ButtonLink>
          <ButtonLink href={`/grow-outs/${id}/rogue`}>Write a rogue pass</ButtonLink>
          <ButtonLink href={`/grow-outs/${id}/flowering`}>Note flowering</ButtonLink>
        </div>
      </div>
    </Section>
  );
}
