import type { Stage } from "@/lib/schemas/grow-outs/field-kinds";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { type Path, type Refusal, refusal } from "@/lib/science/outcome";
import { pulledBefore } from "./counts-in-step";
import { dayFaults } from "./day-faults";
import { type CountOnRecord, inOrderOfDays, type PassOnRecord, surelyBefore } from "./field-records";

/** What is known of a grow-out beside its counts and passes. */
export interface GrowOutInField {
  readonly sown: string | null;
  readonly sownFirst: string | null;
  readonly endedOn: string | null;
  readonly seedsSown: number | null;
  readonly seedParents: number | null;
  readonly today: CivilDay;
  /** its crop is sown in clusters of seeds, so that several plants come of one */
  readonly clusters: boolean;
  /** its crop has male and female plants */
  readonly separate: boolean;
}

/** What is wrong with a count beside those that stand: what cannot be, not what is only odd. Paths end in the field of the count. */
export function countFaults(
  count: CountOnRecord,
  others: readonly CountOnRecord[],
  passes: readonly PassOnRecord[],
  growOut: GrowOutInField,
  at: Path = [],
): Refusal[] {
  const faults = dayFaults(count, growOut, [...at, "on"]);
  const wrong = (field: string, given: number | string, says: string, needed: string, code = "cannot-be") =>
    faults.push(refusal(code, [...at, field], given, says, needed));
  const { stage, plants, males } = count;
  if (males !== null && !growOut.separate)
    wrong(
      "males",
      males,
      "males cannot be counted: each plant of this crop has both sexes",
      "leave it empty",
      "no-males",
    );
  else if (males !== null && males > plants)
    wrong("males", males, `is more than the ${plants} plants counted`, "write how many of them were males");
  if (count.thinnedBy !== null && stage !== "thinned")
    wrong("thinnedBy", count.thinnedBy, "goes with a count after thinning only", "leave it empty", "not-thinned");
  const seeds = mostOf("sown", others) ?? growOut.seedsSown;
  if (stage !== "sown" && seeds !== null && plants > seeds && !growOut.clusters)
    wrong("plants", plants, `is more than the ${seeds} seeds sown`, "write the plants, or put the seeds sown right");
  if (stage === "sown" && !growOut.clusters) {
    const most = Math.max(0, ...others.filter((each) => each.stage !== "sown").map((each) => each.plants));
    if (plants < most) wrong("plants", plants, `is less than the ${most} plants counted`, "write the seeds sown");
  }
  const lifted = mostOf("lifted", others);
  if (stage === "replanted" && lifted !== null && plants > lifted)
    wrong("plants", plants, `is more than the ${lifted} lifted`, "write how many of the lifted were replanted");
  if (stage === "flowering") faults.push(...floweringFault(count, others, passes, at));
  return faults;
}

/** More cannot flower than stood and were not pulled. */
function floweringFault(
  count: CountOnRecord,
  others: readonly CountOnRecord[],
  passes: readonly PassOnRecord[],
  at: Path,
): Refusal[] {
  const stood = inOrderOfDays(others).findLast(
    (each) => (each.stage === "standing" || each.stage === "replanted") && !surelyBefore(count, each),
  );
  if (!stood) return [];
  const pulled = pulledBefore(count, passes) - pulledBefore(stood, passes);
  const left = stood.plants - pulled;
  if (count.plants <= left) return [];
  const says =
    pulled > 0 ? `${left} that were left: ${stood.plants} stood, ${pulled} were pulled` : `${left} that stood`;
  return [
    refusal(
      "cannot-be",
      [...at, "plants"],
      count.plants,
      `is more than the ${says}`,
      "write how many came to flower, or count the plants standing again",
    ),
  ];
}

function mostOf(stage: Stage, counts: readonly CountOnRecord[]): number | null {
  const own = counts.filter((each) => each.stage === stage).map((each) => each.plants);
  return own.length === 0 ? null : Math.max(...own);
}
