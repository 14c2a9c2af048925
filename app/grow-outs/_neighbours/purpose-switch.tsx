import Link from "next/link";
import type { UnitSettings } from "@/lib/display/units";
import type { Assessment } from "@/lib/registry/neighbours/assess-neighbours";
import type { IsolationPurpose } from "@/lib/science/isolation/distance-rule";
import { distancesWords, purposeNames } from "./verdict-words";

const purposes: readonly IsolationPurpose[] = ["stewardship", "home"];

/** Whose distances the rule goes by; the other ones are a link away. */
export function PurposeSwitch({
  assessment: { purpose, distances },
  at,
  units,
}: {
  assessment: Assessment;
  at: string;
  units: UnitSettings;
}) {
  const other = purposes.find((each) => each !== purpose) ?? "home";
  return (
    <>
      {distances === null ? "no distances known" : distancesWords(distances, units)}, {purposeNames[purpose]}
      <span className="not-on-paper">
        ; <Link href={other === "home" ? `${at}?purpose=home` : at}>the distances {purposeNames[other]}</Link>
      </span>
    </>
  );
}
