import { describe, expect, it } from "vitest";
import { choiceInField, markOfChoice } from "@/lib/field/choice-in-field";
import type { KeptRecord } from "@/lib/field/kept-rows";
import { newRecord } from "@/lib/field/new-record";
import { fieldState } from "@/lib/field/screen-state";
import { type FieldPack, fieldPack } from "@/lib/schemas/field/field-pack";
import type { FieldBody, FieldKind } from "@/lib/schemas/field/field-records";
import type { ChoiceGround } from "@/lib/schemas/plants/choice-ground";
import { noWording } from "@/lib/schemas/traits/trait";
import { growOutId, noon } from "./phone";

/* All that is expected here is counted by hand from the few records of each test. */

const idOf = (number: number) => `01976000-0000-7000-8000-0000000001${String(number).padStart(2, "0")}`;
const [halda, osk] = [idOf(90), idOf(91)];
const plantOf = (number: number, cell: string | null = null) => ({
  ...{ id: idOf(number), name: String(number), cell, row: null, position: null },
});

const definition = {
  unit: null,
  direction: "higher",
  target: null,
  scaleLow: 1,
  scaleHigh: 9,
  wording: noWording,
} as const;
const weighed = { unit: null, better: "higher", days: false, href: "", olderVersion: 0, heritability: null } as const;
const choice: ChoiceGround = {
  growOut: { id: growOutId, name: "Mill field 2026" },
  plants: [
    {
      ...{
        id: idOf(1),
        name: "1",
        tag: "1",
        cell: "A",
        row: null,
        position: null,
        intent: "keep",
        words: "",
        gone: null,
      },
      ...{ scores: { vigour: [{ by: halda, value: 7 }] }, said: { vigour: "7" } },
    },
  ],
  traits: [
    {
      ...weighed,
      key: "vigour",
      name: "vigour",
      scale: [1, 9],
      share: false,
      definition: { ...definition, name: "vigour", kind: "scale" },
    },
    {
      ...weighed,
      key: "silk",
      name: "silk",
      scale: null,
      share: true,
      definition: { ...definition, name: "silk", kind: "yes-no" },
    },
  ],
  people: [{ id: halda, name: "Halda Morrow" }],
  ...{ plot: null, assumed: [], floor: 40, wanted: null, seeds: null, chosenBeforeFlower: false },
};

const trait = { unit: null, direction: "higher", target: null, steps: [], photos: [] };
const pack: FieldPack = fieldPack.parse({
  version: 1,
  madeAt: "2026-08-01T10:00:00.000Z",
  growOut: { id: growOutId, name: "Mill field 2026", sown: null, purpose: null, plots: [] },
  variety: { id: "v", name: "Thimble", seedCoat: null, aim: null, cautions: null },
  crop: { key: "maize-field", name: "Maize", plantsMin: 40 },
  plan: { plants: null, seedParents: null, seedParentsWanted: null },
  hand: { stewardId: osk, name: "Osk Tarn" },
  traits: [
    { ...trait, id: idOf(80), first: "vigour", name: "vigour", kind: "scale", scaleLow: 1, scaleHigh: 9 },
    { ...trait, id: idOf(81), first: "silk", name: "silk", kind: "yes-no", scaleLow: null, scaleHigh: null },
  ],
  plants: [
    {
      plant: plantOf(1, "A"),
      mark: { id: idOf(70), tag: "1", intent: "keep", words: null, fate: null, on: "2026-07-20", by: "Halda Morrow" },
      scores: [{ id: idOf(71), trait: "vigour", value: 7, text: null, on: "2026-07-20", by: "Halda Morrow" }],
    },
  ],
  ...{ type: [], counts: [], walks: [], flowering: [], harvests: [], cautions: [], choice },
});

function row<K extends FieldKind>(sequence: number, kind: K, body: FieldBody<K>): KeptRecord {
  const made = newRecord(kind, body, { growOutId, stewardId: osk }, noon);
  const record = { ...made, deviceId: "d", sequence } as KeptRecord["record"];
  return { ...{ id: made.id, sequence, growOutId, record, state: "unsent" }, sentence: null, answeredAt: null };
}
const marked = (number: number, intent: "keep" | "pull") => ({
  ...{ plant: plantOf(number, "B"), tag: String(number), intent, words: null, fate: null, replaces: null },
});
const scored = (number: number, traitId: string, value: number) => ({
  ...{ plant: plantOf(number, number === 1 ? "A" : "B"), traitId, value, text: null, replaces: null },
});

describe("a choice in the field", () => {
  it("is made from the pack and from what this phone recorded since, each hand's score beside the other's", () => {
    const rows = [
      row(1, "score", scored(1, idOf(80), 5)),
      row(2, "mark", marked(2, "keep")),
      row(3, "score", scored(2, idOf(81), 1)),
      row(4, "mark", marked(3, "pull")),
    ];
    const ground = choiceInField(pack, fieldState(pack, rows), (_trait, { value }) => String(value));
    const plant = (name: string) => ground?.plants.find((each) => each.name === name);
    expect(plant("1")).toMatchObject({
      ...{ cell: "A", intent: "keep", gone: null, said: { vigour: "5" } },
      scores: {
        vigour: [
          { by: halda, value: 7 },
          { by: osk, value: 5 },
        ],
      },
    });
    expect(plant("2")).toMatchObject({ cell: "B", scores: { silk: [{ by: osk, value: 1 }] }, said: { silk: "1" } });
    expect(plant("3")?.gone).toBe("to be pulled");
    expect(ground?.people.map(({ name }) => name).sort()).toEqual(["Halda Morrow", "Osk Tarn"]);
    expect([ground?.traits.length, ground?.floor]).toEqual([2, 40]);
    // what nobody has scored by is not weighed
    expect(choiceInField(pack, fieldState(pack, []), () => "")?.traits.map(({ key }) => key)).toEqual(["vigour"]);
  });

  it("tells two plants of one tag apart, and of a pack that says nothing of it there is none", () => {
    const twin = { ...marked(4, "keep"), tag: "2" };
    const state = fieldState(pack, [row(1, "mark", marked(2, "keep")), row(2, "mark", twin)]);
    const names = choiceInField(pack, state, () => "")?.plants.map(({ name }) => name);
    expect(new Set(names).size).toBe(3);
    expect(choiceInField({ ...pack, choice: undefined }, state, () => "")).toBeNull();
  });

  it("writes marks that stand in the place of those before, with their tag, and with why one was left out", () => {
    const state = fieldState(pack, []);
    const cells = { intent: { text: "watch" }, words: { text: "left out: smut" } };
    expect(markOfChoice({ key: idOf(1), cells }, state)).toEqual({
      ...{ plant: plantOf(1, "A"), tag: "1", intent: "watch", words: "left out: smut", fate: null },
      replaces: idOf(70),
    });
    expect(markOfChoice({ key: idOf(9), cells }, state)).toBeNull();
  });
});
