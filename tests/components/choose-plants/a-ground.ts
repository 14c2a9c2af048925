import type { ChoiceGround, PlantToChoose, TraitToWeigh } from "@/lib/schemas/plants/choice-ground";
import { noWording } from "@/lib/schemas/traits/trait";

export function aTrait(key: string, more: Partial<TraitToWeigh> = {}): TraitToWeigh {
  return {
    key,
    name: key,
    definition: {
      ...{ name: key, kind: "measure", unit: "cm", direction: "higher" },
      ...{ target: null, scaleLow: null, scaleHigh: null, wording: noWording },
    },
    unit: "cm",
    better: "higher",
    scale: null,
    days: false,
    share: false,
    href: "/",
    olderVersion: 0,
    heritability: null,
    ...more,
  };
}

export function aPlant(name: string, more: Partial<PlantToChoose> = {}): PlantToChoose {
  return {
    ...{ id: `id-${name}`, name, tag: name, cell: "A", row: null, position: null },
    ...{ intent: "", words: "", gone: null, scores: {}, said: {} },
    ...more,
  };
}

export function aGround(more: Partial<ChoiceGround> = {}): ChoiceGround {
  return {
    growOut: { id: "g", name: "Mill 2024" },
    plants: [],
    traits: [aTrait("height")],
    people: [],
    plot: { pollenParents: { low: 200, high: 200 }, selfingRate: 0, inbreeding: 0 },
    assumed: [],
    floor: 100,
    wanted: null,
    seeds: null,
    chosenBeforeFlower: false,
    ...more,
  };
}
