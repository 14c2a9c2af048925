/** Lot numbers of our own: a word and a number. The word is the variety's first, the number the next that is free. */
export function stemOf(varietyName: string, standing: readonly string[]): string {
  const stems = standing.flatMap((number) => /^(\p{L}[\p{L}'’ -]*?)\s*\d+$/u.exec(number)?.[1] ?? []);
  const usual = stems.toSorted((a, b) => occurrences(stems, b) - occurrences(stems, a))[0];
  if (usual) return usual;
  const word = /\p{L}[\p{L}'’-]*/u.exec(varietyName)?.[0] ?? "Lot";
  return word.slice(0, 12);
}

function occurrences(words: readonly string[], word: string): number {
  return words.filter((each) => each === word).length;
}

/** The highest number behind a stem among lot numbers; 0 where there is none. */
export function highestNumber(stem: string, numbers: readonly string[]): number {
  const folded = stem.toLowerCase();
  const found = numbers.flatMap((number) => {
    const match = /^(.*?)\s*(\d{1,9})$/.exec(number.trim());
    return match && match[1]?.toLowerCase() === folded ? [Number(match[2])] : [];
  });
  return Math.max(0, ...found);
}

/** A number for each lot by its name: the one a person wrote, else the next of the stem that nobody has. */
export function proposedNumbers(
  lots: readonly string[],
  written: Readonly<Record<string, string>>,
  stem: string,
  highest: number,
): Record<string, string> {
  const used = new Set(Object.values(written).map((number) => number.trim().toLowerCase()));
  let next = highest + 1;
  const numbers: Record<string, string> = {};
  for (const lot of lots) {
    const own = written[lot];
    if (own !== undefined && own.trim() !== "") {
      numbers[lot] = own;
      continue;
    }
    while (used.has(`${stem} ${next}`.toLowerCase())) next += 1;
    numbers[lot] = `${stem} ${next}`;
    next += 1;
  }
  return numbers;
}
