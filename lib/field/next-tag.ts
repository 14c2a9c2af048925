import { nextNumber } from "@/lib/schemas/plants/next-number";

/**
 * The next free tag after the last one put on with this phone: the same letters before it, the next number that none has; as many digits, where it
 * was written with zeros before it. Where the phone put none on yet, the next number after all.
 */
export function nextTag(last: string | null, taken: readonly string[]): string {
  const parts = /^(.*?)(\d{1,6})$/.exec(last ?? "");
  if (!parts) return String(nextNumber(taken));
  const [, letters = "", digits = ""] = parts;
  const number = String(nextNumber([...taken, last ?? ""], letters));
  return letters + (digits.startsWith("0") ? number.padStart(digits.length, "0") : number);
}
