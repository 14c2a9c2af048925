import { uuidv7 } from "uuidv7";
import { expect, test } from "vitest";
import { clockInWords, recordedInWords, saidInWords } from "@/app/field/_words/sent-words";
import type { FieldBody, FieldKind, FieldRecord } from "@/lib/schemas/field/field-records";

function record<K extends FieldKind>(kind: K, body: FieldBody<K>): FieldRecord {
  const envelope = { id: uuidv7(), deviceId: uuidv7(), sequence: 1, growOutId: uuidv7(), on: "2026-07-04" };
  return {
    ...envelope,
    recordedAt: "2026-07-04T08:00:00.000Z",
    recordedOffset: 120,
    stewardId: null,
    kind,
    body,
  } as FieldRecord;
}

const plant = { id: uuidv7(), name: "12", cell: null, row: null, position: null };

test("a record says in a few words what it tells", () => {
  const mark = { plant, tag: "12a", intent: "keep" as const, words: null, fate: null, replaces: null };
  expect(saidInWords(record("mark", mark))).toBe("plant 12a: keep");
  const walk = { stage: null, timing: null, looked: 40, left: null, note: null };
  expect(saidInWords(record("walk", { ...walk, pulled: [] }))).toBe("rogue pass: none found of 40 looked at");
  const pulled = [
    { reason: "sick" as const, plants: 2 },
    { reason: null, plants: 1 },
  ];
  expect(saidInWords(record("walk", { ...walk, looked: null, pulled }))).toBe("rogue pass: 3 pulled");
  const taken = { harvestId: uuidv7(), plant, fate: "lost: eaten" as const, grams: null, seeds: null, replaces: null };
  expect(saidInWords(record("taken", taken))).toBe("seed of plant 12: lost: eaten");
  const count = { stage: "standing" as const, plants: 1, males: null, thinnedBy: null, note: null };
  expect(saidInWords(record("count", count))).toBe("1 plant standing");
});

test("when it was recorded is told by the phone's own clock and place", () => {
  expect(recordedInWords("2026-07-04T23:30:00.000Z", 120)).toBe("5 July 2026 at 01:30");
});

test("how far a clock is off is told in minutes, then hours, then days; nothing where it is about right", () => {
  expect([null, 42, -42, 180, 2880].map(clockInWords)).toEqual([
    ...[null, "42 min ahead", "42 min behind", "3 hours ahead", "2 days ahead"],
  ]);
});
