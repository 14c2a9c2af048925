import { offTypeReasons, pullReasons } from "@/lib/schemas/grow-outs/field-kinds";
import { inOrderOfDays, type PassOnRecord } from "./field-records";

/** One walk through the plants: a line for each reason why plants were pulled. */
export interface WalkOnRecord {
  readonly passes: readonly PassOnRecord[];
  readonly on: string | null;
  readonly stage: string | null;
  readonly timing: string | null;
  readonly looked: number | null;
  readonly pulled: number;
  readonly left: number | null;
}

/** Passes of one day, stage, timing and number looked at are one walk: the plants were looked at once. In the order of days. */
export function walksOf(passes: readonly PassOnRecord[]): WalkOnRecord[] {
  const walks = new Map<string, PassOnRecord[]>();
  for (const pass of inOrderOfDays(passes)) {
    const key = JSON.stringify([pass.on, pass.stage, pass.timing, pass.looked ?? pass.id]);
    walks.set(key, [...(walks.get(key) ?? []), pass]);
  }
  return [...walks.values()].flatMap((own) => {
    const [first] = own;
    if (!first) return [];
    const { on, stage, timing, looked } = first;
    const left = own.find((pass) => pass.left !== null)?.left ?? null;
    const pulled = own.reduce((sum, pass) => sum + pass.pulled, 0);
    return [{ passes: own, on, stage, timing, looked, pulled, left }];
  });
}

/** Off-types of a grow-out: those pulled as such, and those pulled for a reason in other words or none. */
export interface OffTypesPulled {
  /** plants looked at: the most that one walk looked at; null where nobody wrote it */
  readonly looked: number | null;
  readonly found: number;
  /** with those of which the reason does not tell */
  readonly foundAtMost: number;
}

/**
 * What the passes of a grow-out found. Plants are looked at again at each walk, so the plants looked at are those of the walk that looked
 * at most. Sick and weak plants are not off-types.
 */
export function offTypesPulled(passes: readonly PassOnRecord[]): OffTypesPulled {
  const lookedAt = walksOf(passes).flatMap((walk) => walk.looked ?? []);
  const sum = (of: (pass: PassOnRecord) => boolean) =>
    passes.filter(of).reduce((total, pass) => total + pass.pulled, 0);
  const among = (words: readonly string[], reason: string | null) => reason !== null && words.includes(reason);
  const found = sum((pass) => among(offTypeReasons, pass.reason));
  const unclear = sum((pass) => !among(pullReasons, pass.reason));
  return { looked: lookedAt.length === 0 ? null : Math.max(...lookedAt), found, foundAtMost: found + unclear };
}
