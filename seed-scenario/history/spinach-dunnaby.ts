import { tellYears } from "../telling/ordinary-years";
import type { Keeper, VarietyHistory } from "../telling/variety-history";

const keepers: readonly Keeper[] = [
  {
    who: "Hesk Dunnaby",
    from: 1996,
    every: 4,
    gives: ["Edda Sallowby", "Cauldrith Hill Store", "Gannerby Reading Room"],
    plots: ["stone croft"],
  },
  {
    who: "Edda Sallowby",
    from: 1999,
    every: 5,
    gives: ["Hesk Dunnaby", "Gannerby Reading Room"],
    plots: ["south border"],
  },
];

/** A spinach with male and female plants, and a year in which four males fathered everything. */
export const spinachDunnaby: VarietyHistory = {
  variety: {
    name: "Dunnaby Ironleaf",
    word: "Iron",
    crop: "spinach",
    story: "The grain-room spinach: sown in the headland of the rye, cut with a hook.",
    type: "Arrow-shaped leaf, thick; prickly seed; males slender and soon over, females leafy to the top.",
    seedCoat: ["plain", "tan", "slate"],
    plantsWanted: 110,
    seedParentsWanted: 45,
    isolationWanted: 1000,
    traits: [
      ["seed", "prickly, two or three horns", "smooth", "seed"],
      ["leaf", "arrow-shaped, thick", "round, crinkled", "leaf"],
      ["bolting", "after the middle of May", "before the rest", "flower"],
    ],
  },
  tell(tell) {
    tell.founder({
      holder: "Hesk Dunnaby",
      year: "1994",
      on: "1996-01",
      grams: 88,
      other: "the headland",
      notes: "his mother's, threshed on the barn floor; not bought in while he has lived there",
      lives: 0.86,
    });
    tellYears(tell, [1996, 2026], keepers, {
      2012: {
        alone: true,
        spring: () => {
          const few = tell.sow({
            by: "Hesk Dunnaby",
            from: [tell.newest("Hesk Dunnaby")],
            plot: "stone croft",
            seeds: 220,
            standing: 74,
            before: 22,
            pulledFor: "bolted first",
            males: 4,
            after: 0,
            seedParents: 38,
            shares: "equal",
            foreign: 0,
            note: "The early bolters that were pulled were nearly all males: four were left for forty-eight females.",
          });
          tell.saw("2012-06-09", "Four males left. Pulling whatever bolts first takes the fathers.", {
            growOut: few.name,
            value: 4,
            unit: "males",
            sure: "counted",
            by: "Hesk Dunnaby",
          });
        },
      },
      2018: {
        spring: () =>
          tell.sow({
            by: "Edda Sallowby",
            from: [tell.newest("Edda Sallowby")],
            plot: "hen run",
            plants: 90,
            outcome: "bolted at a hand's height in the heat and set nothing",
          }),
      },
    });
  },
};
