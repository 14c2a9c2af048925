import { createHash, randomInt } from "node:crypto";
import { LABEL_CODE_ALPHABET as signs } from "@/lib/science/codes/label-code";

const length = 20;

/** A code that cannot be guessed: 20 of 30 signs, 98 bits. */
export function newCode(): string {
  return Array.from({ length }, () => signs[randomInt(signs.length)]).join("");
}

/** What is kept of a code. Hyphens, blanks and letter case do not matter. A guess is hopeless, so one round of SHA-256 will do. */
export function codeHashOf(code: string): string {
  const plain = code.toUpperCase().replace(/[^0-9A-Z]/g, "");
  return createHash("sha256").update(plain).digest("hex");
}

/** A code as it is read out: four groups of five. */
export function spacedCode(code: string): string {
  return code.match(/.{1,5}/g)?.join("-") ?? code;
}
