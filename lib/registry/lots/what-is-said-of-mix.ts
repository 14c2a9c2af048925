import { identityGrades, isolationGrades } from "@/lib/schemas/lots/record-lot";
import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";
import type { LotRead } from "./lot-in-hand";

/** What is said of a part of a mix. */
export type SaidOfLot = Pick<
  LotRead,
  | "number"
  | "varietyId"
  | "strainId"
  | "status"
  | "statusReason"
  | "treatment"
  | "isolationGrade"
  | "identityGrade"
  | "year"
  | "yearFirst"
  | "yearLast"
  | "yearWords"
>;

/** Treatments from the one that says most to the one that says least: of a mix the gravest of its parts holds. */
const treatments = ["unknown", "chemical", "hot water", "none"] as const;

/**
 * What is said of a mix follows from its parts: the strain that all share; the years from the oldest harvest to the youngest; treatment,
 * isolation and identity as of the worst part, not known where one is not known; on hold or in quarantine as one of its parts is.
 */
export function whatIsSaidOfMix(lots: readonly SaidOfLot[], on: FuzzyDate) {
  const [first] = lots;
  return {
    varietyId: first?.varietyId ?? "",
    strainId: sameOf(lots.map((lot) => lot.strainId)),
    ...yearsOf(lots, on),
    ...standingOf(lots),
    treatment: worstOf(
      treatments,
      lots.map((lot) => lot.treatment),
    ),
    isolationGrade: worstOf(
      [...isolationGrades].reverse(),
      lots.map((lot) => lot.isolationGrade),
    ),
    identityGrade: worstOf(
      [...identityGrades].reverse(),
      lots.map((lot) => lot.identityGrade),
    ),
  };
}

function sameOf<T>(values: readonly (T | null)[]): T | null {
  const [first = null] = values;
  return values.every((value) => value === first) ? first : null;
}

/** The worst that is said, `worst` from worst to best; null where of one nothing is said, unless the worst stands already. */
function worstOf(worst: readonly string[], said: readonly (string | null)[]): string | null {
  if (worst[0] !== undefined && said.includes(worst[0])) return worst[0];
  if (said.includes(null)) return null;
  return worst.find((grade) => said.includes(grade)) ?? null;
}

function yearsOf(lots: readonly SaidOfLot[], on: FuzzyDate) {
  const [one] = lots;
  if (one && lots.every((lot) => lot.year === one.year)) {
    const { year, yearFirst, yearLast, yearWords } = one;
    return {
      year,
      yearFirst,
      yearLast,
      yearWords: lots.every((lot) => lot.yearWords === yearWords) ? yearWords : null,
    };
  }
  const firsts = lots.map((lot) => lot.yearFirst);
  const lasts = lots.map((lot) => lot.yearLast);
  const told = lots.map((lot) => lot.year ?? "a year not known").join(", ");
  const yearWords = `harvests of ${told}, mixed ${on.text}`;
  if (firsts.includes(null) || lasts.includes(null)) return { year: null, yearFirst: null, yearLast: null, yearWords };
  const from = `${firsts.sort()[0]}`.slice(0, 4);
  const to = `${lasts.sort().at(-1)}`.slice(0, 4);
  return { year: `${from}/${to}`, yearFirst: `${from}-01-01`, yearLast: `${to}-12-31`, yearWords };
}

function standingOf(lots: readonly SaidOfLot[]) {
  for (const status of ["quarantine", "hold"] as const) {
    const part = lots.find((lot) => lot.status === status);
    if (part)
      return {
        status,
        statusReason: `lot ${part.number} in it stands so${part.statusReason ? `: ${part.statusReason}` : ""}`,
      };
  }
  return { status: null, statusReason: null };
}
