"use client";

import { DateField, type Option, Select } from "@/components/ui";
import styles from "./plants-grid.module.css";

/** When the plants were looked at, and by whom: it holds for every cell that is stored in one go. */
export function SeenBy({
  on,
  steward,
  people,
  setOn,
  hint = "the day in the field, as 2024-08-20 or 2024-08",
  setSteward,
  refusals,
}: {
  on: string;
  steward: string;
  people: readonly Option[];
  setOn: (on: string) => void;
  hint?: string | undefined;
  setSteward: (steward: string) => void;
  refusals: readonly { row: string; sentence: string }[];
}) {
  const of = (field: string) => refusals.filter((each) => each.row === field).map((each) => each.sentence);
  return (
    <div className={styles.fields}>
      <div onInput={(event) => setOn((event.target as HTMLInputElement).value)}>
        <DateField name="on" label="Seen on" value={on} hint={hint} required refusals={of("on")} />
      </div>
      <div onInput={(event) => setSteward((event.target as HTMLSelectElement).value)}>
        <Select
          name="steward"
          label="Marked and scored by"
          value={steward}
          hint="the cells show what this person scored; another's scores stand beside, never in its place"
          options={people}
          empty="not said"
          refusals={of("stewardId")}
        />
      </div>
    </div>
  );
}
