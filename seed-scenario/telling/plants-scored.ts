import { addDays } from "@/lib/science/dates/civil-day";
import type { Book } from "./book";
import { Draws } from "./draws";
import { lastDayTold } from "./field-notes";
import { firstFlower, type GrowOut } from "./grow-out";
import type { Telling } from "./telling";
import { tellBags } from "./working-year";

interface Scored {
  readonly plants: number;
  readonly kept: number;
  /** seed of each kept plant, where it was weighed */
  readonly grams?: readonly number[];
  readonly colours?: readonly string[];
  readonly forms?: readonly string[];
  /** usual days from sowing to flower, where they were noted */
  readonly flowers?: number;
}

const plantsInBlock = 10;

/** Plants of a grow-out that were marked and scored one by one, block by block. The kept ones come first. */
export function scorePlants(tell: Telling, growOut: GrowOut, scored: Scored): void {
  const draws = new Draws(`plants ${growOut.name}`);
  const { plants, kept, grams, colours, forms, flowers } = scored;
  // Kept ones in every block, as who walks the plot block by block would have them.
  const blocks = Math.min(8, Math.ceil(plants / plantsInBlock));
  if (grams) tellBags(tell, growOut, grams);
  for (let place = 0; place < plants; place++) {
    const isKept = place < kept;
    const seed = isKept ? grams?.[place] : undefined;
    const vigour =
      seed === undefined ? draws.whole(isKept ? 5 : 2, isKept ? 9 : 6) : Math.min(9, 5 + Math.floor(seed / 30));
    tell.book.write("plants.csv", {
      grow_out: growOut.name,
      plant: String(place + 1),
      cell: "ABCDEFGH"[place % blocks],
      kept: isKept ? "yes" : "no",
      seed_grams: seed,
      "score:vigour": vigour,
      "score:colour": colours && draws.pick(isKept ? colours.slice(0, -1) : colours),
      "score:form": forms && draws.pick(isKept ? forms.slice(0, -1) : forms),
      "score:days to flower": flowers && draws.whole(flowers - 6, flowers + 8),
    });
    mark(tell, growOut, place, isKept);
  }
}

const words = [
  "first of its row",
  "clean to the ground",
  "upright after the storm",
  "heavy for its size",
  null,
  null,
  null,
];
const doubts = ["late", "leans", "spotted leaf", "edge of the bed", null];

/** The tape on a plant: the tag as it was written, what was meant by it, and a word or two. */
function mark(tell: Telling, growOut: GrowOut, place: number, kept: boolean): void {
  const draws = new Draws(`mark ${growOut.name} ${place}`);
  const on = addDays(firstFlower(growOut, tell.habit), kept ? draws.whole(2, 9) : draws.whole(-6, 20));
  if (on > lastDayTold) return;
  const intent = kept ? "keep" : draws.chance(0.6) ? "watch" : "pull";
  tell.book.write("marks.csv", {
    grow_out: growOut.name,
    plant: String(place + 1),
    tag: String(place + 1),
    intent,
    on,
    words: draws.pick(kept ? words : doubts),
    fate: growOut.lots.length > 0 ? (kept ? "harvested" : intent === "pull" ? "rogued later" : "eaten") : null,
    steward: growOut.by.name,
  });
}

/** What the circle's four traits mean, written down once. */
export function writeTraits(book: Book): void {
  const write = (trait: string, line: object) => book.write("traits.csv", { trait, trait_version: 1, ...line });
  const steps = { 1: "hardly grows", 3: "weak", 5: "as most", 7: "strong", 9: "strongest of its block" };
  write("vigour", {
    kind: "scale",
    direction: "higher",
    scale_low: 1,
    scale_high: 9,
    wording: JSON.stringify({ steps }),
  });
  write("colour", { kind: "category" });
  write("form", { kind: "category" });
  write("days to flower", { kind: "count", unit: "days", direction: "none" });
}
