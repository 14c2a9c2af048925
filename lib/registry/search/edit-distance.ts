/**
 * How many letters must be put in, left out, changed or swapped with their neighbour to make one word of another; `most + 1` where it
 * takes more than `most`. Source: optimal string alignment distance (Damerau 1964; Wagner & Fischer 1974).
 */
export function editDistance(from: string, to: string, most: number): number {
  if (Math.abs(from.length - to.length) > most) return most + 1;
  let before: number[] = [];
  let above = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let row = 1; row <= from.length; row += 1) {
    const here = [row];
    let least = row;
    for (let column = 1; column <= to.length; column += 1) {
      const same = from[row - 1] === to[column - 1];
      let cost = Math.min(
        (above[column] ?? 0) + 1,
        (here[column - 1] ?? 0) + 1,
        (above[column - 1] ?? 0) + (same ? 0 : 1),
      );
      const swapped = row > 1 && column > 1 && from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1];
      if (swapped) cost = Math.min(cost, (before[column - 2] ?? 0) + 1);
      here.push(cost);
      least = Math.min(least, cost);
    }
    if (least > most) return most + 1;
    before = above;
    above = here;
  }
  return Math.min(above[to.length] ?? 0, most + 1);
}

/** How many slips a word may have and still be meant: none below 4 letters, one below 8, two from 8 on. */
export function slipsAllowed(word: string): number {
  return word.length < 4 ? 0 : word.length < 8 ? 1 : 2;
}

/** The names nearest to what was written, the nearest first, at most three. */
export function nearest(written: string, names: readonly string[], fold: (name: string) => string): string[] {
  const most = Math.max(1, slipsAllowed(written));
  return names
    .map((name) => {
      const key = fold(name);
      const within = key.includes(written) || written.includes(key);
      return { name, slips: within ? 0.5 : editDistance(written, key, most) };
    })
    .filter((each) => each.slips <= most)
    .sort((left, right) => left.slips - right.slips || (left.name < right.name ? -1 : 1))
    .slice(0, 3)
    .map((each) => each.name);
}
