import type { RowOf } from "@/lib/registry/change-set/records";
import type { FieldSpec } from "../_forms/field-spec";
import { aimWords, sensitivityWords } from "./aim-words";

/** The fields in which a variety is corrected, with what stands in them. */
export function varietyFields(variety: RowOf<"Variety">): readonly FieldSpec[] {
  const count = (value: number | null) => (value === null ? null : String(value));
  return [
    { kind: "words", name: "name", label: "Name", required: true, value: variety.name },
    {
      kind: "select",
      name: "aim",
      label: "What you aim at",
      value: variety.aim,
      empty: "not said",
      options: Object.entries(aimWords).map(([value, { words }]) => ({ value, words })),
    },
    {
      kind: "words",
      name: "typeDescription",
      label: "What it should look like",
      value: variety.typeDescription,
      lines: 4,
    },
    { kind: "words", name: "story", label: "Its story", value: variety.story, lines: 6 },
    {
      kind: "words",
      name: "cautions",
      label: "Cautions",
      value: variety.cautions,
      lines: 2,
      hint: "Cook before eating; bitter fruit turns up",
    },
    {
      kind: "number",
      name: "plantsWanted",
      label: "Plants you want in a grow-out",
      whole: true,
      unit: "plants",
      value: count(variety.plantsWanted),
    },
    {
      kind: "number",
      name: "seedParentsWanted",
      label: "Seed parents you want",
      whole: true,
      unit: "plants",
      value: count(variety.seedParentsWanted),
    },
    {
      kind: "number",
      name: "isolationWantedM",
      label: "Isolation you want",
      unit: "metres",
      value: count(variety.isolationWantedM),
    },
    {
      kind: "select",
      name: "sensitivity",
      label: "Who may see it",
      required: true,
      value: variety.sensitivity,
      options: Object.entries(sensitivityWords).map(([value, { words, note }]) => ({
        value,
        words: `${words}: ${note}`,
      })),
    },
    {
      kind: "words",
      name: "rights",
      label: "Rights",
      value: variety.rights,
      hint: "Old and common, protected, not known: check your local rule",
    },
    { kind: "words", name: "note", label: "Note", value: variety.note, lines: 2 },
    {
      kind: "words",
      name: "reason",
      label: "Why it is corrected",
      hint: "Needed where something that was written is replaced; both stay in the history",
    },
  ];
}
