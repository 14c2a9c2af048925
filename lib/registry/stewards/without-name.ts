/** What stands in place of a name or contact that was erased. */
export const erasedMark = "(name erased)";

/**
 * Replaces what is to be forgotten wherever it stands in a text as a word of its own, in any letter case; null where none of it does.
 * In JSON (`json`) in its values: the names of its fields stay, whatever somebody is called.
 */
export function forgetting(words: readonly string[], json = false): (text: string) => string | null {
  const written = words
    .filter((word) => word.trim() !== "")
    // The longest first: a name may stand within another.
    .sort((left, right) => right.length - left.length)
    .map((word) => word.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"));
  if (written.length === 0) return () => null;
  // JSON can stand within a value, and there the n of a line's end is no letter of a word.
  const pattern = new RegExp(
    `(?:(?<![\\p{L}\\p{N}-])|(?<=\\\\[nrt]))(?:${written.join("|")})(?!-?[\\p{L}\\p{N}])`,
    "giu",
  );
  const replaced = (_field: string, value: unknown) =>
    typeof value === "string" ? value.replace(pattern, erasedMark) : value;
  return (text) => {
    const without = json ? JSON.stringify(JSON.parse(text), replaced) : text.replace(pattern, erasedMark);
    return without === text ? null : without;
  };
}
