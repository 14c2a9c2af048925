/** What stands in place of a name or contact that was erased. */
export const erasedMark = "(name erased)";

/**
 * Replaces what is to be forgotten wherever it stands in a text as a word of its own, in any letter case; null where none of it does.
 * In JSON (`json`) as it is written there.
 */
export function forgetting(words: readonly string[], json = false): (text: string) => string | null {
  const written = words
    .flatMap((word) => (json ? [JSON.stringify(word).slice(1, -1)] : [word]))
    .filter((word) => word.trim() !== "")
    // The longest first: a name may stand within another.
    .sort((left, right) => right.length - left.length)
    .map((word) => word.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"));
  if (written.length === 0) return () => null;
  const pattern = new RegExp(`(?<![\\p{L}\\p{N}-])(?:${written.join("|")})(?!-?[\\p{L}\\p{N}])`, "giu");
  return (text) => {
    const without = text.replace(pattern, erasedMark);
    return without === text ? null : without;
  };
}
