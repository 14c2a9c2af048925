import Link from "next/link";
import { Button, Select, TextField } from "@/components/ui";
import { addressOfLotList, type LotListQuery, longestListName } from "@/lib/schemas/lots/list-query";
import { askedFor, type FilterField } from "./filter-words";
import styles from "./narrow.module.css";

/** The filters of the list and its name, folded until asked for, and what the list is narrowed to now, each with the way out of it. */
export function Narrow({ query, fields }: { query: LotListQuery; fields: readonly FilterField[] }) {
  const asked = askedFor(query, fields);
  const kept = new URLSearchParams(addressOfLotList({ ...query, ...nothingAsked, page: 1 }).replace("?", ""));
  return (
    <div>
      {asked.length > 0 ? (
        <p className={styles.asked}>
          <span>Only</span>
          {asked.map(({ name, words }) => (
            <Link key={name} href={`/lots${addressOfLotList(query, { [name]: null, page: 1 })}`} scroll={false}>
              {words}
              <span className="heard">, take this away</span>
              <span aria-hidden="true">&nbsp;×</span>
            </Link>
          ))}
        </p>
      ) : null}
      <details className={styles.narrow}>
        <summary>Narrow the list</summary>
        <form className={styles.form} action="/lots" noValidate>
          {[...kept].map(([name, value]) => (
            <input key={name} type="hidden" name={name} value={value} />
          ))}
          {fields.map((field) => (
            <Select
              key={field.name}
              name={field.name}
              label={field.label}
              empty={field.empty}
              options={field.options}
              value={query[field.name]}
              required
            />
          ))}
          <TextField
            name="named"
            label="A name for this list"
            hint={`Up to ${longestListName} letters. It stands at the head, on paper and in the address: whoever gets the address sees the same list.`}
            value={query.named}
          />
          <Button type="submit">Show these</Button>
        </form>
      </details>
    </div>
  );
}

const nothingAsked = {
  variety: null,
  crop: null,
  holder: null,
  kind: null,
  status: null,
  place: null,
  seed: null,
  test: null,
  named: null,
} as const;
