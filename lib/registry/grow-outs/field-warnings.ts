import { stages } from "@/lib/schemas/grow-outs/field-kinds";
import { addDays } from "@/lib/science/dates/civil-day";
import type { Assumption } from "@/lib/science/outcome";
import { numbersOfEvents } from "./counts-in-step";
import {
  type CountOnRecord,
  type FloweringOnRecord,
  inOrderOfDays,
  type PassOnRecord,
  type Seen,
  surelyBefore,
} from "./field-records";
import type { InField } from "./in-field";
import { walksOf } from "./walks";

/** What the warnings look at. */
export type FieldSeen = Pick<InField, "counts" | "passes" | "flowering" | "plantsMin" | "daysToFlower"> & {
  readonly growOut: Pick<InField["growOut"], "sownFirst" | "seedsSown" | "separate">;
};

/**
 * What looks odd about counts, passes and flowering notes that stand, by the record's id. Suspicious is not wrong: it is stored, and shown
 * with the record for as long as it looks so.
 */
export function fieldWarnings(seen: FieldSeen): ReadonlyMap<string, readonly Assumption[]> {
  const found = new Map<string, Assumption[]>();
  const warn: Warn = ({ id }, code, text) => found.set(id, [...(found.get(id) ?? []), { code, text }]);
  for (const count of seen.counts) countWarnings(count, seen, warn);
  for (const pass of seen.passes) passWarnings(pass, seen, warn);
  hardRoguing(seen, warn);
  for (const note of seen.flowering) floweringWarnings(note, seen, warn);
  twice(seen.counts, (count) => `${count.stage} ${count.plants}`, warn);
  twice(seen.passes, (pass) => `${pass.stage} ${pass.reason} ${pass.looked} ${pass.pulled}`, warn);
  return found;
}

type Warn = (record: Pick<Seen, "id">, code: string, text: string) => void;

function countWarnings(count: CountOnRecord, { counts, passes, growOut }: FieldSeen, warn: Warn): void {
  const rank = stages.indexOf(count.stage);
  const earlier = counts.filter((other) => other.stage !== "sown" && stages.indexOf(other.stage) < rank);
  // Nothing is added on the way from the seed to the flower but by filling gaps, or by plants that came up late.
  const least = earlier.toSorted((a, b) => a.plants - b.plants)[0];
  if (count.stage !== "flowering" && least && count.plants > least.plants)
    warn(
      count,
      "more-than-before",
      `more than the ${least.plants} counted ${least.stage}: were gaps filled, or did more come up later?`,
    );
  if (count.stage !== "sown" && growOut.seedsSown !== null && count.plants > growOut.seedsSown)
    warn(count, "more-than-sown", `more than the ${growOut.seedsSown} seeds sown: a seed ball gives several`);
  const later = counts.find((other) => stages.indexOf(other.stage) > rank && surelyBefore(other, count));
  if (later) warn(count, "out-of-order", `dated after the count ${later.stage} (${later.on})`);
  const laterPass = passes.some((pass) => pass.timing === "before" && pass.pulled > 0 && surelyBefore(count, pass));
  if (count.males !== null && laterPass && !counts.some((other) => other.males !== null && surelyBefore(count, other)))
    warn(
      count,
      "males-before-pass",
      "plants were pulled since: count the males again, for they are counted without rogues",
    );
}

function passWarnings(pass: PassOnRecord, { flowering }: FieldSeen, warn: Warn): void {
  const shed = inOrderOfDays(
    flowering.filter((note) => note.moment === "first" && (note.organ === "pollen" || note.organ === "flower")),
  )[0];
  if (shed && pass.timing === "before" && surelyBefore(shed, pass))
    warn(pass, "pollen-had-flown", `said to be before pollen shed, but the first ${shed.organ} was on ${shed.on}`);
  if (shed && pass.timing === "after" && surelyBefore(pass, shed))
    warn(pass, "pollen-not-yet", `said to be after pollen shed, but the first ${shed.organ} was on ${shed.on}`);
  if (pass.timing === null && pass.pulled > 0)
    warn(pass, "timing-not-said", "nobody said whether pollen had flown, so the figures leave it out");
  if (pass.pulled > 0 && pass.reason === "bitter")
    warn(
      pass,
      "bitter",
      "bitter ends the lot that was sown, for seed and for food: put it on hold and tell those who have of it",
    );
  if (pass.pulled > 0 && pass.reason === "suspected cross")
    warn(
      pass,
      "suspected-cross",
      "put the lot that was sown, and what descends from it, on hold until it is known how far the cross reaches",
    );
}

/** A pass that pulls more than a third narrows a variety to one person's taste; one that goes below the floor narrows it, too. */
function hardRoguing({ counts, passes, plantsMin }: FieldSeen, warn: Warn): void {
  for (const { looked, pulled, passes: own } of walksOf(passes)) {
    const [last] = own.slice(-1);
    if (last && looked !== null && looked > 0 && pulled > looked / 3)
      warn(last, "pulled-hard", "more than a third of those looked at: is it off-type, or true variation?");
  }
  const { plantsStanding, roguedBeforePollen, roguedAfterPollen } = numbersOfEvents({ counts, passes });
  if (plantsStanding === null || plantsMin === null) return;
  const left = plantsStanding - (roguedBeforePollen ?? 0) - (roguedAfterPollen ?? 0);
  const last = inOrderOfDays(passes).findLast((pass) => pass.pulled > 0);
  if (last && left < plantsMin && plantsStanding >= plantsMin)
    warn(last, "below-floor", `leaves ${left} plants, below the crop's floor of ${plantsMin}`);
}

function floweringWarnings(note: FloweringOnRecord, { flowering, growOut, daysToFlower }: FieldSeen, warn: Warn): void {
  if (note.organ === "silk" && note.moment === "first") {
    const last = flowering.find((other) => other.organ === "pollen" && other.moment === "last");
    if (last && surelyBefore(last, note))
      warn(note, "no-pollen-left", `the last pollen was shed on ${last.on}: this silk met none of its own`);
  }
  const { sownFirst } = growOut;
  if (note.moment !== "first" || sownFirst === null || daysToFlower === null || note.onLast === null) return;
  if (note.onLast < addDays(sownFirst, Math.floor(daysToFlower / 2)))
    warn(note, "early-flower", `flowers in less than half the usual ${daysToFlower} days: is the day right?`);
}

function twice<R extends Seen>(rows: readonly R[], likeness: (row: R) => string, warn: Warn): void {
  const seen = new Set<string>();
  for (const row of inOrderOfDays(rows)) {
    const key = `${row.on} ${likeness(row)}`;
    if (seen.has(key)) warn(row, "twice", "the same stands here already: is it entered twice?");
    seen.add(key);
  }
}
