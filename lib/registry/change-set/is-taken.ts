/** Whether the database refused a row because another bears the same name, number or pair already. */
export function isTaken(error: unknown): boolean {
  return error instanceof Error && /unique constraint|SQLITE_CONSTRAINT_UNIQUE|\b23505\b/i.test(error.message);
}
