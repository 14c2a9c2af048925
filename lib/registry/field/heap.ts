import { storageFaultOf } from "@/lib/db";
import type { FieldRecord } from "@/lib/schemas/field/field-records";
import { type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { questionOf } from "./field-questions";
import { settleSent } from "./settle-sent";
import {
  clockAheadOf,
  isWaiting,
  pictureErased,
  refusalsOf,
  refusalsStored,
  type StoredRecord,
  sentRecord,
  superseded,
  takenBack,
  waitForTurn,
  waitsFor,
} from "./stored-record";
import { takeRecord } from "./take-record";
import type { HowTaken, Taking } from "./taking";

/** A record that came, with the text that it came as. */
export interface Arrived {
  readonly record: FieldRecord;
  readonly body: string;
  /** what stands against it before it is looked at: whoever sends it may not record there */
  readonly against?: readonly Refusal[];
}

/** How records came. */
export interface Coming {
  /** minutes by which the phone's clock was ahead; null: about right, or not known */
  readonly clockAhead: number | null;
  /** what of the phone was recorded before and has not come: no record of it is taken before these */
  readonly missingBefore: (sequence: number) => boolean;
  /** records that the phone takes back in the same heap: nothing is made of them */
  readonly takenBack: ReadonlySet<string>;
}

/** What stands against a record may be gone once another came: numbers that could not be together. */
const maySettle: ReadonlySet<string> = new Set([
  "cannot-be",
  "more-rogued-than-stood",
  "fewer-left-than-gave-seed",
  "more-seed-than-pollen-parents",
  "noted-already",
  "out-of-order",
]);

/** What stands against a record of which there is nothing to decide. */
const asideAtOnce: ReadonlySet<string> = new Set([takenBack, superseded, pictureErased]);

/** Takes records one after the other inside one change set; what is taken may free others that are stored and not settled. */
export class Heap {
  /** how many were taken, by kind */
  readonly taken = new Map<string, number>();
  /** harvests that may be taken now: each in a change set of its own */
  readonly harvests = new Set<string>();
  private open: Map<string, StoredRecord> | null = null;

  constructor(
    private readonly taking: Taking,
    private readonly coming: Coming,
    /** the grow-outs and the phone whose unsettled records may be freed */
    private readonly about: { readonly growOutIds: readonly string[]; readonly deviceId: string },
  ) {}

  /** Takes a record that is not stored yet. */
  async arrive({ record, body, against: before }: Arrived, against = before): Promise<void> {
    const { change, ground, now } = this.taking;
    const judged = against ? refused<null>(...against) : await this.attempt(record);
    const state = stateOf(judged);
    const steward = record.stewardId !== null && (await ground.isSteward(record.stewardId)) ? record.stewardId : null;
    const row: StoredRecord = {
      ...{ id: record.id, deviceId: record.deviceId, sequence: record.sequence, growOutId: record.growOutId },
      ...{ kind: record.kind, body, recordedAt: record.recordedAt, recordedOffset: record.recordedOffset },
      ...{ arrivedAt: now.toISOString(), stewardId: steward, state, changeSetId: null },
      refusals: refusalsStored(judged.ok ? [] : judged.refusals, this.coming.clockAhead),
    };
    await change.create("FieldRecord", row);
    await this.after(row, record, judged);
  }

  /** Tries a record that is stored and not settled once more. */
  async again(
    row: StoredRecord,
    how: HowTaken = { judged: true },
    words = "Settled by what came later",
  ): Promise<Outcome<null>> {
    const record = sentRecord(row);
    const judged = await this.attempt(record, how);
    if (judged.ok) {
      await settleSent(this.taking, row, { state: "taken", words });
    } else {
      const refusals = refusalsStored(judged.refusals, clockAheadOf(row));
      if (refusals === row.refusals) return judged;
      await this.taking.change.update("FieldRecord", row.id, { state: stateOf(judged), refusals });
    }
    const stored = await this.taking.tx.fieldRecord.findUniqueOrThrow({ where: { id: row.id } });
    await this.after(stored, record, judged, isWaiting(row));
    return judged;
  }

  private async attempt(record: FieldRecord, how: HowTaken = { judged: true }): Promise<Outcome<null>> {
    if (how.judged && this.coming.missingBefore(record.sequence)) return refused(waitForTurn(record.sequence));
    if (this.coming.takenBack.has(record.id)) return refused(backAgain);
    try {
      const outcome = await this.taking.change.attempt(() => takeRecord(this.taking, record, how));
      if (!outcome.ok) this.forget(record);
      return outcome;
    } catch (error) {
      // A full disk stops the heap; a record that the tables will not have stops only itself.
      if (storageFaultOf(error, "") || !isRefusedByTable(error)) throw error;
      this.forget(record);
      const needed = "set it aside, and enter at the desk what it tells";
      return refused(refusal("not-storable", [], record.kind, "could not be entered as it is", needed));
    }
  }

  private forget(record: FieldRecord): void {
    this.taking.ground.forget(record.growOutId);
    this.open = null;
  }

  /** What follows of a record's fate: a question for a person; or others that it frees. */
  private async after(row: StoredRecord, record: FieldRecord, judged: Outcome<null>, isNew = true): Promise<void> {
    const { tx } = this.taking;
    if (row.state === "question") (await this.unsettled()).set(row.id, row);
    else this.open?.delete(row.id);
    if (!judged.ok && row.state === "question" && !isWaiting(row)) await this.ask(row, record, judged.refusals, isNew);
    if (judged.ok) this.taken.set(record.kind, (this.taken.get(record.kind) ?? 0) + 1);
    for (const other of await this.freedBy(record, judged.ok)) {
      const now = await tx.fieldRecord.findUniqueOrThrow({ where: { id: other } });
      if (now.state !== "question") continue;
      if (now.kind === "harvest") this.harvests.add(other);
      else await this.again(now);
    }
  }

  private async ask(
    row: StoredRecord,
    record: FieldRecord,
    refusals: readonly Refusal[],
    isNew: boolean,
  ): Promise<void> {
    const { change, ground, tx } = this.taking;
    if (!isNew && (await tx.question.count({ where: { fieldRecordId: row.id, answeredAt: null } })) > 0) return;
    const growOut = await ground.growOut(record.growOutId);
    await change.create("Question", questionOf(this.taking, row.id, record, growOut?.name ?? "", refusals));
  }

  /** Unsettled records that wait for this one, which is here now; and, once it is taken, those whose numbers may go together now. */
  private async freedBy(record: FieldRecord, taken: boolean): Promise<string[]> {
    const rows = [...(await this.unsettled()).values()].filter(
      (row) =>
        row.id !== record.id &&
        (waitsFor(row) === record.id ||
          (taken && row.growOutId === record.growOutId && refusalsOf(row).some(({ code }) => maySettle.has(code)))),
    );
    return rows.toSorted(inTheirOrder).map(({ id }) => id);
  }

  private async unsettled(): Promise<Map<string, StoredRecord>> {
    if (this.open === null) {
      const { growOutIds, deviceId } = this.about;
      const rows = await this.taking.tx.fieldRecord.findMany({
        where: { state: "question", OR: [{ growOutId: { in: [...growOutIds] } }, { deviceId }] },
      });
      this.open = new Map(rows.map((row) => [row.id, row]));
    }
    return this.open;
  }
}

/** One phone's records by their place among them; phones beside each other by nothing that a clock says. */
export function inTheirOrder(
  one: Pick<StoredRecord, "deviceId" | "sequence">,
  other: Pick<StoredRecord, "deviceId" | "sequence">,
): number {
  if (one.deviceId !== other.deviceId) return one.deviceId < other.deviceId ? -1 : 1;
  return one.sequence - other.sequence;
}

const backAgain: Refusal = {
  ...{ code: takenBack, path: [], given: null, needed: "" },
  sentence: "was taken back on the phone before it came",
};

function stateOf(judged: Outcome<null>): "taken" | "set aside" | "question" {
  if (judged.ok) return "taken";
  return judged.refusals.every(({ code }) => asideAtOnce.has(code)) ? "set aside" : "question";
}

function isRefusedByTable(error: unknown): boolean {
  return error instanceof Error && /constraint/i.test(error.message);
}
