import "fake-indexeddb/auto";
import fc from "fast-check";
import { uuidv7 } from "uuidv7";
import { expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { type Post, sendOutbox } from "@/lib/field/send";
import { FieldStore } from "@/lib/field/store";
import { receiveFieldRecords } from "@/lib/registry/field/receive-field-records";
import { defineTrait } from "@/lib/registry/traits/define-trait";
import type { FieldDelivery } from "@/lib/schemas/field/field-delivery";
import { aVariety } from "../registry/lots/lots-in-tests";
import { emptyRegistry, granted } from "../setup/registry";
import { asItStands } from "./field/as-it-stands";
import { type Deed, deeds, type Field, Hand } from "./field/two-phones";

/*
 * Two phones in the field, a registry, and a network between them that loses requests and answers, repeats, delays and so reorders, while the phones'
 * clocks are wrong: whatever it does, what stands in the end is what stands when each phone hands over all its records in their order.
 */

const owner = ownerHere();
/** The registry's clock. The season is long enough before it for clocks that are a little fast. */
const now = new Date("2026-09-01T12:00:00.000Z");
const noon = Date.parse("2026-08-01T12:00:00.000Z");
const minute = 60_000;

/** What the network does to a post. */
const fates = [
  ...["comes through", "request lost", "answer lost", "comes twice", "comes later"],
  ...["comes backwards", "odd ones come", "even ones come", "even ones come later"],
] as const;
type NetworkFate = (typeof fates)[number];

/** What of a heap comes when the network cuts it. */
function cut(delivery: FieldDelivery, fate: NetworkFate): FieldDelivery {
  const odd = fate === "odd ones come" ? 0 : fate.startsWith("even ones come") ? 1 : null;
  const records = delivery.records.filter((_record, place) => odd === null || place % 2 === odd);
  return { ...delivery, records: fate === "comes backwards" ? records.toReversed() : records };
}

type Move =
  | { readonly kind: "deed"; readonly phone: 0 | 1; readonly deed: Deed; readonly clockJumps: number }
  | { readonly kind: "send"; readonly phone: 0 | 1; readonly fates: readonly NetworkFate[] }
  | { readonly kind: "late one comes"; readonly which: number };

const phone = fc.constantFrom<0 | 1>(0, 1);
const deed = fc.record({
  what: fc.constantFrom(...deeds, "mark", "mark", "take seed", "take seed", "harvest", "harvest", "undo"),
  one: fc.nat(30),
  two: fc.nat(40),
});
const move: fc.Arbitrary<Move> = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({
      kind: fc.constant("deed" as const),
      phone,
      deed,
      clockJumps: fc.integer({ min: -90, max: 90 }),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      ...{ kind: fc.constant("send" as const), phone },
      fates: fc.array(fc.constantFrom(...fates), { minLength: 1, maxLength: 3 }),
    }),
  },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant("late one comes" as const), which: fc.nat(9) }) },
);
/** A clock may be a month behind or ahead of the true one, which makes some days lie in the future. */
const skew = fc.integer({ min: -45_000, max: 50_000 });
interface Schedule {
  readonly moves: readonly Move[];
  readonly skews: readonly [number, number];
}
const schedule: fc.Arbitrary<Schedule> = fc.record({
  moves: fc.array(move, { minLength: 8, maxLength: 26 }),
  skews: fc.tuple(skew, skew),
});

/** Two registries that are alike, with room for many schedules. */
async function twoRegistries() {
  const all = [await emptyRegistry(), await emptyRegistry()] as const;
  for (const db of all) await db.write.$executeRawUnsafe("PRAGMA synchronous = OFF");
  return all;
}

/** Three grow-outs with one trait, under the same ids in both. */
async function fieldIn(all: readonly Database[]): Promise<Field> {
  const ids = [uuidv7(), uuidv7(), uuidv7()] as const;
  for (const db of all) {
    const varietyId = (await db.read.variety.findFirst())?.id ?? (await aVariety(db, "Rushlight", "maize-field"));
    const days = { sown: "2026-05-01", sownFirst: "2026-05-01", sownLast: "2026-05-01" };
    await db.write.growOut.createMany({ data: ids.map((id) => ({ id, name: id, nameKey: id, varietyId, ...days })) });
  }
  return { both: ids[0], own: [ids[1], ids[2]], vigour: "" };
}

async function traitIn(all: readonly Database[]): Promise<string> {
  const [first, second] = all as [Database, Database];
  const varietyId = await aVariety(first, "Rushlight", "maize-field");
  const made = granted(
    await defineTrait(first, owner, varietyId, { scope: "all", name: "vigour", kind: "scale", steps: "" }),
  );
  const row = await first.read.trait.findUniqueOrThrow({ where: { id: made.value.traitId } });
  await second.write.trait.create({ data: row });
  return row.id;
}

const receive = async (db: Database, delivery: FieldDelivery) =>
  granted(await receiveFieldRecords(db, owner, delivery, now));

/** The network: what it does to the next posts is written down; afterwards it is good. */
class Network {
  readonly late: FieldDelivery[] = [];

  constructor(private readonly db: Database) {}

  post(next: readonly NetworkFate[]): Post {
    const left = [...next];
    return async (sent) => {
      // As over the network: a text.
      const fate = left.shift() ?? "comes through";
      const delivery = cut(JSON.parse(JSON.stringify(sent)) as FieldDelivery, fate);
      if (fate === "request lost") throw new Error("lost");
      if (fate.endsWith("later")) {
        this.late.push(delivery);
        throw new Error("timed out");
      }
      const answer = await receive(this.db, delivery);
      if (fate === "answer lost") throw new Error("lost");
      return { kind: "answered", answer: fate === "comes twice" ? await receive(this.db, delivery) : answer };
    };
  }

  async lateOneComes(which: number): Promise<void> {
    const [delivery] = this.late.splice(which % Math.max(1, this.late.length), 1);
    if (delivery) await receive(this.db, delivery);
  }
}

const numRuns = 500;
let stores = 0;

/** Runs a schedule through the one registry, and the same records in their order through the other. Answers what stands in each. */
async function run([db, plain]: readonly [Database, Database], field: Field, { moves, skews }: Schedule) {
  stores += 1;
  const phones = ([0, 1] as const).map((which) => ({
    ...{ hand: new Hand(which, field), store: new FieldStore(`schedule ${stores} ${which}`) },
    clock: noon + (skews[which] ?? 0) * minute,
  }));
  const network = new Network(db);
  for (const each of moves) {
    if (each.kind === "late one comes") {
      await network.lateOneComes(each.which);
      continue;
    }
    const own = phones[each.phone];
    if (!own) continue;
    if (each.kind === "send") {
      await sendOutbox(own.store, network.post(each.fates), () => own.clock);
      continue;
    }
    own.clock += each.clockJumps * minute;
    const record = own.hand.does(each.deed, { at: own.clock, offset: 120 });
    if (record) granted(await own.store.append(record));
  }
  for (const { store, clock } of phones) {
    const sent = await sendOutbox(store, network.post([]), () => clock);
    expect(sent.left).toBe(0);
  }
  while (network.late.length > 0) await network.lateOneComes(network.late.length - 1);
  for (const { store, clock } of phones) {
    const device = await store.device();
    const records = (await store.records()).map((row) => row.record);
    await receive(plain, { device, sentAt: new Date(clock).toISOString(), unansweredFrom: 1, records });
    store.close();
  }
  const ids = [field.both, ...field.own];
  return { is: await asItStands(db, ids), right: await asItStands(plain, ids) };
}

test("five hundred schedules of two phones and a bad network end in the same right registry", async () => {
  let all = await twoRegistries();
  let vigour = await traitIn(all);
  let runs = 0;
  const seen: Record<string, number> = {};
  const property = fc.asyncProperty(schedule, async (each) => {
    runs += 1;
    if (runs % 125 === 0) {
      all = await twoRegistries();
      vigour = await traitIn(all);
    }
    const { is, right } = await run(all, { ...(await fieldIn(all)), vigour }, each);
    expect(is).toEqual(right);
    for (const [what, rows] of Object.entries(right)) seen[what] = (seen[what] ?? 0) + rows.length;
    for (const row of right.records ?? []) {
      const { state, waits } = JSON.parse(row) as { state: string; waits: boolean };
      const stand = waits ? "waiting" : state;
      seen[stand] = (seen[stand] ?? 0) + 1;
    }
  });
  await fc.assert(property, { numRuns, seed: 20261127, endOnFailure: true });
  // The schedules are of use only where all this comes about in them.
  const rare = ["marks", "scores", "counts", "passes", "flowering", "harvests", "questions"];
  for (const what of [...rare, "waiting", "question", "set aside"])
    expect(seen[what] ?? 0, what).toBeGreaterThan(numRuns / 50);
}, 600_000);
