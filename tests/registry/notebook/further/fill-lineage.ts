import { uuidv7 } from "uuidv7";
import type { TableName } from "@/lib/registry/change-set/records";

interface Ground {
  readonly lotId: string;
  readonly otherId: string;
  readonly stewardId: string;
}

/** Claims of every kind: one put right, one with a story that is told alike of two lots; and the kinship of two founders. */
export async function fillLineage(
  put: (table: TableName, row: object) => Promise<unknown>,
  { lotId, otherId, stewardId }: Ground,
): Promise<void> {
  const [first, second, wrong] = [uuidv7(), uuidv7(), uuidv7()];
  const words = 'it was "always" here,\nshe said';
  await put("Story", { id: first, lotId, words, teller: "Ana Quernby" });
  await put("Story", { id: second, lotId: otherId, words });
  const from = { lotId, kind: "descends from", parentLotId: otherId, generationsFirst: 2 };
  await put("LineageClaim", { id: wrong, ...from, words: "from the mill" });
  await put("LineageClaim", {
    ...{ ...from, generationsLast: 4, words: "from the mill, later", replacesId: wrong },
    ...{ teller: "Ana Quernby", stewardId, toldOn: "1999", howSure: "told by another", storyId: second },
    ...{ standing: "set aside", standingReason: "another grain" },
  });
  await put("LineageClaim", { lotId, kind: "unknown before", words: "nobody knows", standing: "believed" });
  await put("LineageClaim", { lotId, kind: "same as", parentLotId: otherId, words: "one sack" });
  const kin = { firstId: lotId, secondId: otherId, kind: "coancestry", coancestry: 0.125 };
  await put("FounderKinship", { ...kin, how: "both from one ear" });
}
