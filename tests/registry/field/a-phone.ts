import { uuidv7 } from "uuidv7";
import { type Actor, ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { receiveFieldRecords } from "@/lib/registry/field/receive-field-records";
import type { FieldBody, FieldKind, FieldRecordOf, PlantInField } from "@/lib/schemas/field/field-records";
import { granted } from "../../setup/registry";

/** The registry's clock in these tests. */
export const now = new Date("2026-08-20T18:00:00.000Z");

/** A plant as a phone first marks it. */
export function aPlant(name: string, place: Partial<Omit<PlantInField, "id" | "name">> = {}): PlantInField {
  return { id: uuidv7(), name, cell: null, row: null, position: null, ...place };
}

export const keep = (plant: PlantInField, more: Partial<FieldBody<"mark">> = {}): FieldBody<"mark"> => ({
  ...{ plant, tag: plant.name, intent: "keep", words: null, fate: null, replaces: null },
  ...more,
});

export const walked = (more: Partial<FieldBody<"walk">> = {}): FieldBody<"walk"> => ({
  ...{ stage: "leaf", timing: "before", looked: null, pulled: [], left: null, note: null },
  ...more,
});

export const counted = (plants: number, more: Partial<FieldBody<"count">> = {}): FieldBody<"count"> => ({
  ...{ stage: "standing", plants, males: null, thinnedBy: null, note: null },
  ...more,
});

/** A phone in a grow-out, that numbers what it records and knows nothing else. */
export class Phone {
  readonly device: { readonly id: string; readonly name: string };
  sequence = 0;

  constructor(
    readonly growOutId: string,
    name = "Reed",
    readonly stewardId: string | null = null,
  ) {
    this.device = { id: uuidv7(), name };
  }

  /** A record of 1 August 2026, noon, unless told. */
  makes<K extends FieldKind>(
    kind: K,
    body: FieldBody<K>,
    { on = "2026-08-01", recordedAt, id = uuidv7() }: { on?: string; recordedAt?: string; id?: string } = {},
  ): FieldRecordOf<K> {
    this.sequence += 1;
    return {
      ...{ id, deviceId: this.device.id, sequence: this.sequence, growOutId: this.growOutId },
      ...{ on, recordedAt: recordedAt ?? `${on}T12:00:00.000Z`, recordedOffset: 0, stewardId: this.stewardId },
      ...{ kind, body },
    };
  }

  /** Sends records, and gives the fate of each. */
  async sends(
    db: Database,
    records: readonly unknown[],
    {
      actor = ownerHere(),
      sentAt = now.toISOString(),
      unansweredFrom,
    }: { actor?: Actor; sentAt?: string | null; unansweredFrom?: number } = {},
  ): Promise<string[]> {
    const arrival = { device: this.device, sentAt, records, unansweredFrom };
    return granted(await receiveFieldRecords(db, actor, arrival, now)).answers.map(({ fate }) => fate);
  }
}

/** The sentences of the questions that nobody has answered, in the order in which they were asked. */
export async function openQuestions(db: Database): Promise<string[]> {
  const rows = await db.read.question.findMany({ where: { answeredAt: null }, orderBy: { id: "asc" } });
  return rows.map(({ sentence }) => sentence);
}
