import { describe, expect, it } from "vitest";
import type { KeptRecord, NewRecord } from "@/lib/field/kept-rows";
import { newRecord } from "@/lib/field/new-record";
import { fieldState, waitingOf } from "@/lib/field/screen-state";
import type { FieldPack } from "@/lib/schemas/field/field-pack";
import { fieldPack } from "@/lib/schemas/field/field-pack";
import type { FieldBody, FieldKind } from "@/lib/schemas/field/field-records";
import { growOutId, noon } from "./phone";

/* All that is expected here is counted by hand from the few records of each test. */

const madeAt = "2026-08-01T10:00:00.000Z";
const later = "2026-08-01T13:00:00.000Z";

const vigour = { id: "t2", first: "t1", name: "Vigour", kind: "scale" } as const;

const bare: FieldPack = fieldPack.parse({
  version: 1,
  madeAt,
  growOut: { id: growOutId, name: "Mill field 2026", sown: null, purpose: null, plots: [] },
  variety: { id: "v", name: "Thimble", seedCoat: null, aim: null, cautions: null },
  crop: { key: "maize-field", name: "Maize", plantsMin: 100 },
  plan: { plants: null, seedParents: null, seedParentsWanted: null },
  hand: { stewardId: null, name: "Osk" },
  traits: [{ ...vigour, unit: null, direction: null, target: null, scaleLow: 1, scaleHigh: 9, steps: [], photos: [] }],
  type: [],
  plants: [],
  counts: [],
  walks: [],
  flowering: [],
  harvests: [],
  cautions: [],
});

const plantOf = (number: number) => ({
  id: `01976000-0000-7000-8000-0000000001${String(number).padStart(2, "0")}`,
  name: String(number),
  cell: null,
  row: null,
  position: null,
});

/** Rows as the phone keeps them, in the order in which they are made. */
function rowsOf() {
  const rows: KeptRecord[] = [];
  const add = <K extends FieldKind>(kind: K, body: FieldBody<K>, part: Partial<KeptRecord> = {}): KeptRecord => {
    const made: NewRecord = newRecord(kind, body, { growOutId, stewardId: null }, noon);
    const sequence = rows.length + 1;
    const record = { ...made, deviceId: "d", sequence } as KeptRecord["record"];
    const row = {
      id: made.id,
      sequence,
      growOutId,
      record,
      state: "unsent",
      sentence: null,
      answeredAt: null,
      ...part,
    };
    rows.push(row as KeptRecord);
    return row as KeptRecord;
  };
  const mark = (number: number, tag: string | null = String(number), part?: Partial<KeptRecord>) =>
    add("mark", { plant: plantOf(number), tag, intent: "keep", words: null, fate: null, replaces: null }, part);
  const score = (number: number, value: number, part?: Partial<KeptRecord>) =>
    add("score", { plant: plantOf(number), traitId: "t2", value, text: null, replaces: null }, part);
  const undo = (of: KeptRecord, part?: Partial<KeptRecord>) => add("undo", { of: of.id }, part);
  return { rows, add, mark, score, undo };
}

const inRegistry = { state: "taken", answeredAt: later } as const;

/** The pack with plant 7, marked keep with tag 7 and scored 5, as the registry names the two. */
function packWith7(markId = "m7", at = madeAt): FieldPack {
  const mark = { id: markId, tag: "7", intent: "keep", words: null, fate: null, on: "2026-07-01", by: null } as const;
  const scores = [{ id: "s7", trait: "t1", value: 5, text: null, on: "2026-07-01", by: null }];
  return { ...bare, madeAt: at, plants: [{ plant: plantOf(7), mark, scores }] };
}

describe("what the screens show of a grow-out", () => {
  it("is the pack and over it what was recorded since", () => {
    const { rows, mark, score } = rowsOf();
    mark(8);
    score(7, 9);
    const { plants, nextTag } = fieldState(packWith7(), rows);
    expect(plants.map((each) => [each.tag, each.scores.t1?.value ?? null])).toEqual([
      ["7", 9],
      ["8", null],
    ]);
    expect(nextTag).toBe("9");
  });

  it("gives the next tag after the highest, and after the last one put on with its letters", () => {
    expect(fieldState(bare, []).nextTag).toBe("1");
    expect(fieldState(packWith7(), []).nextTag).toBe("8");
    const { rows, mark } = rowsOf();
    mark(1, "B09");
    expect(fieldState(packWith7(), rows).nextTag).toBe("B10");
  });

  it("takes back what was undone, and lays bare what stood before", () => {
    const { rows, mark, score, undo } = rowsOf();
    mark(1);
    const first = score(1, 3);
    const second = score(1, 8);
    expect(fieldState(bare, rows).plants[0]?.scores.t1).toEqual({ id: second.id, value: 8, text: null });
    undo(second);
    expect(fieldState(bare, rows).plants[0]?.scores.t1).toEqual({ id: first.id, value: 3, text: null });
  });

  it("has no plant, and its tag free, where its only mark was taken back; an undo can be taken back, too", () => {
    const { rows, mark, undo } = rowsOf();
    const undone = undo(mark(1));
    expect(fieldState(bare, rows)).toMatchObject({ plants: [], nextTag: "1" });
    undo(undone);
    expect(fieldState(bare, rows)).toMatchObject({ plants: [{ tag: "1" }], nextTag: "2" });
  });

  it("does not lay a record over a newer pack that has it already", () => {
    const { rows, score } = rowsOf();
    score(7, 9, { state: "taken", answeredAt: "2026-08-01T09:00:00.000Z" });
    expect(fieldState(packWith7(), rows).plants[0]?.scores.t1?.value).toBe(5);
    expect(fieldState(packWith7("m7", "2026-08-01T08:00:00.000Z"), rows).plants[0]?.scores.t1?.value).toBe(9);
  });

  it("takes back a mark that the pack has already, and shows the one before it", () => {
    const { rows, mark, undo } = rowsOf();
    const before = { state: "taken", answeredAt: "2026-08-01T09:00:00.000Z" } as const;
    mark(7, "6", before);
    const wrong = mark(7, "7", before);
    undo(wrong);
    expect(fieldState(packWith7(wrong.id), rows).plants[0]?.tag).toBe("6");
  });

  it("shows a tag on two plants and renames none", () => {
    const { rows, mark } = rowsOf();
    mark(1, "7");
    const { tagsTwice, plants } = fieldState(packWith7(), rows);
    expect(tagsTwice).toEqual(["7"]);
    expect(plants.map((each) => each.tag)).toEqual(["7", "7"]);
  });

  it("keeps walks, counts and flowering as events beside the pack's", () => {
    const { rows, add } = rowsOf();
    const pulled = [
      { reason: "weak", plants: 2 },
      { reason: "sick", plants: 1 },
    ] as const;
    add("walk", { stage: "leaf", timing: "before", looked: 90, pulled: [...pulled], left: null, note: null });
    add("walk", { stage: null, timing: null, looked: null, pulled: [], left: null, note: null }, inRegistry);
    add("count", { stage: "standing", plants: 96, males: null, thinnedBy: null, note: null });
    add("flowering", { organ: "silk", moment: "first", note: null });
    const { walks, counts, flowering } = fieldState(bare, rows);
    expect(walks.map((each) => each.pulled)).toEqual([3, 0]);
    expect(counts).toMatchObject([{ stage: "standing", plants: 96, on: "2026-08-01" }]);
    expect(flowering).toMatchObject([{ organ: "silk", moment: "first", on: "2026-08-01" }]);
  });

  it("holds the harvest under way until it is said to be done, what was told of a plant last", () => {
    const { rows, add, mark } = rowsOf();
    mark(1);
    mark(2);
    const harvestId = "01976000-0000-7000-8000-0000000000aa";
    const taken = (number: number, grams: number | null) =>
      add("taken", { harvestId, plant: plantOf(number), fate: "kept", grams, seeds: null, replaces: null });
    taken(1, null);
    const weighed = taken(1, 120);
    const lost = add("taken", {
      harvestId,
      plant: plantOf(2),
      fate: "lost: eaten",
      grams: null,
      seeds: null,
      replaces: null,
    });
    const under = fieldState(bare, rows);
    expect(under.harvest).toEqual({
      harvestId,
      taken: [
        { record: weighed.id, plant: plantOf(1), fate: "kept", grams: 120, seeds: null },
        { record: lost.id, plant: plantOf(2), fate: "lost: eaten", grams: null, seeds: null },
      ],
    });
    expect(under.plants.map((each) => each.fate)).toEqual(["lost", "harvested"]);
    const parts = [weighed.id, lost.id];
    add("harvest", { harvestId, parts, bulked: "equal seeds", note: null });
    expect(fieldState(bare, rows)).toMatchObject({ harvest: null, harvests: 1 });
  });
});

describe("what waits", () => {
  it("is counted with the earliest moment, and what was refused apart", () => {
    const { rows, mark } = rowsOf();
    mark(1, "1", inRegistry);
    mark(2);
    mark(3, "3", { state: "refused", sentence: "No." });
    expect(waitingOf(rows)).toEqual({ unsent: 1, since: "2026-08-01T12:00:00.000Z", refused: 1 });
    expect(waitingOf([])).toEqual({ unsent: 0, since: null, refused: 0 });
  });
});
