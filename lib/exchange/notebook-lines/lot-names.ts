/** A name that none of `taken` has: the base, else the base with b, c, ... behind it. */
export function freeName(base: string, taken: ReadonlySet<string>): string {
  if (!taken.has(base)) return base;
  for (let step = 0; ; step += 1) {
    const name = `${base} ${lettersOf(step)}`;
    if (!taken.has(name)) return name;
  }
}

/** b, c, ... z, aa, ab, ... */
function lettersOf(step: number): string {
  const place = step + 1;
  return place < 26
    ? String.fromCharCode(97 + place)
    : `${lettersOf(Math.floor(place / 26) - 2)}${String.fromCharCode(97 + (place % 26))}`;
}
