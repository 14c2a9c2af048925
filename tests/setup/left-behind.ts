const left: (() => Promise<void> | void)[] = [];

/** Has something cleared away when the test file ends; what came last goes first. */
export function whenFileEnds(clearAway: () => Promise<void> | void): void {
  left.push(clearAway);
}

/** Clears away what the file that has just ended left behind. */
export async function clearAwayWhatIsLeft(): Promise<void> {
  for (const clearAway of left.splice(0).reverse()) await clearAway();
}
