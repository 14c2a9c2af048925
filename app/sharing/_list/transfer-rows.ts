import type { Column, Row } from "@/components/tables";
import { dateInWords } from "@/lib/display/dates";
import type { UnitSettings } from "@/lib/display/units";
import type { StoredTransfer } from "@/lib/registry/season/records";
import type { SharingRead } from "@/lib/registry/transfers/read-sharing";
import { fromOutside } from "@/lib/registry/transfers/sharing-by-year";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { amountInWords, kindInWords } from "../_words/transfer-words";

export const transferColumns: readonly Column[] = [
  { key: "lot", name: "Lot", kind: "words", phone: "lead" },
  { key: "on", name: "When", kind: "words" },
  { key: "kind", name: "How", kind: "words" },
  { key: "variety", name: "Variety", kind: "words" },
  { key: "from", name: "From", kind: "words", phone: "none" },
  { key: "to", name: "To", kind: "words" },
  { key: "amount", name: "How much", kind: "count", phone: "aside" },
  { key: "new", name: "There as", kind: "words", phone: "none" },
];

/** A transfer as a row of the list. */
export function transferRow(transfer: StoredTransfer, read: SharingRead, units: UnitSettings): Row {
  const { records, lots } = read;
  const variety = records.varieties.get(transfer.varietyId);
  const lot = lots.get(transfer.lotId);
  const made = transfer.newLotId === null ? undefined : lots.get(transfer.newLotId);
  return {
    id: transfer.id,
    cells: {
      lot: {
        kind: "link",
        words: lot?.number ?? "a lot",
        href: `/sharing/${transfer.id}`,
        mark: variety && { name: variety.name, crop: variety.crop.key, coat: storedSeedCoat(variety.seedCoat) },
      },
      on: { kind: "date", words: dateInWords(transfer.on), sort: transfer.onFirst },
      kind: fromOutside(transfer) ? `${kindInWords(transfer.kind)}, taken in` : kindInWords(transfer.kind),
      variety: variety ? { kind: "link", words: variety.name, href: `/varieties/${variety.id}` } : null,
      from: handOf(transfer.fromStewardId, null, records.names),
      to: handOf(transfer.toStewardId, transfer.toWords, records.names),
      amount: {
        kind: "count",
        words: amountInWords(transfer.amount, transfer.unit, units),
        sort: transfer.grams ?? transfer.amount,
      },
      new: made && made.id !== lot?.id ? { kind: "link", words: made.number, href: `/lots/${made.id}` } : "",
    },
  };
}

/** A hand by its name, else in the words that were kept; an erased name is a steward; null: nobody is on record. */
export function handOf(
  stewardId: string | null,
  words: string | null,
  names: ReadonlyMap<string, string>,
): string | null {
  if (stewardId === null) return words;
  return names.get(stewardId) ?? "a steward";
}
