/** A field of a record, from what to what. Null: nothing was written. */
export interface FieldChange {
  readonly field: string;
  readonly from: unknown;
  readonly to: unknown;
}

type Row = Readonly<Record<string, unknown>>;

/** Fields that only follow from others, or that nobody reads: folded names, first and last days, the cache's own number. */
export function followsFromOthers(field: string, row: Row): boolean {
  if (["id", "revision", "replacesId", "previousId"].includes(field)) return true;
  if (field.endsWith("Key") && field.slice(0, -3) in row) return true;
  const dated = /^(.*)(First|Last)$/.exec(field);
  return dated !== null && (dated[1] ?? "") in row;
}

/** What a change did to a record, field by field; of a record that was made or removed, all that was written in it. */
export function fieldsChanged(before: Row | null, after: Row | null): FieldChange[] {
  const row = { ...before, ...after };
  return Object.keys(row)
    .filter((field) => !followsFromOthers(field, row))
    .map((field) => ({ field, from: before?.[field] ?? null, to: after?.[field] ?? null }))
    .filter(({ from, to }) => from !== to);
}
