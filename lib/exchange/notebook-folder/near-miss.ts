import { editDistance } from "@/lib/registry/search/edit-distance";

/** Longest names whose distance is worth working out. */
const LONGEST = 80;

/** Names among which a slip is looked up. */
export class NearNames {
  readonly #names: readonly { readonly name: string; readonly letters: string }[];

  constructor(names: Iterable<string>) {
    this.#names = [...names].map((name) => ({ name, letters: plainLetters(name) }));
  }

  /**
   * The name nearest to what was written, where it is near enough to be a slip: letter case, accents, blanks and hyphens
   * aside, at most one letter in four is wrong, one in a short name, three in any. The first of equals, or null.
   */
  nearest(written: string): string | null {
    const wanted = plainLetters(written);
    if (wanted === "" || wanted.length > LONGEST) return null;
    let best: string | null = null;
    let most = Math.max(1, Math.min(3, Math.floor(wanted.length / 4)));
    for (const { name, letters } of this.#names) {
      const slips = editDistance(wanted, letters, most);
      if (slips > most) continue;
      if (slips === 0) return name;
      best = name;
      most = slips - 1;
    }
    return best;
  }
}

export function nearMiss(written: string, names: Iterable<string>): string | null {
  return new NearNames(names).nearest(written);
}

function plainLetters(text: string): string {
  return text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[\s_-]+/g, " ")
    .trim();
}
