/*
 * The only rounding and wording of numbers. A null is "unknown", never 0 and never blank. Nothing that is not quite all is
 * shown as 100 %, nothing that is not quite none as 0 %. Signs are typographic: a true minus, an en dash between ends.
 */

export const unknown = "unknown";
/** A blank at which no line is broken, between a figure and its unit. */
const blank = "\u00a0";

/** A figure and its unit, kept on one line. */
export function withUnit(figure: string, unit: string): string {
  return `${figure}${blank}${unit}`;
}

/** Rounded half away from zero at `decimals` places, free of binary dust (1.005 gives 1.01). */
export function rounded(value: number, decimals: number): number {
  const scaled = Number(`${Math.abs(value)}e${decimals}`);
  const whole = Number.isNaN(scaled) ? Math.round(Math.abs(value) * 10 ** decimals) / 10 ** decimals : undefined;
  const size = whole ?? Number(`${Math.round(scaled)}e-${decimals}`);
  return value < 0 ? -size : size;
}

/** A number with thousands parted by commas and at most `decimals` places; trailing zeros are dropped unless `keep`. */
export function plainNumber(value: number, decimals = 0, keep = false): string {
  const size = Math.abs(rounded(value, decimals));
  const text = format(decimals, keep).format(size);
  return value < 0 && size !== 0 ? `−${text}` : text;
}

// A format is dear to make and cheap to use: one for each number of places.
const formats = new Map<string, Intl.NumberFormat>();

function format(decimals: number, keep: boolean): Intl.NumberFormat {
  const key = `${decimals} ${keep}`;
  const made =
    formats.get(key) ??
    new Intl.NumberFormat("en-GB", {
      minimumFractionDigits: keep ? decimals : 0,
      maximumFractionDigits: decimals,
      useGrouping: true,
    });
  formats.set(key, made);
  return made;
}

/** A whole count: "1,240". */
export function wholeNumber(value: number): string {
  return plainNumber(value, 0);
}

/** `figures` significant figures: 23.36 gives "23", 5.015 "5.0", 1238 "1,200". */
export function significant(value: number, figures = 2): string {
  if (value === 0) return "0";
  const magnitude = Math.floor(Math.log10(Math.abs(Number(value.toPrecision(figures)))));
  const decimals = figures - 1 - magnitude;
  if (decimals >= 0) return plainNumber(value, decimals, true);
  const step = 10 ** -decimals;
  return plainNumber(Math.round(value / step) * step);
}

/** An effective size at two significant figures: "23". */
export function effectiveSize(value: number | null): string {
  return value === null ? unknown : significant(value, 2);
}

/** A share (0..1) without its sign: at most one decimal, and never 0 or 100 where it is not exactly that. */
function percentFigure(share: number, decimals: 0 | 1): string {
  const figure = rounded(share * 100, decimals);
  if (figure <= 0 && share > 0) return decimals === 0 ? percentFigure(share, 1) : "0.1";
  if (figure >= 100 && share < 1) return decimals === 0 ? percentFigure(share, 1) : "99.9";
  return plainNumber(figure, decimals);
}

/** A share (0..1) as a percentage with at most one decimal: "64 %", "87.5 %", "below 0.1 %", "above 99.9 %". */
export function percent(share: number | null, decimals: 0 | 1 = 1): string {
  if (share === null) return unknown;
  if (share > 0 && share < 0.0005) return `below${blank}0.1${blank}%`;
  if (share < 1 && share >= 0.9995) return `above${blank}99.9${blank}%`;
  return `${percentFigure(share, decimals)}${blank}%`;
}

/** A span of shares (0..1): "64–88 %". Ends that round alike get their decimal; one that stays alike stands alone. */
export function percentSpan(low: number | null, high: number | null): string {
  if (low === null && high === null) return unknown;
  if (low === null) return `at most ${percent(high, 0)}`;
  if (high === null) return `at least ${percent(low, 0)}`;
  const coarse = [percentFigure(low, 0), percentFigure(high, 0)];
  const [from, to] = coarse[0] === coarse[1] && low !== high ? [percentFigure(low, 1), percentFigure(high, 1)] : coarse;
  return from === to ? `${from}${blank}%` : `${from}–${to}${blank}%`;
}

/** The counts first, then what they make: "32 of 50 (64 %)"; "0 of 0" has no percentage. */
export function kOfN(count: number, of: number): string {
  const counts = `${wholeNumber(count)} of ${wholeNumber(of)}`;
  return of > 0 ? `${counts} (${percent(count / of)})` : counts;
}

/** A weight in grams: "0.0042 g", "0.84 g", "6.8 g", "168.8 g", "2,400 g". */
export function grams(value: number | null): string {
  if (value === null) return unknown;
  if (value > 0 && value < 0.00005) return `below${blank}0.0001${blank}g`;
  const size = Math.abs(value);
  // of dust-fine seed a hundredth of a gram is many hundred seeds
  const places = size < 0.01 ? 4 : size < 0.1 ? 3 : size < 10 ? 2 : size < 1000 ? 1 : 0;
  return `${plainNumber(value, places)}${blank}g`;
}

/** Seeds that were counted one by one: "1,236 seeds", "1 seed". */
export function seedsCounted(value: number): string {
  return `${wholeNumber(value)}${blank}${value === 1 ? "seed" : "seeds"}`;
}

/** Seeds worked out from a weight: "about 1,240 seeds", to three significant figures. */
export function seedsAbout(value: number | null): string {
  if (value === null) return unknown;
  if (value < 1) return value === 0 ? `0${blank}seeds` : `less than 1${blank}seed`;
  const figure = value < 100 ? wholeNumber(value) : significant(value, 3);
  return `about ${figure}${blank}${figure === "1" ? "seed" : "seeds"}`;
}

/** A span of numbers with their unit behind: "1,100–1,400 seeds"; negative ends are joined by "to". */
export function span(low: number | null, high: number | null, unit = "", figures = 3): string {
  const behind = unit === "" ? "" : `${blank}${unit}`;
  if (low === null && high === null) return unknown;
  const shown = (value: number) =>
    Math.abs(value) < 10 ** figures ? plainNumber(value, 1) : significant(value, figures);
  if (low === null) return `at most ${shown(high as number)}${behind}`;
  if (high === null) return `at least ${shown(low)}${behind}`;
  const [from, to] = [shown(low), shown(high)];
  if (from === to) return `${from}${behind}`;
  return low < 0 ? `${from} to ${to}${behind}` : `${from}–${to}${behind}`;
}

/** A span of effective sizes, two significant figures at each end: "12–23". */
export function effectiveSizeSpan(low: number | null, high: number | null): string {
  if (low === null && high === null) return unknown;
  if (low === null) return `at most ${effectiveSize(high)}`;
  if (high === null) return `at least ${effectiveSize(low)}`;
  const [from, to] = [effectiveSize(low), effectiveSize(high)];
  return from === to ? from : `${from}–${to}`;
}

/** A probability for a sentence: "0.03", "below 0.001", "above 0.999"; to a thousandth near 0.05, on either side of which one speaks otherwise. */
export function probability(value: number | null): string {
  if (value === null) return unknown;
  if (value < 0.001) return value === 0 ? "0" : "below 0.001";
  if (value > 0.999) return value === 1 ? "1" : "above 0.999";
  const fine = value < 0.01 || (value > 0.045 && value < 0.055);
  return plainNumber(value, fine ? 3 : 2);
}

/** The size of a file or a disk: "840 bytes", "12 kB", "3.4 MB", "79 GB" (a kB is 1,000 bytes). */
export function bytesInWords(bytes: number): string {
  if (bytes < 1000) return withUnit(wholeNumber(bytes), bytes === 1 ? "byte" : "bytes");
  if (bytes < 999_500) return withUnit(wholeNumber(bytes / 1000), "kB");
  if (bytes < 999_500_000) return withUnit(plainNumber(bytes / 1_000_000, bytes < 99_950_000 ? 1 : 0), "MB");
  return withUnit(plainNumber(bytes / 1_000_000_000, bytes < 9_950_000_000 ? 1 : 0), "GB");
}
