import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

/** What a table writes between whole and parts: a point, or a comma where cells are parted by semicolons. */
export type DecimalMark = "." | ",";

const PLAIN = /^-?(?:\d+(?:\.\d+)?|\.\d+)$/;
const WITH_COMMA = /^-?(?:\d+(?:,\d+)?|,\d+)$/;
const THOUSANDS = /^-?[1-9]\d{0,2}(?:[.,'’\u00a0\u202f ]\d{3})+(?:[.,]\d+)?$/;
const WITH_UNIT = /^-?\d+(?:[.,]\d+)?\s*[\p{L}%°µ]+\.?$/u;
const WITH_EXPONENT = /^[+-]?(?:\d+[.,]?\d*|[.,]\d+)e[+-]?\d+$/i;

/**
 * Reads a plain decimal: digits, at most one decimal mark, at most a leading minus. A point is read in a table with
 * decimal commas too, unless it may part thousands.
 * Refused: units, exponents, thousands marks, NaN and infinity, whatever is too large for a number.
 */
export function readDecimal(text: string, mark: DecimalMark = "."): Outcome<number> {
  const written = text.trim();
  const ambiguous = mark === "," && THOUSANDS.test(written) && !WITH_COMMA.test(written);
  const plain = !ambiguous && (PLAIN.test(written) || (mark === "," && WITH_COMMA.test(written)));
  if (!plain) return refused(notPlain(written, mark));
  const value = Number(written.replace(",", "."));
  if (!Number.isFinite(value)) {
    return refused(refusal("number-too-large", [], shortened(written), "is too large", "write a number that can be"));
  }
  // Minus nothing is nothing.
  return accepted(value === 0 ? 0 : value);
}

function notPlain(written: string, mark: DecimalMark) {
  const example = mark === "," ? "12,5" : "12.5";
  const given = shortened(written);
  if (WITH_EXPONENT.test(written)) {
    return refusal("number-with-exponent", [], given, "has an exponent", `write it out, as ${example}`);
  }
  if (WITH_UNIT.test(written)) {
    const alone = /^-?\d+(?:[.,]\d+)?/.exec(written)?.[0] ?? example;
    const right = mark === "." ? alone.replace(",", ".") : alone;
    return refusal("number-with-unit", [], given, "has a unit", `write the number alone, as ${right}`);
  }
  if (THOUSANDS.test(written)) {
    return refusal(
      "number-with-thousands-mark",
      [],
      given,
      "may have a thousands mark",
      "write the digits together, as 1234",
    );
  }
  if (mark === "." && WITH_COMMA.test(written)) {
    return refusal(
      "number-with-comma",
      [],
      given,
      "has a comma",
      `write a decimal point, as ${written.replace(",", ".")}`,
    );
  }
  return refusal("number-not-plain", [], given, "is not a number", `write it in digits, as ${example}`);
}

function shortened(text: string): string {
  return text.length > 40 ? `${text.slice(0, 37)}...` : text;
}

/** Writes a number as the shortest plain decimal that reads back as the same number: never an exponent. */
export function writeDecimal(value: number): string {
  const text = String(value === 0 ? 0 : value);
  const parts = /^(-?)(\d)(?:\.(\d+))?e([+-]\d+)$/.exec(text);
  if (parts === null) return text;
  const [, sign = "", whole = "", fraction = "", power = "0"] = parts;
  const digits = whole + fraction;
  const point = 1 + Number(power);
  if (point <= 0) return `${sign}0.${"0".repeat(-point)}${digits}`;
  return sign + digits.padEnd(point, "0");
}
