import { tellYears } from "../telling/ordinary-years";
import type { Keeper, VarietyHistory } from "../telling/variety-history";
import { nabsShed } from "./hand-over";

const keepers: readonly Keeper[] = [
  { who: "Nab Hurdlestone", from: 2003, to: 2006, every: 1, plots: ["top patch"] },
  { who: "Mirabeth Undercroft", from: 2009, to: 2011, every: 1, plots: ["orchard beds"] },
  { who: "Orlo Brackstane", from: 2012, every: 1, gives: ["Tamsel Vike"], plots: ["lane beds", "paddock"] },
];

/** A garlic, planted clove by clove every October. It has no parents in the sense of the other varieties, and so no figures of descent. */
export const garlicCartwheel: VarietyHistory = {
  variety: {
    name: "Cartwheel Pink",
    word: "Wheel",
    crop: "garlic",
    story: "Bulbs plaited round a cartwheel in Nab Hurdlestone's barn, which is how they were counted.",
    type: "Stiff neck, six to nine cloves, skin pink under white.",
    seedCoat: ["stripe", "white", "pink"],
    plantsWanted: 110,
    traits: [
      ["skin of the clove", "pink to rose", "brown", "seed"],
      ["cloves", "6 to 9", "single round; more than 12", "fruit"],
      ["leaf", "clean", "yellow streaks", "leaf"],
    ],
    note: "Kept by division. Cloves that look sick are not planted; the rest is eaten.",
  },
  tell(tell) {
    tell.founder({
      holder: "Nab Hurdlestone",
      year: "2003-07",
      on: "2003-08",
      grams: 3600,
      other: "his own plait",
      notes: "on the farm as long as the rye; unknown before here",
    });
    tellYears(tell, [2003, 2026], keepers, {
      2007: {
        alone: true,
        autumn: () =>
          tell.sow({ by: "Nab Hurdlestone", from: [tell.newest("Nab Hurdlestone")], plot: "top patch", plants: 46 }),
        november: () => tell.discard(tell.newest("Nab Hurdlestone"), "2007-12", "eaten"),
      },
      2008: {
        autumn: () =>
          tell.give(tell.newest("Nab Hurdlestone"), {
            to: "Mirabeth Undercroft",
            on: "2008-09",
            grams: 700,
            purpose: "he could not plant that autumn",
          }),
        november: () =>
          tell.sow({
            by: "Mirabeth Undercroft",
            from: [tell.newest("Mirabeth Undercroft")],
            plot: "lower quillet",
            plants: 90,
            on: "11-02",
          }),
      },
      2009: {
        winter: () => {
          const [plait] = tell.jarsOf("Nab Hurdlestone");
          if (plait) nabsShed(tell, plait, "Mirabeth Undercroft", "the plait off the wheel; half of it soft");
        },
      },
      2011: {
        alone: true,
        autumn: () => {
          const cloves = tell.give(tell.newest("Mirabeth Undercroft"), {
            to: "Orlo Brackstane",
            on: "2011-09-24",
            grams: 900,
          });
          tell.sow({ by: "Orlo Brackstane", from: [cloves], plot: "lane beds" });
        },
      },
    });
  },
};
