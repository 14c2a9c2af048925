import type { Outcome } from "@/lib/science/outcome";

/** What the thread is asked: a calculation by its name, with its input. */
export interface Asked {
  readonly job: number;
  readonly name: string;
  readonly input: unknown;
}

/** What the thread tells: how far it is (done of so many), or the answer. */
export type Told =
  | { readonly job: number; readonly done: number; readonly of: number }
  | { readonly job: number; readonly answer: Outcome<object> };
