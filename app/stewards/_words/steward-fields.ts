import type { FieldSpec } from "../../varieties/_forms/field-spec";

/** The fields of a steward, with what stands in them. */
export function stewardFields(steward?: {
  readonly name: string | null;
  readonly kind: string | null;
  readonly place: string | null;
  readonly note: string | null;
}): readonly FieldSpec[] {
  return [
    {
      kind: "words",
      name: "name",
      label: "Name",
      required: true,
      value: steward?.name,
      hint: "As it is used in the circle",
    },
    {
      kind: "select",
      name: "kind",
      label: "What kind of keeper",
      value: steward?.kind,
      empty: "not said",
      options: [
        { value: "grower", words: "a grower" },
        { value: "library", words: "a seed library" },
        { value: "genebank", words: "a genebank" },
      ],
    },
    {
      kind: "words",
      name: "place",
      label: "Place",
      value: steward?.place,
      hint: "The village is enough; an exact place is private",
    },
    { kind: "words", name: "note", label: "Note", value: steward?.note, lines: 2 },
  ];
}
