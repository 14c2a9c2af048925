import { sameName } from "@/lib/registry/names/fold-name";
import { NearNames } from "./near-miss";

/** Looked up for a suggestion at most this often, so that a folder without its lots is answered at once. */
const MOST_SUGGESTIONS = 100;

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
    return name === null ? undefined : this.#bearers.get(sameName(name))?.bearer;
  }

  has(name: string): boolean {
    return this.#bearers.has(sameName(name));
  }

  /** The name as its bearer writes it. */
  spelled(name: string): string | undefined {
    return this.#bearers.get(sameName(name))?.name;
  }

  bearers(): Bearer[] {
    return [...this.#bearers.values()].map(({ bearer }) => bearer);
  }

  /** A name here that was probably meant. Asked once all names are in. */
  suggestion(name: string): string | null {
    const key = sameName(name);
    const before = this.#suggested.get(key);
    if (before !== undefined) return before;
    if (this.#suggested.size >= MOST_SUGGESTIONS) return null;
    this.#near ??= new NearNames([...this.#bearers.values()].map(({ name: candidate }) => candidate));
    const found = this.#near.nearest(key);
    this.#suggested.set(key, found);
    return found;
  }
}
