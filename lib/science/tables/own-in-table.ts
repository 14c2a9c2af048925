/** A steward's own value in the place of one of a published table. */
export interface OwnInTable {
  /** the table's file name without its ending */
  readonly table: string;
  readonly row: string;
  readonly field: string;
  readonly value: number | string;
  readonly reason: string;
  readonly source: string | null;
}

/** An own value with the published one that it stands for (null: the table says nothing): what an explanation has to say of it. */
export interface OwnOfRow extends OwnInTable {
  readonly instead: number | string | null;
}

/** The own values among some fields of a row. */
export function ownAmong(
  own: readonly OwnInTable[],
  table: string,
  row: string,
  published: Readonly<Record<string, number | string | null>>,
): OwnOfRow[] {
  return own
    .filter((each) => each.table === table && each.row === row && each.field in published)
    .map((each) => ({ ...each, instead: published[each.field] ?? null }));
}

/** A row with the own values in their places. */
export function withOwn<Row extends object>(row: Row, own: readonly OwnOfRow[]): Row {
  return { ...row, ...Object.fromEntries(own.map(({ field, value }) => [field, value])) };
}
