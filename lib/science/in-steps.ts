/** Long work that lays itself down now and then, so that whoever asked for it can let others go first. */
export type Steps<T> = Generator<undefined, T, undefined>;

/** All of it at one go. */
export function atOnce<T>(steps: Steps<T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** Items that are worked through before the work lays itself down: some milliseconds of the dearest. */
export const ITEMS_A_STEP = 200;

/** `items.map(of)`, laid down now and then. */
export function* eachInSteps<Item, Made>(
  items: readonly Item[],
  of: (item: Item, place: number) => Made,
): Steps<Made[]> {
  const made: Made[] = [];
  // By place: an iterator's pairs, thousands of them, have to be cleared away.
  for (let place = 0; place < items.length; place += 1) {
    if (place % ITEMS_A_STEP === ITEMS_A_STEP - 1) yield;
    made.push(of(items[place] as Item, place));
  }
  return made;
}
