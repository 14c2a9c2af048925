"use client";

import type { ReadLine } from "../_lines/typed-line";
import type { LotChoice } from "./field-value";
import { LineRow } from "./line-row";
import styles from "./typing.module.css";
import { Understood } from "./understood";
import type { TypedLines } from "./use-lines";

const example = "1994, from my aunt’s jar, about 40 plants, kept from 12, came up badly";

/** The column of lines, each with what was understood of it. */
export function Lines({
  typing,
  read,
  lots,
  refusals,
}: {
  typing: TypedLines;
  /** as far as they were read; the last stroke may still be under way */
  read: readonly ReadLine[];
  lots: readonly LotChoice[];
  refusals: Readonly<Record<number, readonly string[]>>;
}) {
  return (
    <div>
      <p className={styles.ways}>
        A line a year, in your own words. <kbd>Enter</kbd> makes the next line, <kbd>Backspace</kbd> takes an empty one
        away, arrows move.
      </p>
      <ol className={styles.lines}>
        {typing.draft.lines.map((line, place) => (
          <LineRow
            key={line.id}
            id={line.id}
            place={place}
            words={line.words}
            placeholder={place === 0 ? example : undefined}
            hands={{
              type: (words) => typing.type(line.id, words),
              part: (at) => typing.part(line.id, at),
              remove: () => typing.remove(line.id),
              paste: (selection, text) => typing.paste(line.id, selection, text),
              go: (way) => typing.go(line.id, way),
            }}
          >
            {read[place] ? (
              <Understood
                line={read[place]}
                place={place}
                fixes={line.fixes}
                lots={lots}
                refusals={refusals[place] ?? []}
                onFix={(key, fix) => typing.fix(line.id, key, fix)}
              />
            ) : null}
          </LineRow>
        ))}
      </ol>
    </div>
  );
}
