import { Button } from "@/components/ui";
import { dateInWords } from "@/lib/display/dates";
import type { LotOfVariety } from "@/lib/registry/varieties/read-variety";
import styles from "./diversity.module.css";

/** Of which lot the page speaks: a list and a button, so that it works without script and stands in the address. */
export function ChooseLot({ lots, chosen }: { lots: readonly LotOfVariety[]; chosen: string }) {
  if (lots.length < 2) return null;
  const newest = [...lots].sort((a, b) => ((a.yearLast ?? "") < (b.yearLast ?? "") ? 1 : -1));
  return (
    <form className={`${styles.choose} not-on-paper`}>
      <label>
        <span className="heard">Lot that the page speaks of</span>
        <select key={chosen} name="lot" defaultValue={chosen}>
          {newest.map(({ id, number, year }) => (
            <option key={id} value={id}>
              {number}
              {year === null ? "" : `, ${dateInWords(year)}`}
            </option>
          ))}
        </select>
      </label>
      <Button type="submit">Show this one</Button>
    </form>
  );
}
