import { readAmount } from "@/lib/exchange/notebook-lines/amount";
import { readCount } from "@/lib/exchange/notebook-lines/count";
import { lineOf } from "@/lib/exchange/notebook-lines/line";
import type { Amount, Count } from "@/lib/exchange/notebook-lines/reading";

/** A count as it is typed in place of another: "40", "about 40", "30-40", "over 40". Null where it is none. */
export function countTyped(text: string): Count | null {
  const line = lineOf(text.trim(), null, null);
  const read = readCount(line, 0);
  return read && read.end === line.tokens.length ? read.count : null;
}

/** An amount as it is typed: "350 g", "2 lb 4 oz", "500 seeds". Null where it is none, or has no unit. */
export function amountTyped(text: string): Amount | null {
  const line = lineOf(text.trim(), null, null);
  const read = readAmount(line, 0);
  return read && read.end === line.tokens.length ? read.amount : null;
}

/** "18 of 20", "18/20": how many of how many. */
export function upOfTyped(text: string): { up: Count; of: Count } | null {
  const [first, second, more] = text.split(/\s*(?:\/|\bof\b)\s*/);
  const up = first ? countTyped(first) : null;
  const of = second ? countTyped(second) : null;
  return up && of && more === undefined ? { up, of } : null;
}

/** A share: "0.3", "30 %", "1/3". Null where it is none between 0 and 1. */
export function shareTyped(text: string): number | null {
  const written = text.trim().replace(",", ".");
  const part = /^(\d+(?:\.\d+)?)\s*\/\s*(\d+(?:\.\d+)?)$/.exec(written);
  const percent = /^(\d+(?:\.\d+)?)\s*%$/.exec(written);
  const plain = /^\d*\.?\d+$/.exec(written);
  const share = part
    ? Number(part[1]) / Number(part[2])
    : percent
      ? Number(percent[1]) / 100
      : plain
        ? Number(written)
        : null;
  return share !== null && share > 0 && share <= 1 ? share : null;
}

/** A told number as it stands on the screen: the figure alone where it is simply one, else its words. */
export function numberShown({ value, approximate, words }: Count): string {
  return value !== null && !approximate ? String(value) : words;
}
