import { uuidv7 } from "uuidv7";
import type { NewRecord } from "@/lib/field/kept-rows";
import { type Moment, newRecord } from "@/lib/field/new-record";
import type { FieldBody, FieldKind, PlantInField } from "@/lib/schemas/field/field-records";

/** What a hand does next; the numbers choose among what there is. */
export interface Deed {
  readonly what: (typeof deeds)[number];
  readonly one: number;
  readonly two: number;
}

export const deeds = [
  "mark",
  "mark again",
  "score",
  "walk",
  "count",
  "flowering",
  "take seed",
  "harvest",
  "undo",
  "picture",
] as const;

/** Where the two phones are: in one grow-out both, and each in one of its own. */
export interface Field {
  readonly both: string;
  readonly own: readonly [string, string];
  readonly vigour: string;
}

/** A hand with a phone: what it does becomes records, by what it did before. */
export class Hand {
  private readonly plants: { growOutId: string; plant: PlantInField; mark: string }[] = [];
  private readonly made: NewRecord[] = [];
  private harvestId = uuidv7();
  private parts: string[] = [];
  private readonly seedOf = new Map<string, string>();

  constructor(
    private readonly which: 0 | 1,
    private readonly field: Field,
  ) {}

  /** What is to be stored for a deed; nothing where there is nothing to do it with. */
  does({ what, one, two }: Deed, moment: Moment): NewRecord | null {
    const record = this.recordOf(what, one, two, moment);
    if (record) this.made.push(record);
    return record;
  }

  private recordOf(what: Deed["what"], one: number, two: number, moment: Moment): NewRecord | null {
    const { both, own, vigour } = this.field;
    const at = own[this.which];
    const make = <K extends FieldKind>(kind: K, body: FieldBody<K>, growOutId = at) =>
      newRecord(kind, body, { growOutId, stewardId: null }, moment);
    switch (what) {
      case "mark": {
        // Few tags and places, so that the two meet.
        const growOutId = one % 2 === 0 ? both : at;
        const place = two % 3 === 0 ? { row: "1", position: one % 4 } : { row: null, position: null };
        const plant = { id: uuidv7(), name: `${two % 4}`, cell: null, ...place };
        const record = make("mark", markOf(plant, two), growOutId);
        this.plants.push({ growOutId, plant, mark: record.id });
        return record;
      }
      case "mark again": {
        const known = this.some(this.plants, one);
        if (!known) return null;
        const record = make(
          "mark",
          { ...markOf(known.plant, two), tag: `${two % 5}`, replaces: known.mark },
          known.growOutId,
        );
        known.mark = record.id;
        return record;
      }
      case "score": {
        const known = this.some(this.plants, one);
        // 1 to 9 is the scale: one in four cannot be.
        const value = two % 4 === 0 ? 12 : (two % 9) + 1;
        return (
          known &&
          make("score", { plant: known.plant, traitId: vigour, value, text: null, replaces: null }, known.growOutId)
        );
      }
      case "walk": {
        const pulled = one % 5 === 0 ? [] : [{ reason: "weak" as const, plants: (two % 12) + 1 }];
        const timing = one % 2 === 0 ? ("before" as const) : ("after" as const);
        return make("walk", { stage: null, timing, looked: 12, pulled, left: null, note: null });
      }
      case "count": {
        const stage = one % 3 === 0 ? ("flowering" as const) : ("standing" as const);
        return make("count", { stage, plants: (two % 20) + 5, males: null, thinnedBy: null, note: null });
      }
      case "flowering": {
        // In the grow-out of both each notes another organ.
        const [organ, growOutId] =
          one % 2 === 0 ? [this.which === 0 ? ("pollen" as const) : ("silk" as const), both] : ["flower" as const, at];
        return make(
          "flowering",
          { organ, moment: (["first", "half", "last"] as const)[two % 3] ?? "first", note: null },
          growOutId,
        );
      }
      case "take seed": {
        const known = this.some(
          this.plants.filter(({ growOutId }) => growOutId === at),
          one,
        );
        if (!known) return null;
        const fate = two % 4 === 0 ? ("lost: eaten" as const) : ("kept" as const);
        const grams = fate === "kept" ? (two % 30) + 1 : null;
        const replaces = one % 2 === 0 ? (this.seedOf.get(`${this.harvestId} ${known.plant.id}`) ?? null) : null;
        const record = make("taken", {
          harvestId: this.harvestId,
          plant: known.plant,
          fate,
          grams,
          seeds: null,
          replaces,
        });
        this.seedOf.set(`${this.harvestId} ${known.plant.id}`, record.id);
        this.parts.push(record.id);
        return record;
      }
      case "harvest": {
        if (this.parts.length === 0) return null;
        const record = make("harvest", {
          harvestId: this.harvestId,
          parts: this.parts,
          bulked: "kept apart",
          note: null,
        });
        this.parts = [];
        this.harvestId = uuidv7();
        return record;
      }
      case "undo": {
        const undone = this.some(
          this.made.filter(({ kind }) => kind !== "undo"),
          this.made.length - 1 - (one % 3),
        );
        return undone && make("undo", { of: undone.id }, undone.growOutId);
      }
      case "picture": {
        const known = this.some(this.plants, one);
        const hash = `${two % 9}`.repeat(64);
        return known && make("photo", { plant: known.plant, traitId: null, hash, caption: null }, known.growOutId);
      }
    }
  }

  private some<T>(list: readonly T[], place: number): T | null {
    return list[Math.abs(place) % Math.max(1, list.length)] ?? null;
  }
}

function markOf(plant: PlantInField, number: number): FieldBody<"mark"> {
  const intent = (["keep", "watch", "pull"] as const)[number % 3] ?? "keep";
  return { plant, tag: plant.name, intent, words: null, fate: null, replaces: null };
}
