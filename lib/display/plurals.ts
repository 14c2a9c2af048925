import { wholeNumber } from "./numbers";

const words = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

/** The plural of a trade word: lot, lots; variety, varieties; batch, batches. */
export function plural(word: string): string {
  if (/[^aeiou]y$/.test(word)) return `${word.slice(0, -1)}ies`;
  if (/(s|x|z|ch|sh)$/.test(word)) return `${word}es`;
  return `${word}s`;
}

/** A count with its word: "1 lot", "22 lots", "1,240 seeds". Another plural may be given. */
export function counted(count: number, word: string, many: string = plural(word)): string {
  return `${wholeNumber(count)} ${count === 1 ? word : many}`;
}

/** A count for running text: in words up to twelve ("no lots", "one lot", "twelve lots"), in figures above. */
export function countedInWords(count: number, word: string, many: string = plural(word)): string {
  return `${words[count] ?? wholeNumber(count)} ${count === 1 ? word : many}`;
}

/** Names in a sentence: "a, b and c". */
export function listed(names: readonly string[], joint = "and"): string {
  if (names.length <= 1) return names[0] ?? "";
  return `${names.slice(0, -1).join(", ")} ${joint} ${names[names.length - 1]}`;
}
