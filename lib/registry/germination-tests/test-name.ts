import type { Transaction } from "@/lib/db";
import { foldName, sameName } from "@/lib/registry/names/fold-name";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

/** The name a test goes by: the one that was written, if it is free; else its lot's number and how many tests the lot has had. */
export async function testName(
  tx: Transaction,
  wanted: string | null,
  lot: { readonly id: string; readonly number: string },
): Promise<Outcome<{ name: string; nameKey: string }>> {
  if (wanted !== null) {
    const name = { name: sameName(wanted), nameKey: foldName(wanted) };
    // A name that differs from another in letter case alone is taken for it when it is said aloud.
    const taken = await tx.germinationTest.findFirst({
      where: { nameKey: name.nameKey },
      select: { name: true, lot: { select: { number: true } } },
    });
    if (!taken) return accepted(name);
    const needed = "give this one another name, or leave the name empty";
    return refused(refusal("name-taken", ["name"], wanted, `is the test of lot ${taken.lot.number} already`, needed));
  }
  const stem = `${lot.number} test `;
  const taken = await tx.germinationTest.findMany({
    where: { nameKey: { startsWith: foldName(stem) } },
    select: { nameKey: true },
  });
  const keys = new Set(taken.map((test) => test.nameKey));
  let number = (await tx.germinationTest.count({ where: { lotId: lot.id } })) + 1;
  while (keys.has(foldName(`${stem}${number}`))) number += 1;
  return accepted({ name: `${stem}${number}`, nameKey: foldName(`${stem}${number}`) });
}
