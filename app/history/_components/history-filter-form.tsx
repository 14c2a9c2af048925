import { Button } from "@/components/ui";
import type { HistoryFilter } from "@/lib/registry/history/list-change-sets";
import { kindWords } from "../_words/change-words";
import styles from "./history-filter-form.module.css";

/** What is looked for in the history; sent as the page's own address. */
export function HistoryFilterForm({ filter }: { filter: HistoryFilter }) {
  return (
    <form action="/history" className={styles.form}>
      <label>
        <span>Words</span>
        <input type="search" name="words" defaultValue={filter.words} autoComplete="off" />
      </label>
      <label>
        <span>Kind</span>
        <select name="kind" defaultValue={filter.kind ?? ""}>
          <option value="">any</option>
          {Object.entries(kindWords).map(([value, words]) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span>From</span>
        <input type="date" name="from" defaultValue={filter.from} />
      </label>
      <label>
        <span>Until</span>
        <input type="date" name="to" defaultValue={filter.to} />
      </label>
      <Button type="submit">Look</Button>
    </form>
  );
}
