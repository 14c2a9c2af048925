import { SpanBar } from "@/components/doubt";
import { SimpleTable } from "@/components/tables";
import { percent, percentSpan } from "@/lib/display/numbers";
import type { ReadReplicate, ReadTest } from "@/lib/registry/germination-tests/read-germination-test";
import type { StoredCount } from "@/lib/registry/germination-tests/standing-counts";
import { type CountKind, countKinds } from "@/lib/schemas/germination-test/counts";
import { normalWord } from "../../_words/reading-in-words";
import { CorrectCount } from "./correct-count";
import styles from "./replicate-table.module.css";

const others = countKinds.filter((kind): kind is Exclude<CountKind, "normal"> => kind !== "normal");
const otherWords: Readonly<Record<Exclude<CountKind, "normal">, string>> = {
  abnormal: "abnormal",
  hard: "hard",
  fresh: "fresh",
  dead: "dead",
};

/** What was counted in each replicate: day by day, what it came to, and its exact span. Every count opens to its correction. */
export function ReplicateTable({ read }: { read: ReadTest }) {
  const { replicates, test, totals } = read;
  const days = [...new Set(replicates.flatMap((replicate) => replicate.counts.map((count) => count.day)))].sort(
    (a, b) => (a ?? Number.MAX_VALUE) - (b ?? Number.MAX_VALUE),
  );
  const told = others.filter((kind) => totals.sums[kind] !== null);
  const takenBack = replicates.flatMap((replicate) =>
    replicate.takenBack.map((count) => ({ id: count.id, words: takenBackInWords(replicate.name, count) })),
  );
  return (
    <>
      <SimpleTable
        columns={[
          { key: "name", name: "Replicate" },
          { key: "sown", name: "sown", kind: "count" },
          ...days.map((day) => ({
            key: `day ${day}`,
            name: day === null ? "day not known" : `day ${day}`,
            kind: "count" as const,
          })),
          { key: "up", name: normalWord(test.basis), kind: "count" },
          ...told.map((kind) => ({ key: kind, name: otherWords[kind], kind: "count" as const })),
          { key: "left", name: "left over", kind: "count" },
          { key: "span", name: <span className={styles.span}>in a hundred</span> },
        ]}
        rows={replicates.map((replicate) => ({
          id: replicate.id,
          cells: cellsOf(replicate, days, normalWord(test.basis)),
        }))}
        foot={replicates.length > 1 ? footOf(read, told) : undefined}
      />
      {takenBack.length > 0 ? (
        <p className="quiet">Taken back: {takenBack.map((each) => each.words).join("; ")}.</p>
      ) : null}
    </>
  );
}

function takenBackInWords(replicate: string, { day, normal }: StoredCount): string {
  return `replicate ${replicate}, ${day === null ? "day not known" : `day ${day}`}, ${normal}`;
}

function footOf({ totals, replicates }: ReadTest, told: readonly CountKind[]) {
  const everywhere = (kind: CountKind) => replicates.every((replicate) => replicate.totals.sums[kind] !== null);
  return {
    name: "together",
    sown: totals.sown,
    up: totals.counted ? totals.sums.normal : "",
    ...Object.fromEntries(
      told.map((kind) => [kind, everywhere(kind) ? totals.sums[kind] : `at least ${totals.sums[kind]}`]),
    ),
    left: totals.left,
  };
}

function cellsOf(replicate: ReadReplicate, days: readonly (number | null)[], normalWords: string) {
  const { totals, exact, sown } = replicate;
  const share = (totals.sums.normal ?? 0) / sown;
  return {
    name: replicate.name,
    sown,
    ...Object.fromEntries(days.map((day) => [`day ${day}`, dayCell(replicate, day, normalWords)])),
    up: totals.counted ? totals.sums.normal : notCounted,
    ...Object.fromEntries(others.map((kind) => [kind, totals.sums[kind] ?? notToldApart])),
    left: totals.left,
    span: exact ? (
      <span className={styles.span}>
        <SpanBar
          value={share}
          low={exact.low}
          high={exact.high}
          grade="counted"
          label={`${percent(share)}, ${percentSpan(exact.low, exact.high)}`}
        />
        {percentSpan(exact.low, exact.high)}
      </span>
    ) : null,
  };
}

function dayCell(replicate: ReadReplicate, on: number | null, normalWords: string) {
  const count = replicate.counts.find((each) => each.day === on);
  if (!count) return notCounted;
  const { before, id, day, normal, abnormal, hard, fresh, dead } = count;
  return (
    <CorrectCount
      key={id}
      count={{ id, day, normal, abnormal, hard, fresh, dead }}
      replicate={replicate.name}
      sown={replicate.sown}
      before={before.map((each) => each.normal)}
      normalWords={normalWords}
    />
  );
}

const notCounted = <span className="quiet">not counted</span>;
const notToldApart = (
  <span className={styles.dash}>
    <span aria-hidden="true">–</span>
    <span className="heard">not told apart</span>
  </span>
);
