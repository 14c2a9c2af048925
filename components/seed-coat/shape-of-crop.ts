import type { SeedShape } from "./coat";

/** Which outline a crop's seed has, by the first word of its key that is known. */
const shapes: readonly (readonly [SeedShape, readonly string[]])[] = [
  ["bean", ["bean", "cowpea", "mung", "lupin", "lentil", "peanut", "alfalfa", "red", "garlic", "potato"]],
  ["kernel", ["maize"]],
  [
    "flat",
    [
      "squash",
      "cucumber",
      "melon",
      "watermelon",
      "gourd",
      "luffa",
      "bitter",
      "tomato",
      "pepper",
      "eggplant",
      "tomatillo",
      "ground",
      "parsnip",
      "flax",
      "sesame",
      "hemp",
    ],
  ],
  [
    "long",
    [
      "wheat",
      "barley",
      "oat",
      "rye",
      "triticale",
      "rice",
      "lettuce",
      "endive",
      "chicory",
      "salsify",
      "artichoke",
      "sunflower",
      "carrot",
      "celery",
      "parsley",
      "fennel",
      "dill",
    ],
  ],
  ["angular", ["onion", "shallot", "leek", "bunching", "chive", "buckwheat", "rhubarb", "chickpea"]],
  ["cluster", ["beet", "chard", "sugar", "spinach", "orach", "asparagus"]],
];

/** The outline for a crop's key ("bean-runner", "maize-pop"); whatever is not listed is round. */
export function shapeOfCrop(crop: string): SeedShape {
  const words = crop.toLowerCase().split(/[^a-z]+/);
  return shapes.find(([, crops]) => words.some((word) => crops.includes(word)))?.[0] ?? "round";
}
