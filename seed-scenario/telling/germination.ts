import { addDays, type CivilDay } from "@/lib/science/dates/civil-day";
import type { CropHabit } from "../circle/crop-habits";
import type { Book } from "./book";
import type { Draws } from "./draws";
import { type Jar, weightOf } from "./jar";

export interface TestTold {
  readonly seeds?: number;
  /** counts as they were, one a replicate, in place of drawn ones */
  readonly normal?: readonly number[];
  /** only the first count stands so far */
  readonly running?: boolean;
  readonly note?: string;
}

/** Sets up and counts a germination test, and books its seed. Only the share is remembered. */
export function testJar(
  book: Book,
  jar: Jar,
  day: CivilDay,
  date: string,
  habit: CropHabit,
  told: TestTold,
  draws: Draws,
): void {
  const { tests } = jar.holder;
  const { seeds, replicates } = sizeOf(jar, told);
  const living = jar.living(day);
  jar.tests += 1;
  const test = `${jar.lot} test ${jar.tests}`;
  const plain = tests.basis === "sprouted";
  let normalOfAll = 0;
  for (let replicate = 1; replicate <= replicates; replicate++) {
    const normal = told.normal?.[replicate - 1] ?? draws.comeUp(seeds, living);
    normalOfAll += normal;
    const first = draws.comeUp(normal, draws.near(0.7, 0.2));
    const line = { test, lot: jar.lot, date, replicate, sown: seeds };
    if (plain) book.write("tests.csv", { ...line, normal });
    else {
      book.write("tests.csv", { ...line, day: habit.counts[0], normal: first });
      if (!told.running)
        book.write("tests.csv", {
          ...line,
          day: habit.counts[1],
          normal: normal - first,
          ...notNormal(seeds - normal, draws),
        });
    }
  }
  const grams = jar.take(date, weightOf(seeds * replicates, jar.seedWeight));
  book.write("ledger.csv", { lot: jar.lot, date, kind: "tested", grams });
  book.write("test_details.csv", {
    test,
    basis: tests.basis,
    method: tests.method,
    temperature: tests.temperature,
    final_count_day: plain ? null : habit.counts[1],
    note: told.note,
  });
  if (!told.running) jar.tested = { day: addDays(day, habit.counts[1]), share: normalOfAll / (seeds * replicates) };
}

/** As the holder always tests, but never more than a tenth of the jar: then one replicate, then ten seeds. */
function sizeOf(jar: Jar, told: TestTold): { seeds: number; replicates: number } {
  const { tests } = jar.holder;
  if (told.normal) return { seeds: told.seeds ?? tests.seeds, replicates: told.normal.length };
  const spare = jar.seeds / 10;
  if (spare >= tests.seeds * tests.replicates) return { seeds: tests.seeds, replicates: tests.replicates };
  return { seeds: spare >= tests.seeds ? tests.seeds : Math.min(10, tests.seeds), replicates: 1 };
}

function notNormal(seeds: number, draws: Draws) {
  const abnormal = draws.comeUp(seeds, 0.25);
  const fresh = draws.comeUp(seeds - abnormal, 0.08);
  return { abnormal, hard: 0, fresh, dead: seeds - abnormal - fresh };
}
