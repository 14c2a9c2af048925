/** Where an own value for a field of a table's row is written; `crop`: from whose page one came. */
export function ownValueHref(table: string, row: string, field: string, crop?: string): string {
  const back = crop ? `?crop=${encodeURIComponent(crop)}` : "";
  return `/methods/tables/${table}/own/${encodeURIComponent(row)}/${field}${back}`;
}

/** Where one goes on from there. */
export function afterOwnValue(table: string, crop: string | undefined): string {
  return crop ? `/crops/${encodeURIComponent(crop)}#tables` : `/methods/tables/${table}`;
}
