import path from "node:path";
import type { Location } from "@/lib/db";

/** What the writing program is told to do. */
export interface Task {
  readonly folder: string;
  readonly seed: number;
  readonly most: number;
}

/** What it says on its output, a line each. */
export type Said =
  | { readonly is: "ready" | "done" }
  | { readonly is: "doing"; readonly what: string }
  | { readonly is: "refused"; readonly what: string; readonly sentence: string }
  | {
      readonly is: "acknowledged";
      readonly what: string;
      readonly changeSetId?: string;
      readonly revision?: number;
      readonly backup?: string;
      readonly sound?: boolean;
    };

export function locationOf(folder: string): Location {
  return { engine: "sqlite", url: path.join(folder, "registry.sqlite"), folder, demonstration: false };
}

/** Numbers of [0, 1) that are the same for the same seed (mulberry32: 32 bits of state, each step a mix of multiplications and shifts). */
export function numberStream(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** A notebook folder with a variety and some founder lots of its own, each with a ledger entry. */
export function folderOf(mark: string, lots: number): Map<string, Uint8Array> {
  const names = Array.from({ length: lots }, (_none, place) => `Lot ${mark}-${place}`);
  const text: Record<string, string> = {
    "varieties.csv": `variety,crop\nVariety ${mark},maize-field\n`,
    "lots.csv": `lot,variety,kind,year\n${names.map((name) => `${name},Variety ${mark},founder,2020\n`).join("")}`,
    "ledger.csv": `lot,date,kind,grams\n${names.map((name, place) => `${name},2020-10-05,received,${20 + (place % 7)}\n`).join("")}`,
  };
  return new Map(Object.entries(text).map(([name, body]) => [name, new TextEncoder().encode(body)]));
}

/** A folder to open: as a command line does, or as a server, which holds it until its next task; and how many entries are written there. */
export interface OpenTask {
  readonly folder: string;
  readonly as: "command" | "server";
  readonly writes: number;
}

export type OpenSaid =
  | { readonly opened: true; readonly applied: readonly string[]; readonly crops: number; readonly written: number }
  | { readonly opened: false; readonly said: string };
