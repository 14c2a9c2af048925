import { significant, withUnit } from "./numbers";

/**
 * A share (0..1) of foreign pollen as a percentage: at most two figures, for no more is known, and never below 0.01 %, for no model
 * reaches there. "0.045 %", "1.5 %", "below 0.01 %".
 */
export function foreignShare(share: number): string {
  if (share === 0) return withUnit("0", "%");
  if (share < 0.0001) return withUnit("below 0.01", "%");
  return withUnit(figure(share), "%");
}

/** From the low to the high end of such a share: "0.0090–0.22 %" reads "below 0.01 to 0.22 %". */
export function foreignShareSpan(low: number, high: number): string {
  if (high < 0.0001) return foreignShare(high);
  if (low < 0.0001) return withUnit(`below 0.01 to ${figure(high)}`, "%");
  const [from, to] = [figure(low), figure(high)];
  return withUnit(from === to ? from : `${from}–${to}`, "%");
}

function figure(share: number): string {
  const percent = share * 100;
  return percent >= 99.5
    ? "100"
    : significant(percent, 2)
        .replace(/(\.\d*?)0+$/, "$1")
        .replace(/\.$/, "");
}
