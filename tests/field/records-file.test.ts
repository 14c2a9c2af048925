import { beforeEach, expect, it } from "vitest";
import { recordsFile, recordsFileName } from "@/lib/field/records-file";
import { isAnswer, isPack } from "@/lib/field/registry-calls";
import { shrunkSize } from "@/lib/field/shrink-photo";
import { fieldFile, fieldRecord } from "@/lib/schemas/field/field-delivery";
import { emptyMemory, phone, walk } from "./phone";

beforeEach(emptyMemory);

it("a phone's records stand in the file as the desk reads it", async () => {
  const { store } = phone();
  await store.append(walk(10));
  await store.append(walk(20));
  const savedAt = "2026-08-01T12:00:00.000Z";
  const device = await store.device();
  const read = fieldFile.parse(JSON.parse(recordsFile(device, await store.records(), savedAt)));
  expect(read.device).toEqual(device);
  expect(read.records.map((each) => fieldRecord.parse(each).sequence)).toEqual([1, 2]);
  expect(recordsFileName({ id: "x", name: "Phone 1a2b" }, savedAt)).toBe("kinrow-field-Phone-1a2b-2026-08-01.json");
});

it("a picture keeps its shape at sixteen hundred pixels at most", () => {
  expect(shrunkSize(4000, 3000)).toEqual({ width: 1600, height: 1200 });
  expect(shrunkSize(900, 1200)).toEqual({ width: 900, height: 1200 });
  expect(shrunkSize(20000, 3)).toEqual({ width: 1600, height: 1 });
});

it("what the registry answers is looked at before it is believed", () => {
  const now = "2026-08-01T12:00:00.000Z";
  expect(isAnswer({ now, answers: [{ id: "a", fate: "taken", sentence: null }] })).toBe(true);
  for (const wrong of [null, {}, { now: "soon", answers: [] }, { now, answers: [{ id: 3, fate: "taken" }] }])
    expect(isAnswer(wrong)).toBe(false);
  expect(isAnswer({ now, answers: [{ id: "a", fate: "eaten", sentence: null }] })).toBe(false);
  expect(isPack({ version: 2 })).toBe(false);
  expect(isPack("<html>")).toBe(false);
});
