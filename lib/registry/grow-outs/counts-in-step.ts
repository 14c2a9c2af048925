import { type CountOnRecord, type FieldEvents, inOrderOfDays, type PassOnRecord, surelyBefore } from "./field-records";

/*
 * The one rule by which the numbers of a grow-out, from which its figures are worked out, follow what was counted and pulled.
 */

/** The numbers of a grow-out that counts and rogue passes speak of. */
export const stepFields = [
  "seedsSown",
  "plantsStanding",
  "malesStanding",
  "roguedBeforePollen",
  "roguedAfterPollen",
] as const;
export type StepField = (typeof stepFields)[number];
export type StepNumbers = { readonly [Field in StepField]: number | null };

/** Stages at which plants stand to flower. */
const standingStages: ReadonlySet<string> = new Set(["standing", "replanted", "flowering"]);

/**
 * What the events that stand say; null where none speaks of it.
 *
 *     plants standing = the last count of plants standing, replanted or in flower + what was pulled on days before it
 *     males standing  = the males of the last such count that counts them (males are counted without rogues)
 *     rogued          = Σ pulled over the passes before (after) pollen shed; a pass that does not say when counts in neither
 *     seeds sown      = the last count of seeds sown
 *
 * Plants standing are those alive just before the first pass, so that standing less rogued before pollen is what shed pollen: what a
 * pass pulled before a later count is added to that count. A count without a date, or of the day of a pass, is taken as before it.
 * A count in flower leads over an earlier one, for only what flowers gives pollen.
 */
export function numbersOfEvents({ counts, passes }: FieldEvents): StepNumbers {
  const ordered = inOrderOfDays(counts);
  const standing = lastOfStanding(counts);
  return {
    seedsSown: ordered.findLast((count) => count.stage === "sown")?.plants ?? null,
    plantsStanding: standing ? standing.plants + pulledBefore(standing, passes) : null,
    malesStanding: ordered.findLast((count) => standingStages.has(count.stage) && count.males !== null)?.males ?? null,
    roguedBeforePollen: pulledIn(passes, "before"),
    roguedAfterPollen: pulledIn(passes, "after"),
  };
}

/** The count that the plants standing come from: the last of plants standing, replanted or in flower. */
export function lastOfStanding(counts: readonly CountOnRecord[]): CountOnRecord | undefined {
  return inOrderOfDays(counts).findLast((count) => standingStages.has(count.stage));
}

/** Plants pulled in passes that surely walked before a count. */
export function pulledBefore(count: CountOnRecord, passes: readonly PassOnRecord[]): number {
  return passes.filter((pass) => surelyBefore(pass, count)).reduce((sum, pass) => sum + pass.pulled, 0);
}

function pulledIn(passes: readonly PassOnRecord[], timing: "before" | "after"): number | null {
  const own = passes.filter((pass) => pass.timing === timing);
  return own.length === 0 ? null : own.reduce((sum, pass) => sum + pass.pulled, 0);
}

/** The numbers that an entry speaks of. */
export function spokenOf(entries: Partial<FieldEvents>): ReadonlySet<StepField> {
  const fields = new Set<StepField>();
  for (const { stage, males } of entries.counts ?? []) {
    if (standingStages.has(stage)) fields.add("plantsStanding");
    if (standingStages.has(stage) && males !== null) fields.add("malesStanding");
  }
  for (const { timing } of entries.passes ?? []) {
    if (timing === "before") fields.add("roguedBeforePollen");
    if (timing === "after") fields.add("roguedAfterPollen");
  }
  return fields;
}

/**
 * What changes in the grow-out's numbers when its events change from `was` to `is`. A number follows its events where the entry speaks of
 * it (`spoken`), where the change moves it, or where it was unknown; else what a hand or a folder wrote stays. Where no event is left
 * that speaks of it, it becomes again what was written without one (`written`). The seeds sown belong to the sowing: a count only fills
 * them in where nobody wrote them, or follows its own correction.
 */
export function countsInStep(
  now: StepNumbers,
  was: FieldEvents,
  is: FieldEvents,
  spoken: ReadonlySet<StepField> = new Set(),
  written: Partial<StepNumbers> = {},
): Partial<StepNumbers> {
  const [before, after] = [numbersOfEvents(was), numbersOfEvents(is)];
  const patch: { [Field in StepField]?: number | null } = {};
  for (const field of stepFields) {
    const own = field === "seedsSown" && now[field] !== null && now[field] !== before[field];
    const moved = after[field] !== before[field];
    if (own || !(moved || spoken.has(field) || now[field] === null)) continue;
    // Where no event spoke of it, or a hand has put it right since, there is nothing of theirs to take away.
    if (after[field] === null && (before[field] === null || now[field] !== before[field])) continue;
    const next = after[field] ?? written[field] ?? null;
    if (next !== now[field]) patch[field] = next;
  }
  return patch;
}
