import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { SettleFieldInput } from "@/lib/schemas/field/settle-field";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { settleSent } from "./settle-sent";
import { isWaiting, notTheirGrowOut, refusalsOf, type StoredRecord } from "./stored-record";
import { takeAgain, takingOf } from "./take-again";

/** A person looked at it and said that it is not to stand. */
export const setAside = "set-aside";

/** What may stand though a rule speaks against it, where a person says so; of the rest no row can be made as it is. */
const mayStand: ReadonlySet<string> = new Set([
  ...["not-yet", "before-sowing", "over", "unknown-steward", "plant-removed", "not-allowed", "waits", notTheirGrowOut],
  ...[
    "cannot-be",
    "not-looked",
    "more-rogued-than-stood",
    "fewer-left-than-gave-seed",
    "noted-already",
    "out-of-order",
  ],
]);
const ofTheDay: ReadonlySet<string> = new Set(["not-yet", "before-sowing", "over"]);

/** How a person may settle a record. */
export interface WaysToSettle {
  /** as it was recorded */
  readonly keep: boolean;
  /** on another day: the phone's calendar was wrong */
  readonly day: boolean;
}

/** The ways in which a stored record can be settled beside setting it aside. */
export function waysToSettle(row: Pick<StoredRecord, "state" | "refusals" | "kind">): WaysToSettle {
  const codes = refusalsOf(row).map(({ code }) => code);
  const keep = codes.every((code) => mayStand.has(code)) && !(isWaiting(row) && waitForOther.has(row.kind));
  return { keep, day: codes.some((code) => ofTheDay.has(code)) && codes.every((code) => mayStand.has(code)) };
}

/** Of these nothing can be made without what they wait for. */
const waitForOther: ReadonlySet<string> = new Set(["taken", "harvest", "photo", "undo"]);

/**
 * Settles records from the field that a person has looked at, all alike: they stand as they were recorded, or on the day that is right, or are set
 * aside with a reason. What was sent stays as it was sent. Refused: one that is settled already, and one that cannot stand so.
 */
export async function settleFieldRecords(
  db: Database,
  actor: Actor,
  ids: readonly string[],
  { how, on, why }: SettleFieldInput,
  now: Date,
): Promise<Outcome<Performed<{ settled: number }>>> {
  const rows = await db.read.fieldRecord.findMany({ where: { id: { in: [...ids] } } });
  const faults = rows.length === 0 ? [settledAlready("")] : rows.flatMap((row) => faultsOf(row, how));
  if (faults.length > 0) return refused(...faults.slice(0, 3));
  const said =
    rows.length === 1 ? `a ${rows[0]?.kind === "walk" ? "rogue pass" : rows[0]?.kind}` : `${rows.length} records`;
  const action = "correct-in-field" as const;
  if (how === "set aside") {
    return perform(
      db,
      actor,
      { action, title: `From the field: ${said} set aside`, reason: why },
      async (change, tx) => {
        const taking = takingOf(db, actor, now, change, tx);
        for (const row of rows) await settleSent(taking, row, { state: "set aside", code: setAside, words: why });
        change.touchNothing();
        return accepted({ settled: rows.length });
      },
    );
  }
  const stands = how === "day" && on !== null ? { judged: true, on } : { judged: false };
  const title = `From the field: ${said} ${how === "day" ? `put on ${on}` : "kept"}`;
  const done = await takeAgain(db, actor, ids, now, { action, title, reason: why, how: stands, words: why });
  return done.ok ? accepted({ ...done.value, value: { settled: done.value.value.taken } }) : done;
}

function faultsOf(row: StoredRecord, how: SettleFieldInput["how"]): Refusal[] {
  if (row.state !== "question") return [settledAlready(row.kind)];
  const ways = waysToSettle(row);
  if (how === "set aside" || (how === "keep" && ways.keep) || (how === "day" && ways.day)) return [];
  const needed = "set it aside, and enter at the desk what it tells";
  return [refusal("cannot-stand", ["how"], row.kind, "cannot stand so", needed)];
}

function settledAlready(kind: string): Refusal {
  return refusal("settled-already", ["how"], kind, "is settled already", "look at what came home again");
}
