import { SimpleTable } from "@/components/tables";
import { wholeNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { SharingYear } from "@/lib/registry/transfers/sharing-by-year";
import narrow from "./narrow.module.css";

const shown = 10;

/** What went from hand to hand, year by year; no names. */
export function Years({ years, units }: { years: readonly SharingYear[]; units: UnitSettings }) {
  if (years.length === 0) return <p className="quiet">Nothing went from hand to hand yet.</p>;
  return (
    <div className={narrow.years}>
      <SimpleTable
        columns={[
          { key: "year", name: "Year" },
          { key: "out", name: "Given", kind: "count" },
          { key: "loans", name: "of it lent", kind: "count" },
          { key: "hands", name: "Hands", kind: "count" },
          { key: "varieties", name: "Varieties", kind: "count" },
          { key: "grams", name: "Weight", kind: "count" },
          { key: "back", name: "Came back", kind: "count" },
          { key: "in", name: "Came in", kind: "count" },
        ]}
        rows={years.slice(0, shown).map((each) => ({
          id: each.year,
          cells: {
            year: each.year,
            out: wholeNumber(each.outAll),
            loans: wholeNumber(each.out.loan ?? 0),
            hands: wholeNumber(each.hands),
            varieties: wholeNumber(each.varieties),
            grams: `${weight(each.grams, units)}${each.withoutWeight > 0 ? `, ${wholeNumber(each.withoutWeight)} of unknown weight` : ""}`,
            back: wholeNumber(each.cameBack),
            in: wholeNumber(each.cameIn),
          },
        }))}
      />
      {years.length > shown ? (
        <p className="quiet">{counted(years.length - shown, "earlier year")} in the CSV.</p>
      ) : null}
      <p className="quiet measure">
        Counted are hand-overs on record as such. A return is counted as come back, not as given; each hand-over to
        somebody whose name is not kept counts as one hand.
      </p>
    </div>
  );
}
