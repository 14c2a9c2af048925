import { tellYears } from "../telling/ordinary-years";
import type { Keeper, VarietyHistory } from "../telling/variety-history";

const keepers: readonly Keeper[] = [
  {
    who: "Mirabeth Undercroft",
    from: 1997,
    every: 4,
    gives: ["Edda Sallowby", "Gannerby Reading Room", "Cauldrith Hill Store", "Orlo Brackstane"],
    plots: ["lower quillet"],
  },
  { who: "Edda Sallowby", from: 2002, to: 2012, every: 5, gives: ["Mirabeth Undercroft"], plots: ["hen run"] },
  {
    who: "Orlo Brackstane",
    from: 2013,
    to: 2020,
    every: 5,
    first: 2015,
    gives: ["Mirabeth Undercroft", "Gannerby Reading Room"],
    plots: ["paddock"],
  },
];

/** A beet of the cellar, self-incompatible and carried far by the wind. Orlo Brackstane has not answered about it since 2022. */
export const beetUndercroft: VarietyHistory = {
  variety: {
    name: "Undercroft Coal",
    word: "Coal",
    crop: "beet",
    story: "Black outside, ink inside; the Undercroft family dyed the chapel curtains with the water.",
    type: "Round, nearly black skin, no white rings; leaf small and dark; keeps to May in sand.",
    seedCoat: ["plain", "brown", "wine"],
    plantsWanted: 95,
    seedParentsWanted: 60,
    isolationWanted: 1000,
    traits: [
      ["flesh", "dark throughout", "white rings", "root"],
      ["root", "round, one tail", "flat or long", "root"],
    ],
  },
  tell(tell) {
    tell.founder({
      holder: "Mirabeth Undercroft",
      year: "1995~",
      on: "1996-11",
      grams: 96,
      other: "her grandmother's sideboard",
      notes: "clusters in a sugar tin; the family says five generations, the notebook knows of none",
      lives: 0.86,
    });
    tellYears(tell, [1996, 2026], keepers, {
      2005: {
        november: () =>
          tell.give(tell.newest("Mirabeth Undercroft"), { to: "Cauldrith Hill Store", on: "2005-11-19", grams: 6 }),
      },
      2010: {
        spring: () =>
          tell.sow({
            by: "Mirabeth Undercroft",
            from: [tell.newest("Mirabeth Undercroft")],
            plot: "orchard beds",
            plants: 80,
            standing: 66,
            before: 45,
            pulledFor: "frozen in the cellar",
            winterCounted: "2011-03-20",
            after: 0,
            seedParents: 18,
            shares: "cv 0.5",
            note: "Frost got into the cellar at Christmas 2010: twenty-one roots sound enough to replant.",
          }),
      },
    });
  },
};
