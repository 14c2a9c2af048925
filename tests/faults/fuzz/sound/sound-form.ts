import type { Database } from "@/lib/db";
import type { Drawn } from "../drawn";

/** A form as its page sends it: what the page bound to it, and what a person typed or chose. */
export interface SoundForm {
  readonly bound?: readonly unknown[];
  readonly fields?: Readonly<Record<string, string>>;
  /** of a form that sends no texts: the whole of it */
  readonly given?: unknown;
}

export type SoundRecipe = (here: Here) => Promise<SoundForm>;

/** By file, by function; as the list of all forms. */
export type SoundRecipes = Readonly<Record<string, Readonly<Record<string, SoundRecipe>>>>;

/** What stands in the registry, asked as a page asks before it draws a form. `number` makes what is new unlike anything before. */
export class Here {
  constructor(
    readonly db: Database,
    readonly drawn: Drawn,
    readonly number: number,
  ) {}

  get read() {
    return this.db.read;
  }

  /** One of these, or none of them: for a field that may be left empty. */
  some(...words: readonly string[]): string {
    return this.drawn.one(["", ...words]);
  }

  one(words: readonly string[]): string {
    return this.drawn.one(words);
  }

  /** Of a correction, sometimes: what stood in its fields when it was opened; a field that is as it stood takes what others wrote meanwhile. */
  stood(texts: Readonly<Record<string, string>>): Record<string, string> {
    return this.drawn.chance(0.4) ? { stood: JSON.stringify(texts) } : {};
  }

  /** A name that nothing has yet. */
  fresh(stem: string): string {
    return `${stem} ${this.number}`;
  }

  async lot(number: string): Promise<string> {
    return (await this.read.lot.findFirstOrThrow({ where: { number } })).id;
  }

  async growOut(name: string): Promise<string> {
    return (await this.read.growOut.findFirstOrThrow({ where: { name } })).id;
  }

  async variety(name: string): Promise<string> {
    return (await this.read.variety.findFirstOrThrow({ where: { name } })).id;
  }

  async steward(name: string): Promise<string> {
    return (await this.read.person.findFirstOrThrow({ where: { name } })).stewardId;
  }
}
