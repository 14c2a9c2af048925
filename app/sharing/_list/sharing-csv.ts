import { stringify } from "csv-stringify/sync";
import type { SharingRead } from "@/lib/registry/transfers/read-sharing";
import { fromOutside } from "@/lib/registry/transfers/sharing-by-year";
import { givingKinds } from "@/lib/schemas/transfers/transfer";
import { handOf } from "./transfer-rows";

// Text that a spreadsheet would run as a formula is marked with an apostrophe.
const csv = (rows: readonly (readonly (string | number)[])[]) =>
  stringify([...rows], { record_delimiter: "\r\n", escape_formulas: true });

/** All transfers, the newest first; dates as written, empty is not known. */
export function transfersCsv({ transfers, lots, records }: SharingRead): string {
  const head = [
    "on",
    "kind",
    "taken_in",
    "lot",
    "new_lot",
    "variety",
    "from",
    "to",
    "amount",
    "unit",
    "grams",
    "reply_due",
  ];
  const rows = transfers.map((each) => [
    each.on,
    each.kind,
    fromOutside(each) ? "yes" : "no",
    lots.get(each.lotId)?.number ?? "",
    each.newLotId === null ? "" : (lots.get(each.newLotId)?.number ?? ""),
    records.varieties.get(each.varietyId)?.name ?? "",
    handOf(each.fromStewardId, null, records.names) ?? "",
    handOf(each.toStewardId, each.toWords, records.names) ?? "",
    each.amount ?? "",
    each.unit,
    each.grams ?? "",
    each.replyDue ?? "",
  ]);
  return csv([head, ...rows]);
}

/** What went from hand to hand by year, without a name: for a yearly report. */
export function yearsCsv({ years }: SharingRead): string {
  const kinds = [...givingKinds.filter((kind) => kind !== "return"), "sale"];
  const head = [
    "year",
    "given_in_all",
    ...kinds.map((kind) => kind.replaceAll(" ", "_")),
    "hands",
    "varieties",
    "grams",
    "without_weight",
    "came_back",
    "came_in",
  ];
  const rows = years.map((each) => [
    ...[each.year, each.outAll, ...kinds.map((kind) => each.out[kind] ?? 0)],
    ...[each.hands, each.varieties, each.grams, each.withoutWeight, each.cameBack, each.cameIn],
  ]);
  return csv([head, ...rows]);
}

/** Who holds what, one line a holder of a variety, sole copies first. */
export function holdersCsv({ held, records }: SharingRead): string {
  const head = [
    "variety",
    "places_for_certain",
    "holder",
    "lots",
    "places",
    "confirmed",
    "why_not",
    "last_day",
    "last_how",
  ];
  const rows = held.flatMap(({ variety, places, holders }) =>
    holders.map((holder) => [
      ...[variety.name, places, handOf(holder.stewardId, null, records.names) ?? ""],
      ...[holder.lots.map((lot) => lot.number).join("; "), holder.places, holder.confirmed ? "yes" : "no"],
      ...[holder.why ?? "", holder.last?.day ?? "", holder.last?.how ?? ""],
    ]),
  );
  return csv([head, ...rows]);
}
