import { effectiveSize, effectiveSizeSpan, wholeNumber } from "@/lib/display/numbers";
import { refusalSentence } from "@/lib/display/refusals";
import type { SizeGround, SizeSoFar } from "@/lib/registry/grow-outs/size-so-far";
import { separateSexes } from "@/lib/science/crops/mating";
import type { Narrowing } from "@/lib/science/effective-size/what-narrows";

/** A size as it is shown: the figure, its sentence, how it stands to the crop's floor, and what would narrow it. */
export interface SizeWords {
  readonly figure: string;
  readonly sentence: string;
  /** below the crop's floor whatever is meant by it */
  readonly narrow: boolean;
  readonly floor: string | null;
  readonly narrows: string | null;
}

/** What a grow-out counts as by now, in words. */
export function sizeWords(size: SizeSoFar, ground: SizeGround): SizeWords {
  const plain = { narrow: false, floor: null, narrows: null };
  switch (size.state) {
    case "clonal":
      return { ...plain, figure: "no size", sentence: "The crop is kept by division, so no seed mixed its plants." };
    case "no-seed":
      return { ...plain, figure: "no seed", sentence: "came of it, so it passed on nothing." };
    case "nothing-counted":
      return {
        ...plain,
        figure: "unknown",
        sentence: "Nothing is counted yet that bounds it. Write what came up, or what stands.",
      };
    case "impossible":
      return { ...plain, figure: "unknown", sentence: size.refusals.map(refusalSentence).join(" ") };
    case "known":
      return {
        figure: effectiveSize(size.size),
        sentence: "plants that all gave alike would have passed on as much.",
        ...againstFloor(size.size, size.size, ground.floor),
        narrows: null,
      };
    case "span":
      return {
        figure: effectiveSizeSpan(size.low, size.high),
        sentence: `plants that all gave alike would have passed on as much; ${whatIsMissing(ground)}.`,
        ...againstFloor(size.low, size.high, ground.floor),
        narrows: narrowsInWords(size.narrows[0], effectiveSizeSpan(size.low, size.high), ground),
      };
    case "before-seed":
      return {
        figure: size.high === null ? "unknown" : `up to ${effectiveSize(size.high)}`,
        sentence: prospects(size),
        ...againstFloor(size.high ?? 0, size.high, ground.floor),
        narrows: countFirst(size, ground),
      };
  }
}

/** Before seed is taken the plants alone are counted: how far what is on record bounds them. */
function countFirst(
  { narrows, all }: Extract<SizeSoFar, { state: "before-seed" }>,
  { profile }: SizeGround,
): string | null {
  if (narrows.length === 0 || all === null) return null;
  const what = separateSexes(profile)
    ? "Count the males and the females"
    : "Count the plants that stand, or that flower";
  return `${what}: by what is on record so far they may be any number up to ${wholeNumber(all)}.`;
}

function prospects(size: Extract<SizeSoFar, { state: "before-seed" }>): string {
  const exact = size.input.pollenParents.low === size.input.pollenParents.high;
  const all =
    size.all === null
      ? ""
      : `if seed is kept alike from all ${wholeNumber(size.all)} that ${exact ? "stand" : "may stand"}; `;
  const meant = size.meant
    ? `from the ${wholeNumber(size.meant.seedParents)} meant for seed, ${effectiveSize(size.meant.size)}; `
    : "";
  return `is what it would count as by now, ${all}${meant}from a single plant, ${effectiveSize(size.low)}. No seed is taken yet.`;
}

/** The floor is the crop's least number of plants. */
function againstFloor(low: number, high: number | null, floor: number | null) {
  if (floor === null) return { narrow: false, floor: null };
  const said = `The crop’s floor is ${wholeNumber(floor)}`;
  if (high !== null && high < floor) return { narrow: true, floor: `${said}: it is a bottleneck.` };
  if (low < floor) return { narrow: false, floor: `${said}, which lies within.` };
  return { narrow: false, floor: `${said}.` };
}

function whatIsMissing({ record, profile }: SizeGround): string {
  const separate = separateSexes(profile);
  const missing = [
    (separate ? record.malesStanding : record.plantsStanding) === null
      ? separate
        ? "the males were not counted"
        : "the plants that stood were not counted"
      : "",
    record.seedParents === null ? "the seed parents were not counted" : "",
    record.seedShares === null ? "nobody wrote how much of the seed each gave" : "",
  ].filter(Boolean);
  return missing.length === 0 ? "what is known leaves a span" : missing.join(", and ");
}

/** What to count first, and what the span would become. */
export function narrowsInWords(narrowing: Narrowing | undefined, now: string, ground: SizeGround): string | null {
  if (!narrowing) return null;
  const { missing, atLeast, atMost } = narrowing;
  const span = ({ low, high }: { low: number; high: number | null }) => effectiveSizeSpan(low, high);
  if (missing === "seedShares")
    return `Write whether the seed was taken alike from each: ${now} would become ${span(atMost.span)} if it was.`;
  const what =
    missing === "seedParents"
      ? "Count the plants that gave seed"
      : separateSexes(ground.profile)
        ? "Count the males, or find their number in the notes"
        : "Count the plants that flower, or find their number in the notes";
  const [least, most] = [atLeast.count, atMost.count].map((count) =>
    count === null ? "very many" : wholeNumber(count),
  );
  return `${what}: ${now} would become ${span(atLeast.span)} with ${least}, ${span(atMost.span)} with ${most}.`;
}
