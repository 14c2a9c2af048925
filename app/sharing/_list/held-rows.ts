import type { Column, Row } from "@/components/tables";
import { dayInWords } from "@/lib/display/dates";
import { wholeNumber } from "@/lib/display/numbers";
import { listed } from "@/lib/display/plurals";
import type { HeldVariety } from "@/lib/registry/transfers/read-sharing";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { holderName } from "../../varieties/_words/explanations";

export const heldColumns: readonly Column[] = [
  { key: "variety", name: "Variety", kind: "words", phone: "lead" },
  { key: "places", name: "Places for certain", kind: "count", phone: "aside", phoneName: "places" },
  { key: "confirmed", name: "Holders confirmed", kind: "count", phoneName: "confirmed" },
  { key: "open", name: "Not confirmed", kind: "count", phone: "none" },
  { key: "last", name: "Last heard or seen", kind: "words" },
  { key: "who", name: "Who", kind: "words", sortable: false },
  { key: "lots", name: "Lots with seed", kind: "count", apart: true, phone: "none" },
];

/** Who holds a variety, as a row of the list. */
export function heldRow(
  { variety, holders, places, confirmed, last }: HeldVariety,
  names: ReadonlyMap<string, string>,
): Row {
  const open = holders.length - confirmed;
  const lone = places < 2;
  const shown = [...holders].sort((a, b) => Number(b.confirmed) - Number(a.confirmed));
  const who = shown.map((holder) => `${holderName(holder, names)}${holder.confirmed ? "" : " (?)"}`);
  const most = who.length > 4 ? [...who.slice(0, 3), `${who.length - 3} more`] : who;
  return {
    id: variety.id,
    cells: {
      variety: {
        kind: "link",
        words: variety.name,
        href: `/sharing/holders/${variety.id}`,
        mark: { name: variety.name, crop: variety.crop.key, coat: storedSeedCoat(variety.seedCoat) },
      },
      places: lone
        ? { kind: "waits", words: places === 0 ? "none" : "1, a sole copy", sort: places }
        : { kind: "count", words: wholeNumber(places), sort: places },
      confirmed: { kind: "count", words: wholeNumber(confirmed), sort: confirmed },
      open: { kind: "count", words: wholeNumber(open), sort: open },
      last: last === null ? null : { kind: "date", words: dayInWords(last), sort: last },
      who: listed(most),
      lots: holders.reduce((sum, holder) => sum + holder.lots.length, 0),
    },
  };
}
