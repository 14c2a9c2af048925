import { uuidv7 } from "uuidv7";
import type { NewRowOf } from "@/lib/registry/change-set/records";
import type { BookedTest } from "@/lib/schemas/notebook-typing/notebook-booking";
import { type Path, type Refusal, refusal } from "@/lib/science/outcome";
import type { StoredDate } from "./booked-date";
import { wholeOf } from "./grow-out-rows";

export interface TestRows {
  readonly test: NewRowOf<"GerminationTest">;
  readonly replicate: NewRowOf<"TestReplicate">;
  readonly count: NewRowOf<"TestCount">;
}

/** Why a test stays in words: no year, or no whole numbers of seeds sown and up. Null where it can be booked. */
export function whyNoTest(test: BookedTest, on: StoredDate | null): string | null {
  if (on === null) return "the line has no year";
  const counted = [test.up, test.of].every((told) => wholeOf(told) !== null && told?.approximate === false);
  return counted ? null : "how many of how many came up is not said";
}

/** More up than laid out, or none laid out. */
export function testFaults(test: BookedTest, path: Path): Refusal[] {
  const [up, of] = [wholeOf(test.up), wholeOf(test.of)];
  if (up === null || of === null) return [];
  if (of < 1)
    return [refusal("nothing-sown", [...path, "of"], of, "seeds make no test", "write how many were laid out")];
  if (up <= of) return [];
  return [
    refusal("more-up-than-sown", [...path, "up"], up, `came up of ${of}`, "write how many of those laid out came up"),
  ];
}

/** The rows of a test: one replicate, counted once, on a day that is often not known. What was counted is not said: no basis. */
export function testRows(
  test: BookedTest,
  lotId: string,
  name: { name: string; nameKey: string },
  on: StoredDate,
): TestRows {
  const [testId, replicateId] = [uuidv7(), uuidv7()];
  return {
    test: {
      id: testId,
      ...name,
      lotId,
      on: on.text,
      onFirst: on.first,
      onLast: on.last,
      basis: null,
      note: test.words || null,
    },
    replicate: { id: replicateId, testId, name: "1", sown: wholeOf(test.of) ?? 0 },
    count: { id: uuidv7(), replicateId, day: test.days, normal: wholeOf(test.up) ?? 0 },
  };
}
