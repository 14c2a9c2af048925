import type { Column, Row } from "@/components/tables";
import { dateInWords } from "@/lib/display/dates";
import type { StewardInList } from "@/lib/registry/stewards/list-stewards";

export const columns: readonly Column[] = [
  { key: "name", name: "Steward", kind: "words", phone: "lead" },
  { key: "kind", name: "Kind", kind: "words" },
  { key: "place", name: "Place", kind: "words" },
  { key: "lots", name: "Lots", kind: "count", phone: "aside", phoneName: "lots" },
  { key: "growOuts", name: "Grow-outs", kind: "count", phone: "none" },
  { key: "strains", name: "Strains", kind: "count", apart: true, phone: "none" },
  { key: "word", name: "Last word", kind: "words" },
  { key: "note", name: "Note", kind: "words", apart: true, phone: "none" },
];

const answers: Readonly<Record<string, string>> = {
  yes: "still has",
  no: "no longer has",
  unknown: "does not know of",
};

/** A steward as a row of the list; the name leads to what is written of them for who may put that right. */
export function stewardRow(steward: StewardInList, mayCorrect: boolean): Row {
  const word = steward.lastWord;
  const name = steward.name ?? "a steward";
  return {
    id: steward.id,
    cells: {
      name: mayCorrect ? { kind: "link", words: name, href: `/stewards/${steward.id}/correct` } : name,
      kind: steward.kind,
      place: steward.place,
      lots: { kind: "link", words: String(steward.lots), href: `/lots?holder=${steward.id}`, sort: steward.lots },
      growOuts: steward.growOuts,
      strains: steward.strains,
      word: word
        ? {
            kind: "link",
            words: `${dateInWords(word.on)}: ${answers[word.still] ?? word.still} ${word.variety}`,
            href: `/varieties/${word.varietyId}#holders`,
            sort: word.on,
          }
        : "nothing heard",
      note: steward.note ?? "",
    },
  };
}
