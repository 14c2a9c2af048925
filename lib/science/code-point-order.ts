/** Order by Unicode code points, which is the order of UTF-8 bytes and of both databases; not that of UTF-16 units. */
export function compareCodePoints(one: string, other: string): number {
  const shorter = Math.min(one.length, other.length);
  for (let place = 0; place < shorter; place++) {
    const left = one.charCodeAt(place);
    const right = other.charCodeAt(place);
    if (left === right) continue;
    // A surrogate stands for a code point above all that one unit can hold.
    return (isSurrogate(left) ? left + 0x10000 : left) - (isSurrogate(right) ? right + 0x10000 : right);
  }
  return one.length - other.length;
}

function isSurrogate(unit: number): boolean {
  return unit >= 0xd800 && unit <= 0xdfff;
}
