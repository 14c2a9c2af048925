import Link from "next/link";
import { Section } from "@/components/frame";
import { SeedCoat } from "@/components/seed-coat";
import { dateInWords } from "@/lib/display/dates";
import { counted } from "@/lib/display/plurals";
import type { GrowOutNow } from "@/lib/registry/grow-outs/grow-outs-now";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import styles from "./now-section.module.css";

/** What is planned and what stands, each a line that leads to it. */
export function NowSections({
  planned,
  standing,
}: {
  planned: readonly GrowOutNow[];
  standing: readonly GrowOutNow[];
}) {
  return (
    <>
      {standing.length > 0 ? (
        <Section id="standing" title="Standing" aside={counted(standing.length, "grow-out")}>
          <NowList growOuts={standing} says={standingInWords} />
        </Section>
      ) : null}
      {planned.length > 0 ? (
        <Section id="planned" title="Planned" aside={counted(planned.length, "grow-out")}>
          <NowList growOuts={planned} says={plannedInWords} />
        </Section>
      ) : null}
    </>
  );
}

function NowList({ growOuts, says }: { growOuts: readonly GrowOutNow[]; says: (growOut: GrowOutNow) => string }) {
  return (
    <ul className={styles.list}>
      {growOuts.map((growOut) => (
        <li key={growOut.id} className={styles.line}>
          <SeedCoat name={growOut.variety} crop={growOut.cropKey} coat={storedSeedCoat(growOut.seedCoat)} size={28} />
          <span className={styles.names}>
            <Link href={`/grow-outs/${growOut.id}`}>{growOut.name}</Link>
            <span className={styles.says}>
              {growOut.name.startsWith(growOut.variety) ? says(growOut) : `${growOut.variety}, ${says(growOut)}`}
            </span>
          </span>
        </li>
      ))}
    </ul>
  );
}

function standingInWords({ sown, plantsStanding, plot, steward, lifeCycle }: GrowOutNow): string {
  const parts = [
    sown === null ? "day of sowing unknown" : `sown ${dateInWords(sown)}`,
    plantsStanding === null ? "plants not counted" : counted(plantsStanding, "plant"),
    lifeCycle === "annual" ? null : lifeCycle,
    plot,
    steward,
  ];
  return parts.filter(Boolean).join(", ");
}

function plannedInWords({ plantsPlanned, plot, steward }: GrowOutNow): string {
  const plants = plantsPlanned === null ? "how many plants is not said" : counted(plantsPlanned, "plant");
  return [plants, plot, steward].filter(Boolean).join(", ");
}
