import type { Actor } from "@/lib/access/actor";
import { may } from "@/lib/access/permissions";
import type { Database, Transaction } from "@/lib/db";
import { type FieldAnswer, fieldRecord } from "@/lib/schemas/field/field-delivery";
import type { FieldRecord } from "@/lib/schemas/field/field-records";
import { accepted, type Outcome, type Refusal } from "@/lib/science/outcome";
import { perform } from "../change-set/perform";
import { type Arrived, type Coming, Heap } from "./heap";
import { keepOtherContent } from "./other-content";
import {
  fateOf,
  isWaiting,
  notTheirGrowOut,
  refusalsOf,
  type StoredRecord,
  sameContent,
  sentRecord,
  waits,
  waitsFor,
} from "./stored-record";
import { takingOf } from "./take-again";
import type { Taking } from "./taking";
import { withoutErasedWords } from "./without-erased-words";

/** Records of one phone as they came, over the network or in a file. */
export interface FieldArrival {
  readonly device: { readonly id: string; readonly name: string };
  /** the phone's clock as it sent them; null: they came in a file */
  readonly sentAt: string | null;
  readonly unansweredFrom?: number | undefined;
  readonly records: readonly unknown[];
}

/** So many minutes a phone's clock may be off before it is told. */
const CLOCK_MINUTES = 5;

/**
 * Takes in what a phone recorded, each record once, however often and in whatever order it comes. A record is stored as it was sent; what it tells is
 * entered by the rules of the registry, in the order in which its phone made it. What breaks a rule is stored and becomes a question for a person;
 * what depends on something that has not come waits for it; what whoever sends it may not record is asked of whose it is. Nothing that stands is written
 * over. Refused as a whole: an actor who may not record in the field, and storage that will not take it. Of a single record the answer says refused where
 * it is none of this registry's: the phone keeps it.
 *
 * @param now the registry's clock
 */
export async function receiveFieldRecords(
  db: Database,
  actor: Actor,
  sent: FieldArrival,
  now: Date,
): Promise<Outcome<FieldAnswer>> {
  const allowed = may(actor, "record-in-field");
  if (!allowed.ok) return allowed;
  const arrival = { ...sent, records: await withoutErasedWords(db, sent.records) };
  const { arrived, refusals } = await looked(db, actor, arrival);
  const clockAhead = clockAheadAt(arrival, now);
  const told = new Set<string>();
  const segments = await segmentsOf(db.whole ?? db, arrival, arrived);
  for (const { records, again } of segments) {
    const taken = await takeSegment(db, actor, { arrival, arrived, clockAhead, now }, records, again, told);
    if (!taken.ok) return taken;
    for (const [id, sentence] of taken.value) refusals.set(id, sentence);
  }
  return accepted(await answerOf(db, arrival, now, refusals, told));
}

/** The records that can be taken, in the order of their phone, and why the others cannot. */
async function looked(db: Database, actor: Actor, { device, records }: FieldArrival) {
  const refusals = new Map<string, string>();
  const arrived: Arrived[] = [];
  const standings = new Map<string, Standing>();
  for (const sent of records) {
    const read = fieldRecord.safeParse(sent);
    const id = idOf(sent);
    if (!read.success) {
      const [issue] = read.error.issues;
      const where = issue && issue.path.length > 0 ? ` (${issue.path.join(".")})` : "";
      refusals.set(
        id,
        `This record cannot be read${where}. It stays on the phone: bring it home in a file, or by a newer app.`,
      );
      continue;
    }
    const record = read.data as FieldRecord;
    if (record.deviceId !== device.id) {
      refusals.set(id, "This record was made on another phone, and only that one can bring it.");
      continue;
    }
    const { growOutId } = record;
    const standing = standings.get(growOutId) ?? (await standingIn(db, actor, growOutId));
    standings.set(growOutId, standing);
    if (standing === "not here")
      refusals.set(
        id,
        "Its grow-out is not in this registry, or no longer yours to see. The record stays on the phone.",
      );
    else
      arrived.push({
        record,
        body: JSON.stringify(sent),
        ...(standing === "own" ? {} : { against: [notYours(actor)] }),
      });
  }
  return { arrived: arrived.toSorted((one, other) => one.record.sequence - other.record.sequence), refusals };
}

function idOf(sent: unknown): string {
  return typeof sent === "object" && sent !== null && "id" in sent ? String(sent.id) : "";
}

/** Whether a grow-out is one that the actor records in, another's that the actor sees, or none that is here for the actor. */
type Standing = "own" | "another's" | "not here";

async function standingIn(db: Database, { role, stewardId, growOutIds }: Actor, growOutId: string): Promise<Standing> {
  const growOut = await db.read.growOut.findUnique({ where: { id: growOutId }, select: { stewardId: true } });
  if (!growOut) return "not here";
  if (role === "owner") return "own";
  const own =
    role === "helper" ? growOutIds.includes(growOutId) : stewardId !== null && growOut.stewardId === stewardId;
  return own ? "own" : "another's";
}

function notYours({ name }: Actor): Refusal {
  const sentence = `${name}, who recorded it, does not record in this grow-out; whose it is may say that it stands`;
  return { code: notTheirGrowOut, path: ["growOutId"], given: name, needed: "", sentence };
}

function clockAheadAt({ sentAt }: FieldArrival, now: Date): number | null {
  if (sentAt === null) return null;
  const minutes = Math.round((Date.parse(sentAt) - now.getTime()) / 60_000);
  return Math.abs(minutes) >= CLOCK_MINUTES ? minutes : null;
}

interface Segment {
  readonly records: readonly Arrived[];
  /** ids of stored records that are tried again in their turn */
  readonly again: ReadonlySet<string>;
}

/** A harvest, and the taking back of one, is a change set of its own: so that it can be taken back as it was entered. */
async function segmentsOf(
  { read }: Database,
  { device }: FieldArrival,
  arrived: readonly Arrived[],
): Promise<Segment[]> {
  const ids = arrived.map(({ record }) => record.id);
  const stored = await read.fieldRecord.findMany({ where: { deviceId: device.id, state: "question" } });
  const turn = stored.filter((row) => isWaiting(row) && waitsFor(row) === null);
  const waiting = turn
    .filter(({ id }) => !ids.includes(id))
    .map((row) => ({ record: sentRecord(row), body: row.body }));
  const again = new Set(turn.map(({ id }) => id));
  const all = [...arrived, ...waiting].toSorted((one, other) => one.record.sequence - other.record.sequence);
  const kinds = new Map(all.map(({ record }) => [record.id, record.kind as string]));
  const undone = all.flatMap(({ record }) => (record.kind === "undo" ? [record.body.of] : []));
  for (const { id, kind } of await read.fieldRecord.findMany({
    where: { id: { in: undone } },
    select: { id: true, kind: true },
  }))
    kinds.set(id, kind);
  const alone = ({ record }: Arrived) =>
    record.kind === "harvest" || (record.kind === "undo" && kinds.get(record.body.of) === "harvest");
  const segments: { records: Arrived[]; again: ReadonlySet<string>; alone: boolean }[] = [];
  for (const each of all) {
    const last = segments.at(-1);
    if (last && !last.alone && !alone(each)) last.records.push(each);
    else segments.push({ records: [each], again, alone: alone(each) });
  }
  return segments;
}

interface Delivered {
  readonly arrival: FieldArrival;
  readonly arrived: readonly Arrived[];
  readonly clockAhead: number | null;
  readonly now: Date;
}

/** Takes a run of records in one change set. Where one is not the actor's to write, the others are taken without it. Answers ids that were refused. */
async function takeSegment(
  db: Database,
  actor: Actor,
  delivered: Delivered,
  records: readonly Arrived[],
  again: ReadonlySet<string>,
  told: Set<string>,
): Promise<Outcome<ReadonlyMap<string, string>>> {
  const { arrival } = delivered;
  const title = `From the phone ${arrival.device.name}`;
  const fresh = new Set<string>();
  const done = await perform(db, actor, { action: "record-in-field", title }, async (change, tx) => {
    const taking = takingOf(db, actor, delivered.now, change, tx);
    const heap = new Heap(taking, await comingOf(tx, delivered), aboutOf(records, arrival));
    for (const each of records) {
      const stored = await tx.fieldRecord.findUnique({ where: { id: each.record.id } });
      if (!stored) {
        await keepDevice(taking, arrival);
        await heap.arrive(each);
        fresh.add(each.record.id);
      } else if (!sameContent(JSON.parse(stored.body), JSON.parse(each.body))) {
        await keepOtherContent(taking, each, arrival);
      } else if (again.has(stored.id) || stillOpen(stored)) await heap.again(stored);
    }
    await titled(taking, heap, title, records);
    return accepted(heap.harvests);
  });
  if (done.ok) {
    for (const id of fresh) told.add(id);
    return freed(db, actor, delivered, done.value.value, told);
  }
  if (!done.refusals.every(({ code }) => notTheirs.has(code))) return done;
  if (records.length > 1) {
    const refusals = new Map<string, string>();
    for (const each of records) {
      const one = await takeSegment(db, actor, delivered, [each], again, told);
      if (!one.ok) return one;
      for (const [id, sentence] of one.value) refusals.set(id, sentence);
    }
    return accepted(refusals);
  }
  return asQuestion(db, actor, delivered, records, done.refusals, told);
}

const notTheirs: ReadonlySet<string> = new Set(["not-yours", "cannot-be-used", "not-allowed"]);

/** Stored for a person who may write what this actor may not. */
async function asQuestion(
  db: Database,
  actor: Actor,
  delivered: Delivered,
  records: readonly Arrived[],
  against: readonly Refusal[],
  told: Set<string>,
): Promise<Outcome<ReadonlyMap<string, string>>> {
  const { arrival } = delivered;
  const done = await perform(
    db,
    actor,
    { action: "record-in-field", title: `From the phone ${arrival.device.name}` },
    async (change, tx) => {
      const taking = takingOf(db, actor, delivered.now, change, tx);
      const heap = new Heap(taking, await comingOf(tx, delivered), aboutOf(records, arrival));
      await keepDevice(taking, arrival);
      for (const each of records) {
        if (!(await tx.fieldRecord.findUnique({ where: { id: each.record.id } }))) await heap.arrive(each, against);
      }
      change.touchNothing();
      return accepted(null);
    },
  );
  if (done.ok) {
    for (const { record } of records) told.add(record.id);
    return accepted(new Map());
  }
  if (!done.refusals.every(({ code }) => notTheirs.has(code))) return done;
  return accepted(
    new Map(records.map(({ record }) => [record.id, done.refusals.map(({ sentence }) => sentence).join("; ")])),
  );
}

/** Harvests that what came has freed, each in a change set of its own. */
async function freed(
  db: Database,
  actor: Actor,
  delivered: Delivered,
  ids: ReadonlySet<string>,
  told: Set<string>,
): Promise<Outcome<ReadonlyMap<string, string>>> {
  for (const id of ids) {
    const stored = await (db.whole ?? db).read.fieldRecord.findUnique({ where: { id } });
    if (stored?.state !== "question") continue;
    const each = { record: sentRecord(stored), body: stored.body };
    const done = await takeSegment(db, actor, delivered, [each], new Set([id]), told);
    if (!done.ok) return done;
  }
  return accepted(new Map());
}

/** A record that comes once more, and that other records may have freed since. */
function stillOpen(stored: StoredRecord): boolean {
  return isWaiting(stored) && waitsFor(stored) !== null;
}

function aboutOf(records: readonly Arrived[], { device }: FieldArrival) {
  return { growOutIds: [...new Set(records.map(({ record }) => record.growOutId))], deviceId: device.id };
}

const takenBackUnmade: ReadonlySet<string> = new Set(["mark", "score", "photo"]);

async function comingOf(tx: Transaction, { arrival, arrived, clockAhead }: Delivered): Promise<Coming> {
  const { unansweredFrom: from, device, records } = arrival;
  const named = new Set(arrived.flatMap(({ record }) => (record.kind === "undo" ? [record.body.of] : [])));
  // Of a tap that was taken back at once nothing is made. What others are judged by is entered and taken back in its turn.
  const undone = arrived.flatMap(({ record: { id, kind } }) =>
    named.has(id) && takenBackUnmade.has(kind) ? [id] : [],
  );
  const coming = { clockAhead, takenBack: new Set(undone) };
  if (from === undefined) return { ...coming, missingBefore: () => false };
  const stored = await tx.fieldRecord.findMany({
    where: { deviceId: device.id, sequence: { gte: from } },
    select: { sequence: true },
  });
  const here = new Set([...stored.map(({ sequence }) => sequence), ...records.map(sequenceOf)]);
  let upTo = from;
  while (here.has(upTo)) upTo += 1;
  return { ...coming, missingBefore: (sequence) => sequence > upTo };
}

function sequenceOf(sent: unknown): unknown {
  return typeof sent === "object" && sent !== null && "sequence" in sent ? sent.sequence : null;
}

/** Notes the phone, and when it was heard. */
async function keepDevice({ change, tx, actor, now }: Taking, { device }: FieldArrival): Promise<void> {
  const known = await tx.fieldDevice.findUnique({ where: { id: device.id } });
  const at = now.toISOString();
  if (known) await change.update("FieldDevice", device.id, { name: device.name, lastHeardAt: at });
  else
    await change.create("FieldDevice", {
      ...{ id: device.id, name: device.name, stewardId: actor.stewardId },
      ...{ firstHeardAt: at, lastHeardAt: at },
    });
}

/** "Grow-out Mill 2026, from the phone Ada: 12 marks, 1 rogue pass". */
async function titled(
  { change, ground }: Taking,
  heap: Heap,
  title: string,
  records: readonly Arrived[],
): Promise<void> {
  const names = new Set<string>();
  for (const { record } of records) names.add((await ground.growOut(record.growOutId))?.name ?? "");
  const [only] = names;
  const said = [...heap.taken].map(([kind, count]) => `${count} ${kindsInWords[kind]?.[count === 1 ? 0 : 1] ?? kind}`);
  const where = names.size === 1 ? `Grow-out ${only}, from` : "From";
  // A harvest says more in its own words.
  if (change.title === null)
    change.title = `${where}${title.slice("From".length)}: ${said.length > 0 ? said.join(", ") : "stored, nothing entered yet"}`;
  if (heap.taken.size === 0) change.touchNothing();
}

const kindsInWords: Readonly<Record<string, readonly [string, string]>> = {
  mark: ["mark", "marks"],
  score: ["score", "scores"],
  walk: ["rogue pass", "rogue passes"],
  count: ["count", "counts"],
  flowering: ["flowering note", "flowering notes"],
  photo: ["picture", "pictures"],
  harvest: ["harvest", "harvests"],
  undo: ["taken back", "taken back"],
};

/** What became of each, as it now stands. */
async function answerOf(
  db: Database,
  { records }: FieldArrival,
  now: Date,
  refusals: ReadonlyMap<string, string>,
  told: ReadonlySet<string>,
): Promise<FieldAnswer> {
  const ids = [...new Set(records.map(idOf))];
  const stored = new Map(
    (await (db.whole ?? db).read.fieldRecord.findMany({ where: { id: { in: ids } } })).map((row) => [row.id, row]),
  );
  const sent = new Map(records.map((each) => [idOf(each), each]));
  const answers = ids.map((id) => {
    const row = stored.get(id);
    if (!row) return { id, fate: "refused" as const, sentence: refusals.get(id) ?? "This record could not be stored." };
    if (!sameContent(JSON.parse(row.body), sent.get(id)))
      return {
        id,
        fate: "question" as const,
        sentence: "Another record came under the same id; both are kept for a person to settle.",
      };
    const [first] = refusalsOf(row);
    return { id, fate: fateOf(row, told.has(id)), sentence: first ? sentenceOf(first) : null };
  });
  return { now: now.toISOString(), answers };
}

function sentenceOf({ code, sentence }: Refusal): string {
  return code === waits ? `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.` : `${sentence}.`;
}
