import { sameName } from "../names/fold-name";

/** Which of the records with one folded name a person means: the one written just so, else the only one; null where it stays open. */
export function oneMeant<T>(written: string, found: readonly T[], nameOf: (record: T) => string): T | null {
  const exact = found.find((record) => nameOf(record) === sameName(written));
  return exact ?? (found.length === 1 ? (found[0] ?? null) : null);
}
