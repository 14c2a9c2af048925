import { sameName } from "@/lib/registry/names/fold-name";
import { NearNames } from "./near-miss";

/** At most this many names are compared for suggestions, so that a folder without half its lots is answered at once. */
const MOST_COMPARED = 400_000;

/** The names of one kind of record, each with what bears it. */
export class NameIndex<Bearer> {
  readonly #bearers = new Map<string, { name: string; bearer: Bearer }>();
  readonly #suggested = new Map<string, string | null>();
  #near: NearNames | null = null;

  /** False where the name is taken: then nothing changes. */
  add(name: string, bearer: Bearer): boolean {
    const key = sameName(name);
    if (this.#bearers.has(key)) return false;
    this.#bearers.set(key, { name, bearer });
    return true;
  }

  get(name: string | null): Bearer | undefined {
    return name === null ? undefined : this.#find(name)?.bearer;
  }

  has(name: string): boolean {
    return this.#find(name) !== undefined;
  }

  /** The name as its bearer writes it. */
  spelled(name: string): string | undefined {
    return this.#find(name)?.name;
  }

  /** Most names are written as they are matched. */
  #find(name: string): { name: string; bearer: Bearer } | undefined {
    return this.#bearers.get(name) ?? this.#bearers.get(sameName(name));
  }

  bearers(): Bearer[] {
    return [...this.#bearers.values()].map(({ bearer }) => bearer);
  }

  /** A name here that was probably meant. Asked once all names are in. */
  suggestion(name: string): string | null {
    const key = sameName(name);
    const before = this.#suggested.get(key);
    if (before !== undefined) return before;
    if (this.#suggested.size * this.#bearers.size > MOST_COMPARED) return null;
    this.#near ??= new NearNames([...this.#bearers.values()].map(({ name: candidate }) => candidate));
    const found = this.#near.nearest(key);
    this.#suggested.set(key, found);
    return found;
  }
}
