import { IDBObjectStore } from "fake-indexeddb";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { waitingOf } from "@/lib/field/screen-state";
import { FieldStore } from "@/lib/field/store";
import { emptyMemory, given, growOutId, lookedAt, madeNewer, phone, walk } from "./phone";

beforeEach(emptyMemory);

describe("the phone's store", () => {
  it("gives each record its place among the records of the phone, from 1", async () => {
    const { store } = phone();
    const rows = [given(await store.append(walk(10))), given(await store.append(walk(20)))];
    const device = await store.device();
    expect(rows.map((row) => [row.sequence, row.record.sequence, row.record.deviceId])).toEqual([
      [1, 1, device.id],
      [2, 2, device.id],
    ]);
    expect((await store.unsent()).map(lookedAt)).toEqual([10, 20]);
  });

  it("gives no place twice where many taps come at once", async () => {
    const { store } = phone();
    await Promise.all(Array.from({ length: 40 }, (_, at) => store.append(walk(at))));
    const places = (await store.records(growOutId)).map((row) => row.sequence);
    expect(places).toEqual(Array.from({ length: 40 }, (_, at) => at + 1));
  });

  it("gives no place twice where two tabs record in turn, nor one of a record that has left the phone", async () => {
    const { store, name } = phone();
    const other = phone(name).store;
    for (const each of [store, other, other, store, other]) given(await each.append(walk(10)));
    const rows = await store.records();
    expect(rows.map((row) => row.sequence)).toEqual([1, 2, 3, 4, 5]);
    const now = "2026-08-01T13:00:00.000Z";
    await other.answered({ now, answers: rows.map(({ id }) => ({ id, fate: "taken", sentence: null })) });
    given(await other.append(walk(20)));
    const [sixth] = await other.unsent();
    await other.answered({ now, answers: [{ id: sixth?.id ?? "", fate: "taken", sentence: null }] });
    expect(await other.leaveBehind(growOutId)).toBe(true);
    // this tab still believes that four were given
    expect(given(await store.append(walk(30))).sequence).toBe(7);
  });

  it("has everything when the page is opened anew", async () => {
    const { store, name } = phone();
    await store.append(walk(10));
    const device = await store.device();
    store.close();
    const again = phone(name).store;
    expect((await again.records()).map(lookedAt)).toEqual([10]);
    expect(await again.device()).toEqual(device);
    expect(given(await again.append(walk(20))).sequence).toBe(2);
  });

  it("stores a record that is tried again once", async () => {
    const { store } = phone();
    const record = walk(10);
    const [first, second] = [given(await store.append(record)), given(await store.append(record))];
    expect(second).toEqual(first);
    expect(await store.records()).toHaveLength(1);
  });

  it("lets what the registry would not have be sent again, and be put away once it stands in a file, and keeps it on the phone", async () => {
    const { store, name } = phone();
    const [turnedDown, taken] = [walk(10), walk(20)];
    for (const each of [turnedDown, taken]) await store.append(each);
    const now = "2026-08-01T13:00:00.000Z";
    const turnDown = () =>
      store.answered({
        now,
        answers: [
          { id: turnedDown.id, fate: "refused", sentence: "Its grow-out is not in this registry." },
          { id: taken.id, fate: "taken", sentence: null },
        ],
      });
    await turnDown();
    await store.sendAgain([turnedDown.id, taken.id]);
    expect((await store.unsent()).map(lookedAt)).toEqual([10]);
    await turnDown();
    // in no file: it would be nowhere else
    await store.putAway([turnedDown.id], [], true);
    expect([waitingOf(await store.records()).refused, await store.leaveBehind(growOutId)]).toEqual([1, false]);
    await store.savedToFile([turnedDown.id, taken.id], [], now);
    // what the registry has is not put away
    await store.putAway([turnedDown.id, taken.id], [], true);
    expect((await store.records()).map((row) => row.putAway ?? false)).toEqual([true, false]);
    expect([waitingOf(await store.records()).refused, await store.leaveBehind(growOutId)]).toEqual([0, true]);
    const rows = await phone(name).store.records();
    expect(rows.map((row) => [lookedAt(row), row.state, row.savedAt])).toEqual([[10, "refused", now]]);
    await store.putAway([turnedDown.id], [], false);
    expect(waitingOf(await store.records()).refused).toBe(1);
  });

  it("marks only what an answer names, and keeps the registry's sentence", async () => {
    const { store } = phone();
    const [first, second, third] = [walk(10), walk(20), walk(30)];
    for (const each of [first, second, third]) await store.append(each);
    const now = "2026-08-01T13:00:00.000Z";
    const sentence = "The grow-out was over on that day; say whether the day is right.";
    const marked = await store.answered({
      now,
      answers: [
        { id: first.id, fate: "taken", sentence: null },
        { id: third.id, fate: "question", sentence },
        { id: "01976000-0000-7000-8000-00000000ffff", fate: "taken", sentence: null },
      ],
    });
    expect(marked).toBe(2);
    expect((await store.records()).map(({ state, sentence, answeredAt }) => [state, sentence, answeredAt])).toEqual([
      ["taken", null, now],
      ["unsent", null, null],
      ["question", sentence, now],
    ]);
    expect((await store.unsent()).map(lookedAt)).toEqual([20]);
  });

  it("opens once more where the connection to the memory was lost", async () => {
    const { store, name } = phone();
    await store.append(walk(10));
    // another tab makes the store newer, and this one has to let go
    await madeNewer(name);
    expect((await store.records()).map(lookedAt)).toEqual([10]);
    expect(given(await store.append(walk(20))).sequence).toBe(2);
  });

  it("tells an older page that a newer one has taken the store over", async () => {
    const told: string[] = [];
    const store = new FieldStore("two tabs", {
      blocked: () => told.push("blocked"),
      outdated: () => told.push("outdated"),
    });
    await store.append(walk(10));
    await madeNewer("two tabs");
    expect(told).toEqual(["outdated"]);
    expect((await store.records()).map(lookedAt)).toEqual([10]);
  });

  it("refuses with what to do where the phone's memory is full, and has lost nothing of what was there", async () => {
    const { store } = phone();
    await store.append(walk(10));
    // as browsers say it
    const full = vi.spyOn(IDBObjectStore.prototype, "add").mockImplementation(() => {
      throw new DOMException("Encountered full disk while committing", "QuotaExceededError");
    });
    const refused = await store.append(walk(20));
    full.mockRestore();
    expect(refused.ok ? [] : refused.refusals.map(({ code }) => code)).toEqual(["storage-full"]);
    expect(refused.ok ? "" : refused.refusals[0]?.sentence).toContain("make room on the phone, then tap again");
    expect((await store.records()).map(lookedAt)).toEqual([10]);
    expect(given(await store.append(walk(20))).sequence).toBe(2);
  });

  it("takes a grow-out off the phone only when all of it is in the registry", async () => {
    const { store } = phone();
    const record = walk(10);
    await store.append(record);
    expect(await store.leaveBehind(growOutId)).toBe(false);
    await store.answered({
      now: "2026-08-01T13:00:00.000Z",
      answers: [{ id: record.id, fate: "refused", sentence: "No." }],
    });
    expect(await store.leaveBehind(growOutId)).toBe(false);
    expect(await store.records()).toHaveLength(1);
    await store.answered({
      now: "2026-08-01T13:00:00.000Z",
      answers: [{ id: record.id, fate: "held", sentence: null }],
    });
    expect(await store.leaveBehind(growOutId)).toBe(true);
    expect(await store.records()).toEqual([]);
  });

  it("keeps a picture's bytes until the registry has it", async () => {
    const { store } = phone();
    const hash = "a".repeat(64);
    const photo = {
      hash,
      growOutId,
      bytes: new Blob(["x"]),
      takenAt: "2026-08-01T12:00:00.000Z",
      sent: 0,
      sentence: null,
    } as const;
    given(await store.keepPhoto(photo));
    given(await store.keepPhoto(photo));
    expect(await store.unsentPhotos()).toHaveLength(1);
    await store.photoAnswered(hash, "It is no picture.");
    expect(await store.unsentPhotos()).toHaveLength(1);
    await store.photoAnswered(hash, null);
    expect(await store.unsentPhotos()).toEqual([]);
    expect((await store.photo(hash))?.bytes).toBeNull();
  });

  it("goes on counting after the records have left the phone", async () => {
    const { store } = phone();
    const record = walk(10);
    await store.append(record);
    await store.answered({
      now: "2026-08-01T13:00:00.000Z",
      answers: [{ id: record.id, fate: "taken", sentence: null }],
    });
    await store.leaveBehind(growOutId);
    expect(given(await store.append(walk(20))).sequence).toBe(2);
  });
});
