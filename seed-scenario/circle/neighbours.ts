import type { CropKey } from "./crop-habits";

/** What else stood in reach, as it was seen from the plot. `crop`: a key of the crop list. */
export interface Neighbour {
  readonly what: string;
  readonly crop: string;
  readonly metres: readonly [number, number];
  readonly square?: readonly [number, number];
  readonly plants?: readonly [number, number];
  readonly sure: string;
}

const neighbours: Partial<Record<CropKey, readonly Neighbour[]>> = {
  "maize-field": [
    {
      what: "sweet maize in a kitchen garden",
      crop: "maize-sweet",
      metres: [180, 420],
      plants: [30, 90],
      sure: "paced out",
    },
    {
      what: "fodder maize beyond the weir",
      crop: "maize-field",
      metres: [650, 1100],
      square: [8000, 30000],
      sure: "from the map",
    },
    {
      what: "popping maize on the school strip",
      crop: "maize-pop",
      metres: [300, 700],
      plants: [12, 40],
      sure: "told over the fence",
    },
  ],
  rye: [
    { what: "fallow rye as green manure", crop: "rye", metres: [260, 900], square: [400, 6000], sure: "from the road" },
    {
      what: "self-sown rye on the railway bank",
      crop: "rye",
      metres: [120, 300],
      plants: [20, 80],
      sure: "seen, not counted",
    },
  ],
  "bean-broad": [
    {
      what: "field beans for the sheep",
      crop: "bean-broad",
      metres: [150, 700],
      square: [2000, 15000],
      sure: "from the map",
    },
    { what: "a row of green broad beans", crop: "bean-broad", metres: [40, 160], plants: [20, 60], sure: "paced out" },
  ],
  "squash-maxima": [
    { what: "orange show squash", crop: "squash-maxima", metres: [90, 600], plants: [2, 12], sure: "counted" },
    {
      what: "a squash on the dung heap, kind not known",
      crop: "squash-maxima",
      metres: [60, 250],
      plants: [1, 1],
      sure: "seen too late",
    },
  ],
  kale: [
    {
      what: "sprouting broccoli left to flower",
      crop: "broccoli",
      metres: [120, 600],
      plants: [4, 20],
      sure: "counted",
    },
    { what: "a bolted cabbage row", crop: "cabbage", metres: [200, 900], plants: [6, 30], sure: "from the road" },
  ],
  carrot: [
    {
      what: "wild carrot along the lane",
      crop: "carrot",
      metres: [80, 500],
      plants: [40, 300],
      sure: "not counted, many",
    },
    {
      what: "carrots run to seed on the next allotment",
      crop: "carrot",
      metres: [30, 200],
      plants: [2, 9],
      sure: "counted",
    },
  ],
  leek: [
    {
      what: "leek heads kept for show",
      crop: "leek",
      metres: [150, 800],
      plants: [5, 25],
      sure: "told over the fence",
    },
  ],
  spinach: [
    {
      what: "smooth-seeded spinach, run to flower",
      crop: "spinach",
      metres: [200, 900],
      plants: [30, 120],
      sure: "paced out",
    },
  ],
  "bean-runner": [
    {
      what: "white-flowered runners on poles",
      crop: "bean-runner",
      metres: [60, 350],
      plants: [12, 40],
      sure: "counted",
    },
  ],
  beet: [
    { what: "leaf beet in flower", crop: "chard", metres: [250, 1200], plants: [3, 15], sure: "counted" },
    { what: "a bolter in the fodder beet", crop: "sugar-beet", metres: [700, 2500], plants: [1, 20], sure: "guessed" },
  ],
  "bunching-onion": [
    {
      what: "red-skinned bunching onion",
      crop: "bunching-onion",
      metres: [90, 400],
      plants: [10, 40],
      sure: "paced out",
    },
  ],
  "amaranth-grain": [
    { what: "leaf amaranth in tubs", crop: "amaranth-grain", metres: [80, 300], plants: [3, 10], sure: "counted" },
  ],
};

export function neighboursOf(crop: CropKey): readonly Neighbour[] {
  return neighbours[crop] ?? [];
}

/** How each crop is kept apart here, with what was seen of it. */
export const isolationWays: Partial<Record<CropKey, readonly (readonly [method: string, evidence: string])[]>> = {
  "maize-field": [
    ["distance", "no other tassel within 400 m, walked in July"],
    ["time", "sown three weeks before the valley's sweet maize"],
  ],
  rye: [["distance", "nearest rye more than 300 m, behind the wood"]],
  "bean-broad": [["distance", "asked along the lane in March"]],
  "squash-maxima": [
    ["hand pollination", "flowers taped the evening before, tagged in red wool"],
    ["distance", "nobody else's squash within 500 m that anyone knew of"],
  ],
  kale: [["distance", "nothing of the cabbage tribe in flower within 600 m"]],
  carrot: [
    ["cage", "net house with hoverflies let in"],
    ["distance", "lane mown twice before the wild carrot flowered"],
  ],
  leek: [["distance", "no other leek in flower in the village"]],
  spinach: [["distance", "the only spinach left to flower this side of the ford"]],
  "bean-runner": [["distance", "asked the four houses"]],
  beet: [["distance", "chard pulled before it flowered, by agreement"]],
  "bunching-onion": [["cage", "fleece tunnel, flies let in"]],
  "amaranth-grain": [["bags", "plumes of the seed parents in paper bags"]],
};
