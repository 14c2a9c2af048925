import { foldName } from "../names/fold-name";
import type { KeptInWords } from "./book-notebook-lines";
import type { BookingPlace } from "./booking-place";
import { FreeNames } from "./free-names";
import { testRows, whyNoTest } from "./test-rows";
import type { Written } from "./write-entries";

/** Writes the germination tests that were counted; one without numbers or a year stays in the line's words. */
export async function writeTests({ change, tx, booking, lots, dates }: BookingPlace): Promise<Written> {
  const keptInWords: KeptInWords[] = [];
  const numbers = [...new Set(booking.tests.map((test) => lots.numberOf.get(test.lot) ?? ""))];
  const taken = await tx.germinationTest.findMany({
    where: { OR: numbers.map((number) => ({ nameKey: { startsWith: foldName(`${number} test `) } })) },
    select: { name: true },
  });
  const names = new FreeNames(taken.map((test) => test.name));
  let booked = 0;
  for (const [index, test] of booking.tests.entries()) {
    const on = dates.read(test.on, ["tests", index, "on"]);
    const why = whyNoTest(test, on);
    if (why !== null || on === null) {
      keptInWords.push({ line: test.line, words: test.words, why: why ?? "" });
      continue;
    }
    const number = lots.numberOf.get(test.lot) ?? "";
    const rows = testRows(test, lots.idOf.get(test.lot) ?? "", names.numbered(`${number} test `, 1), on);
    await change.create("GerminationTest", rows.test);
    await change.create("TestReplicate", rows.replicate);
    await change.create("TestCount", rows.count);
    booked += 1;
  }
  return { booked, keptInWords };
}
