import { type Coat, type CoatColour, type CoatPattern, coatPatterns } from "./coat";
import { numberOf, numberStream } from "./number-stream";

const light: readonly CoatColour[] = ["white", "cream", "buff", "yellow", "tan", "pink", "green"];
const dark: readonly CoatColour[] = ["brown", "black", "red", "wine", "violet", "slate", "orange"];

/**
 * The mark of a variety that has none of its own: drawn from its name alone, so that it is the same in every list, print
 * and registry. Two colours always differ in tone, so that the pattern also shows in black and white.
 */
export function coatFromName(name: string): Coat {
  const next = numberStream(numberOf(name.normalize("NFC").trim().toLowerCase()));
  const patterns: readonly CoatPattern[] = coatPatterns.filter((pattern) => pattern !== "plain");
  const pattern = pick(patterns, next());
  const pale = pick(light, next());
  const deep = pick(dark, next());
  return next() < 0.68 ? { pattern, ground: pale, second: deep } : { pattern, ground: deep, second: pale };
}

function pick<T>(list: readonly T[], at: number): T {
  return list[Math.min(list.length - 1, Math.floor(at * list.length))] as T;
}
