import { IDBObjectStore } from "fake-indexeddb";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { Phone } from "@/lib/field/phone";
import type { FieldDelivery } from "@/lib/schemas/field/field-delivery";
import type { FieldRecord } from "@/lib/schemas/field/field-records";
import { emptyMemory, growOutId, phone } from "./phone";

beforeEach(emptyMemory);
afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

const now = "2026-08-01T12:00:00.000Z";

/** A registry that answers each post with the next of these; the last for ever. */
function registry(...answers: ((delivery: FieldDelivery) => Response)[]): FieldDelivery[] {
  const posted: FieldDelivery[] = [];
  vi.stubGlobal("fetch", async (address: string, { body }: { body: string }) => {
    if (address !== "/field/records") return new Response("", { status: 404 });
    posted.push(JSON.parse(body));
    const answer = answers[Math.min(posted.length, answers.length) - 1];
    const last = posted.at(-1);
    if (!answer || !last) throw new TypeError("Failed to fetch");
    return answer(last);
  });
  return posted;
}

const takes = ({ records }: FieldDelivery) =>
  Response.json({
    now,
    answers: (records as FieldRecord[]).map(({ id }) => ({ id, fate: "taken", sentence: null })),
  });

async function openPhone() {
  const model = new Phone(phone().store);
  await model.open();
  return model;
}

const count = { stage: "standing", plants: 40, males: null, thinnedBy: null, note: null } as const;

describe("this phone", () => {
  it("stores what was done, offers to take it back, and sends it by itself a moment later", async () => {
    const posted = registry(takes);
    const model = await openPhone();
    const kept = await model.record(growOutId, "count", count, "40 standing");
    expect(model.now().last).toMatchObject({ id: kept?.id, words: "40 standing" });
    expect(model.now().rows.map((row) => row.state)).toEqual(["unsent"]);
    await vi.waitFor(() => expect(model.now().rows.map((row) => row.state)).toEqual(["taken"]), { timeout: 5000 });
    expect(posted).toHaveLength(1);
    await model.undo(growOutId, kept?.id ?? "");
    expect(model.now().last).toBeNull();
    expect(model.now().rows.map((row) => row.record.kind)).toEqual(["count", "undo"]);
  });

  it("shows nothing as done that could not be stored, and says why", async () => {
    registry(takes);
    const model = await openPhone();
    const full = vi.spyOn(IDBObjectStore.prototype, "add").mockImplementation(() => {
      throw new DOMException("full", "QuotaExceededError");
    });
    expect(await model.record(growOutId, "count", count, "40 standing")).toBeNull();
    full.mockRestore();
    expect(model.now()).toMatchObject({ rows: [], last: null, notStored: { code: "storage-full" } });
    await model.record(growOutId, "count", count, "40 standing");
    expect(model.now().notStored).toBeNull();
  });

  it("keeps a picture that the registry would not have for good, says why, and does not send it each time", async () => {
    const tried: string[] = [];
    let full = true;
    vi.stubGlobal("fetch", async (address: string, { body }: { body: string }) => {
      if (address === "/field/records") return takes(JSON.parse(body));
      const hash = address.slice(-64);
      tried.push(hash[0] ?? "");
      if (hash.startsWith("b") && full) return Response.json({ refused: "The disk is full." }, { status: 507 });
      if (hash.startsWith("b")) return Response.json({});
      return Response.json({ refused: "This is no picture." }, { status: 422 });
    });
    const model = await openPhone();
    const plant = { id: "01990000-0000-7000-8000-000000000001", name: "7", cell: null, row: null, position: null };
    for (const letter of ["a", "b"])
      await model.keepPhoto(
        growOutId,
        plant,
        { hash: letter.repeat(64), bytes: new Blob(["x"]) } as never,
        "a picture",
      );
    await model.send();
    const whyNot = () => model.now().photosRefused.map(({ sentence }) => sentence);
    expect(whyNot()).toEqual(["This is no picture.", "The disk is full."]);
    full = false;
    await model.send();
    expect(tried).toEqual(["a", "b", "b"]);
    expect([model.now().photosWaiting, whyNot()]).toEqual([1, ["This is no picture."]]);
  });

  it("keeps all where the sign-in has run out, and sends it after the next one", async () => {
    registry(() => new Response("You are not signed in (any more).", { status: 401 }), takes);
    const model = await openPhone();
    await model.record(growOutId, "count", count, "40 standing");
    await model.send();
    expect(model.now()).toMatchObject({ signInAsked: true, sent: { stopped: "sign-in", left: 1 } });
    await model.send();
    expect(model.now()).toMatchObject({ signInAsked: false, sent: { stopped: null, left: 0 } });
  });

  it("says what the registry said where it could not take anything in", async () => {
    registry(() => Response.json({ words: "Too many phones are sending at once." }, { status: 429 }));
    const model = await openPhone();
    await model.record(growOutId, "count", count, "40 standing");
    await model.send();
    expect(model.now().sent).toMatchObject({
      stopped: "fault",
      words: "Too many phones are sending at once.",
      left: 1,
    });
  });

  it("keeps what was begun on a screen, and forgets it when it is done with", async () => {
    registry(takes);
    const { store, name } = phone();
    const model = new Phone(store);
    await model.open();
    await model.setDraft("pass", '{"looked":90}');
    await model.setDraft("count", "{}");
    await model.setDraft("count", null);
    const again = new Phone(phone(name).store);
    await again.open();
    expect(again.now().drafts).toEqual({ pass: '{"looked":90}' });
  });
});
