/** What stands in the history in place of a picture that was erased: of its file and of the words beside it. */
export const erasedPicture = "(picture erased)";

/**
 * A record from the field, as it was sent (JSON), with the mark in place of the words beside its picture; null where it is of a picture that no phone sent under
 * one of these hashes, or has no words.
 */
export function withoutWordsSent(sent: string, hashes: ReadonlySet<string>): string | null {
  const record = JSON.parse(sent) as { kind?: unknown; body?: { hash?: unknown; caption?: unknown } | null };
  const { kind, body } = record;
  if (kind !== "photo" || !body || typeof body.hash !== "string" || !hashes.has(body.hash)) return null;
  if (typeof body.caption !== "string" || body.caption === erasedPicture) return null;
  return JSON.stringify({ ...record, body: { ...body, caption: erasedPicture } });
}
