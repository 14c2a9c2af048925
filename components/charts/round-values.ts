/** Round values between two ends, at most about so many. */
export function roundValues(from: number, to: number, most: number): number[] {
  const rough = (to - from) / most;
  const size = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 5].find((each) => each * size >= rough) ?? 10) * size;
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, at) =>
    Number(((first + at) * step).toPrecision(12)),
  );
}
