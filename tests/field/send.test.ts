import { beforeEach, describe, expect, it } from "vitest";
import { type Posted, sendOutbox } from "@/lib/field/send";
import type { FateOfRecord, FieldDelivery } from "@/lib/schemas/field/field-delivery";
import type { FieldRecord } from "@/lib/schemas/field/field-records";
import { emptyMemory, phone, walk } from "./phone";

beforeEach(emptyMemory);

const now = "2026-08-01T12:00:00.000Z";
const clock = () => Date.parse(now);
const recordsOf = (delivery: FieldDelivery) => delivery.records as FieldRecord[];

function answer(ids: readonly string[], fate: FateOfRecord = "taken"): Posted {
  return { kind: "answered", answer: { now, answers: ids.map((id) => ({ id, fate, sentence: null })) } };
}

async function withRecords(many: number) {
  const { store, name } = phone();
  for (let at = 0; at < many; at += 1) await store.append(walk(at));
  return { store, name };
}

describe("sending what waits on the phone", () => {
  it("goes on in heaps of at most two hundred until nothing is left", async () => {
    const { store } = await withRecords(450);
    const heaps: number[] = [];
    const sent = await sendOutbox(
      store,
      async (delivery) => {
        heaps.push(delivery.records.length);
        return answer(recordsOf(delivery).map((record) => record.id));
      },
      clock,
    );
    expect(heaps).toEqual([200, 200, 50]);
    expect(sent).toEqual({ answered: 450, left: 0, stopped: null, words: null });
  });

  it("sends a heap again whose answer was lost, and marks only what an answer named", async () => {
    const { store } = await withRecords(3);
    const seen: string[] = [];
    let tries = 0;
    const post = async (delivery: FieldDelivery): Promise<Posted> => {
      tries += 1;
      seen.push(...recordsOf(delivery).map((record) => record.id));
      if (tries === 1) throw new TypeError("Failed to fetch");
      return answer([recordsOf(delivery)[0]?.id ?? ""]);
    };
    expect(await sendOutbox(store, post, clock)).toMatchObject({ answered: 0, left: 3, stopped: "unreachable" });
    expect(await sendOutbox(store, post, clock)).toMatchObject({ answered: 3, stopped: null });
    expect(seen.slice(0, 3)).toEqual(seen.slice(3, 6));
  });

  it("keeps everything where nobody is signed in any more, and remembers it", async () => {
    const { store } = await withRecords(2);
    expect(await sendOutbox(store, async () => ({ kind: "sign-in" }), clock)).toMatchObject({
      left: 2,
      stopped: "sign-in",
    });
    expect(await store.setting("signInAsked")).toBe(true);
    await sendOutbox(store, async (delivery) => answer(recordsOf(delivery).map(({ id }) => id)), clock);
    expect(await store.setting("signInAsked")).toBe(false);
    expect(await store.unsent()).toEqual([]);
  });

  it("keeps a refused record on the phone, with why", async () => {
    const { store } = await withRecords(1);
    const sentence = "This grow-out is of another registry.";
    await sendOutbox(
      store,
      async (delivery) => ({
        kind: "answered",
        answer: { now, answers: recordsOf(delivery).map(({ id }) => ({ id, fate: "refused", sentence })) },
      }),
      clock,
    );
    expect((await store.records()).map((row) => [row.state, row.sentence])).toEqual([["refused", sentence]]);
  });

  it("halves a heap that is too big, and one record that is too big holds up no other", async () => {
    const { store } = await withRecords(7);
    const [, , big] = await store.records();
    const sent = await sendOutbox(
      store,
      async (delivery) => {
        const ids = recordsOf(delivery).map(({ id }) => id);
        return ids.includes(big?.id ?? "") ? { kind: "too-big" } : answer(ids);
      },
      clock,
    );
    expect(sent).toEqual({ answered: 6, left: 1, stopped: "too-big", words: null });
    expect((await store.unsent()).map((row) => row.id)).toEqual([big?.id]);
  });

  it("says from which record on it has had no answer", async () => {
    const { store } = await withRecords(3);
    const [first, second] = await store.records();
    const from: (number | undefined)[] = [];
    const post = async (delivery: FieldDelivery): Promise<Posted> => {
      from.push(delivery.unansweredFrom);
      return answer([(from.length === 1 ? first : second)?.id ?? ""]);
    };
    await sendOutbox(store, post, clock);
    expect(from.slice(0, 2)).toEqual([1, 2]);
  });

  it("ends where an answer names nothing that was sent", async () => {
    const { store } = await withRecords(1);
    expect(await sendOutbox(store, async () => answer(["another"]), clock)).toMatchObject({
      left: 1,
      stopped: "no answer",
    });
  });

  it("says what the registry said where it could not take them", async () => {
    const { store } = await withRecords(1);
    const post = async (): Promise<Posted> => ({ kind: "fault", words: "The disk is full." });
    expect(await sendOutbox(store, post, clock)).toMatchObject({
      left: 1,
      stopped: "fault",
      words: "The disk is full.",
    });
  });

  it("remembers how far the phone's clock is from the registry's", async () => {
    const { store } = await withRecords(1);
    const anHourAhead = () => Date.parse(now) + 3_600_000;
    await sendOutbox(store, async (delivery) => answer(recordsOf(delivery).map(({ id }) => id)), anHourAhead);
    expect(await store.setting("clockAhead")).toBe(3_600_000);
  });
});
