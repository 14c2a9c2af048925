import type { Action } from "@/lib/access/permissions";
import { serverActions } from "@/lib/access/server-actions";

export interface Form {
  readonly file: string;
  readonly name: string;
  readonly action: Action;
}

/** What starts a program, signs in, says who may come in or brings files in is tried with those who do it (ways-in.test.ts); the rest by the owner. */
const withPeople = /^app\/(safe-keeping|sign-in|come-in|your-way-in|members|_session|bring-in)/;

const all: readonly Form[] = Object.entries(serverActions).flatMap(([file, functions]) =>
  Object.entries(functions).map(([name, action]) => ({ file, name, action })),
);

export const formsOfRecords = all.filter(({ file }) => !withPeople.test(file));
export const formsOfPeople = all.filter(({ file }) => withPeople.test(file));

export type Deed = (...given: unknown[]) => Promise<unknown>;

/** The names of what a function takes, without the mark of what it leaves unused. */
export function takenBy(deed: Deed): string[] {
  const [, inside = ""] = /\(([^)]*)\)/.exec(deed.toString()) ?? [];
  return inside.split(",").flatMap((name) => (name.trim() === "" ? [] : [name.trim().replace(/^_/, "")]));
}
