import { foldName } from "../names/fold-name";

/** Names that are free among those taken, each given once: the name itself, else with b, c, ... behind it. */
export class FreeNames {
  private readonly taken: Set<string>;

  constructor(taken: Iterable<string>) {
    this.taken = new Set([...taken].map(foldName));
  }

  next(base: string): { name: string; nameKey: string } {
    let name = base;
    for (let place = 2; this.taken.has(foldName(name)); place += 1) {
      name = place <= 26 ? `${base} ${String.fromCharCode(96 + place)}` : `${base} ${place}`;
    }
    this.taken.add(foldName(name));
    return { name, nameKey: foldName(name) };
  }

  /** A name that ends in a number: the first free one from `from` on. */
  numbered(stem: string, from: number): { name: string; nameKey: string } {
    let number = from;
    while (this.taken.has(foldName(`${stem}${number}`))) number += 1;
    return this.next(`${stem}${number}`);
  }
}
