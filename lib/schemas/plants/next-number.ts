/**
 * The next free number of a tag with these letters before it: one more than the highest that any tag or name has, 1 where none has one. A gap
 * is not filled: its plant may have been pulled, tag and all.
 */
export function nextNumber(tags: readonly string[], letters = ""): number {
  const numbers = tags.flatMap((tag) => {
    const digits = tag.startsWith(letters) ? tag.slice(letters.length) : "";
    return /^\d{1,6}$/.test(digits) ? [Number(digits)] : [];
  });
  return Math.max(0, ...numbers) + 1;
}
