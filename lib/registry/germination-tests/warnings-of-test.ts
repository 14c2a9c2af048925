import { type CivilDay, compareDays } from "@/lib/science/dates/civil-day";
import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";

/** Something about a test that looks odd. It is stored all the same: suspicious is not wrong. */
export interface TestWarning {
  readonly code: "before-harvest" | "after-today" | "other-basis" | "treated-seed";
  readonly text: string;
}

/** What the warnings of a test look at. */
export interface TestSurroundings {
  readonly on: Pick<FuzzyDate, "text" | "first" | "last">;
  readonly basis: string | null;
  readonly lot: {
    readonly number: string;
    readonly year: string | null;
    readonly yearFirst: CivilDay | null;
    readonly treatment: string | null;
    readonly treatmentSubstance: string | null;
  };
  /** basis of the lot's other tests, null where not said */
  readonly otherBases: readonly (string | null)[];
  readonly today: CivilDay | null;
}

/** What a person should look at again; nothing of it is refused. */
export function warningsOfTest({ on, basis, lot, otherBases, today }: TestSurroundings): TestWarning[] {
  const warnings: TestWarning[] = [];
  if (lot.yearFirst !== null && compareDays(on.last, lot.yearFirst) < 0) {
    const text = `The test was set up ${on.text}, before lot ${lot.number} was harvested (${lot.year}): is it the right lot, and the right year?`;
    warnings.push({ code: "before-harvest", text });
  }
  if (today !== null && compareDays(on.first, today) > 0) {
    warnings.push({ code: "after-today", text: `The test was set up ${on.text}, and that day is still to come.` });
  }
  const other = otherBases.find((each) => each !== null && basis !== null && each !== basis);
  if (other !== undefined) {
    const text = `Earlier tests of lot ${lot.number} counted ${other === "sprouted" ? "sprouted seeds" : other}: a count of ${basis === "sprouted" ? "sprouted seeds" : basis} is not compared with them.`;
    warnings.push({ code: "other-basis", text });
  }
  if (lot.treatment === "chemical" || lot.treatment === "unknown") {
    const substance = lot.treatmentSubstance ? ` (${lot.treatmentSubstance})` : "";
    const how =
      lot.treatment === "chemical" ? `treated with a chemical${substance}` : "perhaps treated, nobody knows with what";
    const text = `Lot ${lot.number} is ${how}: gloves, no dust, nothing of the test to eat, feed or compost; your local rules say where it goes.`;
    warnings.push({ code: "treated-seed", text });
  }
  return warnings;
}
