import type { GrowOut } from "../telling/grow-out";
import { tellYears } from "../telling/ordinary-years";
import type { Keeper, VarietyHistory } from "../telling/variety-history";

const keepers: readonly Keeper[] = [
  { who: "Jossa Pellinder", from: 1998, to: 2018, every: 3, gives: ["Gannerby Reading Room"], plots: ["weir garden"] },
  {
    who: "Orlo Brackstane",
    from: 2013,
    every: 3,
    first: 2016,
    gives: ["Gannerby Reading Room", "Cauldrith Hill Store", "Mirabeth Undercroft"],
    plots: ["paddock"],
  },
];

/** An onion that stands for years: one planting gave four harvests, and all of them are one pool. */
export const onionTollgate: VarietyHistory = {
  variety: {
    name: "Tollgate Ever",
    word: "Tollgate",
    crop: "bunching-onion",
    story: "Along the wall of the toll house since before the toll was lifted. You pull half and leave half.",
    type: "White skin, no bulb, four to six shoots to the clump; green through the snow.",
    seedCoat: ["plain", "black", "slate"],
    plantsWanted: 60,
    seedParentsWanted: 45,
    isolationWanted: 400,
    traits: [
      ["skin", "white", "red", "leaf"],
      ["clump", "4 to 6 shoots", "single", "leaf"],
    ],
  },
  tell(tell) {
    tell.founder({
      holder: "Jossa Pellinder",
      year: "1997",
      on: "1998-02-10",
      grams: 14,
      other: "the toll house wall",
      notes: "heads cut with leave of the owner; unknown before here",
      lives: 0.87,
    });
    let wall: GrowOut | undefined;
    tellYears(tell, [1998, 2026], keepers, {
      2009: {
        spring: () => {
          const seed = tell.give(tell.newest("Jossa Pellinder"), {
            to: "Mirabeth Undercroft",
            on: "2009-03-22",
            grams: 1.2,
            purpose: "a planting that stays",
          });
          wall = tell.sow({
            by: "Mirabeth Undercroft",
            from: [seed],
            plot: "cellar bank",
            plants: 70,
            seedParents: 48,
            shares: "equal",
            foreign: 0,
            standsOn: true,
            note: "Planted to stay. Seed taken in 2010, 2012, 2014 and 2017 from the same clumps, the same number of heads from each.",
          });
        },
      },
      2010: { autumn: () => wall && tell.harvest(wall, { year: 2010 }) },
      2012: {
        autumn: () => wall && tell.harvest(wall, { year: 2012 }),
        november: () =>
          tell.give(tell.newest("Mirabeth Undercroft"), { to: "Orlo Brackstane", on: "2012-11-10", grams: 1.6 }),
      },
      2014: { autumn: () => wall && tell.harvest(wall, { year: 2014 }) },
      2017: { autumn: () => wall && tell.harvest(wall, { year: 2017, notes: "the last of the old clumps" }) },
    });
  },
};
