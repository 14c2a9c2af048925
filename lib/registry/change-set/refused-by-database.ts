/** Whether the database refused a row because another bears the same name, number or pair already. */
export function isTaken(error: unknown): boolean {
  return error instanceof Error && /unique constraint|SQLITE_CONSTRAINT_UNIQUE|\b23505\b/i.test(error.message);
}

/** The name of the check constraint by which the database refused a row; null for any other error. */
export function brokenRule(error: unknown): string | null {
  if (!(error instanceof Error)) return null;
  const found = /CHECK constraint failed: (\w+)|check constraint \\?"(\w+)\\?"/i.exec(error.message);
  return found ? (found[1] ?? found[2] ?? null) : null;
}
