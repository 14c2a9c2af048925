import { z } from "zod";

/** What a seed can be found to be when it is counted. Mouldy seed is dead. */
export const countKinds = ["normal", "abnormal", "hard", "fresh", "dead"] as const;
export type CountKind = (typeof countKinds)[number];

const seeds = z
  .number("is not a count; write a whole number")
  .int("is not a whole number of seeds; write a whole number")
  .min(0, "is below nothing; write 0 or more");

/** What was newly counted in one replicate on one day (never a running total). Null: not told apart. */
export const CountSchema = z.strictObject({
  /** days after setting up; null where the day was not written down */
  day: z.number("is not a day; write the days since the test was set up").min(0, "lies before the test").nullable(),
  normal: seeds,
  abnormal: seeds.nullable().default(null),
  hard: seeds.nullable().default(null),
  fresh: seeds.nullable().default(null),
  dead: seeds.nullable().default(null),
});
export type Count = z.infer<typeof CountSchema>;

/** Seeds that one count took out of the test. */
export function seedsIn(count: Readonly<Partial<Record<CountKind, number | null>>>): number {
  return countKinds.reduce((sum, kind) => sum + (count[kind] ?? 0), 0);
}

/** Sums by kind over the counts of a replicate; a kind that no count tells apart stays null (not looked is not none found). */
export function sumsByKind(
  counts: readonly Readonly<Partial<Record<CountKind, number | null>>>[],
): Readonly<Record<CountKind, number | null>> {
  const sums: Record<CountKind, number | null> = { normal: 0, abnormal: null, hard: null, fresh: null, dead: null };
  for (const count of counts) {
    for (const kind of countKinds) {
      const found = count[kind];
      if (found !== null && found !== undefined) sums[kind] = (sums[kind] ?? 0) + found;
    }
  }
  return sums;
}
