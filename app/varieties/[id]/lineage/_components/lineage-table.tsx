import Link from "next/link";
import { SimpleTable } from "@/components/tables";
import { hasNoSeed } from "@/lib/registry/lineage/lineage-lots";
import type { LineageRead } from "@/lib/registry/lineage/read-lineage";
import { claimInWords, foreignInWords, keptInWords, kindInWords, sizeInWords } from "../_words/cards";
import { hrefOf } from "../_words/tree";

const columns = [
  { key: "lot", name: "Lot" },
  { key: "how", name: "How it came" },
  { key: "holder", name: "Held by" },
  { key: "size", name: "Effective size", kind: "count" },
  { key: "kept", name: "Diversity kept", kind: "count" },
  { key: "seed", name: "Seed" },
  { key: "told", name: "Foreign pollen, and what is only told" },
] as const;

/** The whole picture as a table, for the ear, the printer and the pen: by year. */
export function LineageTable({ read }: { read: LineageRead }) {
  const numbers = new Map(read.lots.map(({ id, number }) => [id, number]));
  const people = new Map(read.stewards.map(({ id, name }) => [id, name ?? "a steward"]));
  const byYear = [...read.lots].sort((a, b) => (a.at?.first ?? 0) - (b.at?.first ?? 0));
  return (
    <SimpleTable
      entries
      columns={columns}
      rows={byYear.map((lot) => ({
        id: lot.id,
        cells: {
          lot: <Link href={hrefOf(lot)}>{lot.number}</Link>,
          how: kindInWords(lot, numbers) + (lot.varietyId === read.variety.id ? "" : `, of ${lot.variety}`),
          holder: lot.holderId === null ? "" : people.get(lot.holderId),
          size: sizeInWords(lot),
          kept: hasNoSeed(lot) ? null : keptInWords(lot),
          seed: hasNoSeed(lot)
            ? (lot.outcome ?? "none yet")
            : lot.living === null
              ? "unknown"
              : lot.living
                ? "yes"
                : "none left",
          told: [
            foreignInWords(lot),
            ...read.claims.filter(({ lotId }) => lotId === lot.id).map((claim) => claimInWords(claim, numbers)),
          ]
            .filter((words) => words !== "")
            .join("; "),
        },
      }))}
    />
  );
}
