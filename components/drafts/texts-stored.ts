/** A draft of a form's texts as it was stored on the device; null where something else lies there. */
export function textsStored(stored: unknown): Record<string, string> | null {
  if (typeof stored !== "object" || stored === null) return null;
  const texts = Object.entries(stored).filter((each): each is [string, string] => typeof each[1] === "string");
  return Object.fromEntries(texts);
}
