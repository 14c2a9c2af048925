import { countFault, faultsAmong, positiveFault } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";

export interface DayCount {
  /** days after setting up, above 0, whole or not */
  readonly day: number;
  /** seeds newly germinated that day, never a running total */
  readonly newlyGerminated: number;
}

export interface GerminationSpeedInput {
  readonly sown: number;
  /** in the order of the days, each day once */
  readonly counts: readonly DayCount[];
}

export interface GerminationSpeed {
  readonly germinated: number;
  readonly finalShare: number;
  /** days until half of the seeds that germinated had done so; null where none did */
  readonly t50: number | null;
  /** days, mean over the germinated seeds */
  readonly meanTime: number | null;
  /** Σ n/day */
  readonly index: number | null;
  readonly assumed: readonly Assumption[];
}

/**
 * How quickly a lot germinates.
 *
 *     t50: on the straight line between the running totals on either side of half the final count (day 0 has 0)
 *     mean time = Σ n·day / Σ n          index = Σ n/day
 *
 * Refused: days not above 0 or not ascending, counts that are not whole, more germinated than sown.
 * Limits: half of those that germinated, not of those sown; the index compares tests of one size and the same days only; with two
 * count days t50 is hardly more than "between them". Example: day 1 to 12, running totals 1 3 6 7 15 16 23 25 from day 5: 8.6875.
 * Source: Farooq et al. 2005, J. Integr. Plant Biol. 47:187-193 (t50); Ellis & Roberts 1981, Seed Sci. Technol. 9:373-409 (mean time);
 * Maguire 1962, Crop Sci. 2:176-177 (index).
 */
export function germinationSpeed({ sown, counts }: GerminationSpeedInput): Outcome<GerminationSpeed> {
  const faults = speedFaults(sown, counts);
  if (faults.length > 0) return refused(...faults);
  const germinated = counts.reduce((sum, { newlyGerminated }) => sum + newlyGerminated, 0);
  const over = (of: (count: DayCount) => number) => counts.reduce((sum, count) => sum + of(count), 0);
  const none = germinated === 0;
  return accepted({
    germinated,
    finalShare: germinated / sown,
    t50: none ? null : dayOfTotal(counts, germinated / 2),
    meanTime: none ? null : over(({ day, newlyGerminated }) => day * newlyGerminated) / germinated,
    index: none ? null : over(({ day, newlyGerminated }) => newlyGerminated / day),
    assumed: [],
  });
}

function dayOfTotal(counts: readonly DayCount[], total: number): number {
  let before = { day: 0, total: 0 };
  for (const { day, newlyGerminated } of counts) {
    const after = { day, total: before.total + newlyGerminated };
    if (after.total >= total) {
      return before.day + ((total - before.total) * (day - before.day)) / newlyGerminated;
    }
    before = after;
  }
  return before.day;
}

function speedFaults(sown: number, counts: readonly DayCount[]): Refusal[] {
  const faults = faultsAmong(countFault([], "sown", sown, 1));
  let total = 0;
  counts.forEach(({ day, newlyGerminated }, index) => {
    const at = ["counts", index];
    const found = faultsAmong(positiveFault(at, "day", day), countFault(at, "newlyGerminated", newlyGerminated));
    faults.push(...found);
    if (found.length > 0) return;
    const last = counts[index - 1];
    if (last && day <= last.day) {
      const needed = "days stand in ascending order, each once";
      faults.push(refusal("days-not-ascending", [...at, "day"], day, `comes after day ${last.day}`, needed));
    }
    const before = total;
    total += newlyGerminated;
    if (before <= sown && total > sown) {
      const wrong = `makes ${total} germinated of ${sown} sown`;
      const needed = "write what newly germinated each day, not a running total";
      faults.push(refusal("more-than-sown", [...at, "newlyGerminated"], newlyGerminated, wrong, needed));
    }
  });
  return faults;
}
