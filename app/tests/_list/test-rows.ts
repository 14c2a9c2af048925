import type { Column, Row } from "@/components/tables";
import { dateInWords } from "@/lib/display/dates";
import { kOfN, percent, percentSpan, plainNumber } from "@/lib/display/numbers";
import type { ListedTest } from "@/lib/registry/germination-tests/listed-tests";
import type { TestTotals } from "@/lib/registry/germination-tests/test-totals";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { normalWord } from "../_words/reading-in-words";

export const columns: readonly Column[] = [
  { key: "test", name: "Test", kind: "words", phone: "lead" },
  { key: "lot", name: "Lot", kind: "words", phone: "none" },
  { key: "variety", name: "Variety", kind: "words" },
  { key: "crop", name: "Crop", kind: "words", apart: true, phone: "none" },
  { key: "set-up", name: "Set up", kind: "words" },
  { key: "basis", name: "Counted", kind: "words", sortable: false, apart: true, phone: "none" },
  { key: "sown", name: "Seeds", kind: "count", phone: "none" },
  { key: "germination", name: "Germination", kind: "span", phone: "aside" },
  { key: "stage", name: "Stands", kind: "words", sortable: false, apart: true, phone: "none" },
  { key: "note", name: "Note", kind: "words", sortable: false, apart: true, phone: "none" },
];

const stages: Readonly<Record<TestTotals["stage"], string>> = {
  "set up": "set up, not counted",
  running: "running",
  final: "done",
};

/** A test as a row of the list; `renewal` is the share at which its lot is to be renewed. */
export function testRow(test: ListedTest, renewal: number): Row {
  const { totals, germination, variety, lot, crop } = test;
  const running = totals.stage === "running";
  const words = germination
    ? `${kOfN(totals.sums.normal ?? 0, totals.sown)}, ${percentSpan(germination.low, germination.high)}${running ? ", so far" : ""}`
    : "not counted yet";
  return {
    id: test.id,
    cells: {
      test: {
        kind: "link",
        words: test.name,
        href: `/tests/${test.id}`,
        mark: { name: variety.name, crop: crop.key, coat: storedSeedCoat(variety.seedCoat) },
      },
      lot: { kind: "link", words: lot.number, href: `/lots/${lot.id}` },
      variety: { kind: "link", words: variety.name, href: `/varieties/${variety.id}` },
      crop: crop.name,
      "set-up": { kind: "date", words: dateInWords(test.on), sort: test.onFirst },
      basis: test.basis === null ? null : normalWord(test.basis),
      sown: { kind: "count", words: plainNumber(totals.sown), sort: totals.sown },
      germination: {
        kind: "span",
        value: germination?.share ?? null,
        low: germination?.low ?? null,
        high: germination?.high ?? null,
        grade: germination ? "counted" : "unknown",
        words,
        figure: germination ? percent(germination.share, 0) : "",
        line: renewal,
      },
      stage: totals.stage === "final" ? stages.final : { kind: "waits", words: stages[totals.stage] },
      note: test.note ?? "",
    },
  };
}
