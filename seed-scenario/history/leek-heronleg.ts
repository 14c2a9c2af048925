import { tellYears } from "../telling/ordinary-years";
import type { Keeper, VarietyHistory } from "../telling/variety-history";

const keepers: readonly Keeper[] = [
  { who: "Mirabeth Undercroft", from: 1996, to: 2003, every: 3, gives: ["Ambrey Stallwood"], plots: ["orchard beds"] },
  {
    who: "Ambrey Stallwood",
    from: 2002,
    every: 3,
    first: 2003,
    gives: ["Gannerby Reading Room", "Orlo Brackstane"],
    plots: ["quarry floor"],
  },
  {
    who: "Orlo Brackstane",
    from: 2012,
    every: 3,
    first: 2014,
    gives: ["Gannerby Reading Room", "Ambrey Stallwood"],
    plots: ["lane beds"],
  },
];

/** A leek of which one notebook was left out in the rain: from there on one line has no counts. */
export const leekHeronleg: VarietyHistory = {
  variety: {
    name: "Heronleg",
    word: "Heron",
    crop: "leek",
    story: "Thin, long and grey, and it stands in water. Earthed up with sawdust from the mill at Kestonhalse.",
    type: "Shank longer than a forearm, no bulb at the foot, flag blue-grey; stands until March.",
    seedCoat: ["plain", "black", "slate"],
    plantsWanted: 90,
    seedParentsWanted: 65,
    isolationWanted: 800,
    traits: [
      ["shank", "over 30 cm, no bulb", "short; bulb at the foot", "leaf"],
      ["flag", "blue-grey", "yellow-green", "leaf"],
    ],
  },
  tell(tell) {
    tell.founder({
      holder: "Mirabeth Undercroft",
      year: "1994/1995",
      on: "1996-02-11",
      grams: 31,
      other: "the sawmill at Kestonhalse",
      notes: "three heads in a flour bag; unknown before here",
      lives: 0.88,
    });
    tellYears(tell, [1996, 2026], keepers, {
      2014: {
        alone: true,
        spring: () => {
          const seed = tell.give(tell.newest("Ambrey Stallwood"), {
            to: "Orlo Brackstane",
            on: "2014-03-21",
            grams: 2.4,
            told: "at least sixty heads",
          });
          tell.sow({
            by: "Orlo Brackstane",
            from: [seed],
            plot: "lane beds",
            unwritten: ["plants_standing", "rogued_before_pollen", "seed_parents", "seed_shares"],
            note: "The notebook of that year lay out in the rain; only the sowing could be read.",
          });
        },
      },
      2017: {
        alone: true,
        spring: () => {
          tell.sow({ by: "Orlo Brackstane", from: [tell.newest("Orlo Brackstane")], plot: "lane beds", plants: 80 });
          const lost = tell.sow({
            by: "Orlo Brackstane",
            from: [tell.newest("Orlo Brackstane")],
            plot: "paddock",
            plants: 80,
            standing: 71,
            outcome: "flowered into the heat of 2018; thrips and no rain, the heads were empty",
          });
          tell.saw("2018-08-19", "Rubbed out nine heads over a sheet: chaff.", {
            growOut: lost.name,
            value: 9,
            unit: "heads",
            by: "Orlo Brackstane",
          });
        },
      },
      2026: {
        winter: () => {
          tell.book.write("questions.csv", {
            kind: "counts",
            sentence:
              "How many heads stood in the lane beds in 2015, and how many gave seed? Orlo Brackstane may remember; nothing below can be followed until then.",
            variety: "Heronleg",
            grow_out: "Heron 2014 lane beds",
            raised_at: "2026-02-03T19:20:00Z",
          });
        },
      },
    });
  },
};
