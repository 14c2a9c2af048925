"use client";

import { SpanBar } from "@/components/doubt";
import { Explained } from "@/components/numbers";
import { percent, percentSpan, plainNumber } from "@/lib/display/numbers";
import { type GerminationTest, germinationTest } from "@/lib/science/germination/germination-test";
import { publishedTolerance } from "@/lib/science/germination/published-tolerance";
import type { ReplicateCounts } from "@/lib/science/germination/test-counts";
import { germinationOfReplicates } from "../_words/explain-germination";
import { spreadInWords, testInWords } from "../_words/reading-in-words";
import styles from "./live-reading.module.css";

/** A replicate as far as it was counted, in seeds. */
export type CountedSoFar = ReplicateCounts;

/** The reading of what is typed, or null while nothing is counted or something cannot stand. */
export function readingOf(replicates: readonly CountedSoFar[]): GerminationTest | null {
  if (replicates.length === 0) return null;
  const read = germinationTest({ replicates });
  return read.ok ? read.value : null;
}

/** What the counts mean, as they are typed: the words, the exact span, and whether the replicates are alike. */
export function LiveReading({
  replicates,
  basis,
  soFar,
}: {
  /** the replicates of which something was counted */
  replicates: readonly CountedSoFar[];
  basis: string | null;
  /** seeds are left and the last day is still to come */
  soFar: boolean;
}) {
  const reading = readingOf(replicates);
  const published = publishedTolerance(replicates);
  // What is opened lies outside of what is read out as it changes.
  return (
    <div className="stack-near">
      <div className={styles.reading} role="status" aria-live="polite">
        {reading === null ? (
          <p className="quiet">Nothing is counted yet. What the counts mean stands here as you type.</p>
        ) : (
          <>
            <p className={styles.figure}>
              {plainNumber(reading.normal)} of {plainNumber(reading.sown)}
              <span className={styles.percent}>{percent(reading.germination)}</span>
            </p>
            <SpanBar
              value={reading.germination}
              low={reading.exact.low}
              high={reading.exact.high}
              grade="counted"
              width={260}
              height={26}
              label={`${percent(reading.germination)}, ${percentSpan(reading.exact.low, reading.exact.high)}`}
            />
            <p>
              {testInWords({ ...reading, basis, interval: reading.exact })}
              {soFar ? ", so far" : ""}.
            </p>
            {reading.spread ? <p className="quiet">{spreadInWords(reading.spread, replicates.length)}</p> : null}
            {published?.toleratedPercent != null ? (
              <p className="quiet">
                Published range: {published.rangePercent} points, {published.toleratedPercent} tolerated
                {published.exceeded ? "; a laboratory bound by it tests again." : "."}
              </p>
            ) : null}
          </>
        )}
      </div>
      {reading ? (
        <Explained explanation={germinationOfReplicates({ name: "what is typed", basis, replicates }, reading)}>
          <span>
            {percent(reading.germination)}, {percentSpan(reading.exact.low, reading.exact.high)}
          </span>
        </Explained>
      ) : null}
    </div>
  );
}
