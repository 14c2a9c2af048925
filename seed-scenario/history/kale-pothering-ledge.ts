import type { GrowOut } from "../telling/grow-out";
import type { Jar } from "../telling/jar";
import { tellYears } from "../telling/ordinary-years";
import type { Keeper, VarietyHistory } from "../telling/variety-history";

const keepers: readonly Keeper[] = [
  {
    who: "Mirabeth Undercroft",
    from: 1996,
    every: 3,
    gives: ["Ambrey Stallwood", "Gannerby Reading Room"],
    plots: ["lower quillet"],
  },
  {
    who: "Ambrey Stallwood",
    from: 2002,
    every: 3,
    first: 2003,
    gives: ["Mirabeth Undercroft", "Cauldrith Hill Store"],
    plots: ["ledge garden"],
  },
];

/** A kale of which the winter of 2010 left seven plants. */
export const kalePotheringLedge: VarietyHistory = {
  variety: {
    name: "Pothering Ledge",
    word: "Ledge",
    crop: "kale",
    story:
      "Grows where the ledge keeps the wind off. Ambrey Stallwood's neighbour had it from the lighthouse, or says so.",
    type: "Knee-high, blue-grey, tightly frilled; purple rib after frost; stands a hard winter in most years.",
    seedCoat: ["plain", "black", "brown"],
    plantsWanted: 60,
    seedParentsWanted: 45,
    isolationWanted: 600,
    traits: [
      ["leaf", "blue-grey, tightly frilled", "smooth; yellow-green", "leaf"],
      ["rib", "purple after frost", "white", "leaf"],
    ],
  },
  tell(tell) {
    tell.founder({
      holder: "Mirabeth Undercroft",
      year: "1994~",
      on: "1996-02-25",
      grams: 26,
      other: "a neighbour at Pothering",
      notes: "a brown envelope without a name on it; unknown before here",
      lives: 0.93,
    });
    let hard: GrowOut | undefined;
    let wide: Jar | undefined;
    tellYears(tell, [1996, 2026], keepers, {
      2004: {
        november: () =>
          tell.give(tell.newest("Mirabeth Undercroft"), { to: "Cauldrith Hill Store", on: "2004-11-09", grams: 4 }),
      },
      2010: {
        alone: true,
        spring: () => {
          hard = tell.sow({
            by: "Ambrey Stallwood",
            from: [tell.newest("Ambrey Stallwood")],
            plot: "ledge garden",
            seeds: 110,
            standing: 63,
            before: 56,
            pulledFor: "dead after the frost",
            winterCounted: "2011-03-12",
            after: 0,
            seedParents: 7,
            shares: "cv 0.5",
            foreign: 0,
            seedsOfEach: 260,
            note: "Fifty-six of sixty-three dead after the frost of December; those that were left flowered.",
          });
          tell.saw("2011-03-12", "Seven alive. They look like the best of them, but seven is seven.", {
            growOut: hard.name,
            value: 7,
            unit: "plants",
            sure: "counted",
            by: "Ambrey Stallwood",
          });
        },
      },
      2012: {
        alone: true,
        winter: () => {
          const store = tell.jarsOf("Cauldrith Hill Store").at(-1);
          if (!store) return;
          const back = tell.give(store, {
            to: "Ambrey Stallwood",
            on: "2012-03-16",
            grams: 1.2,
            kind: "return",
            purpose: "to widen what the winter left",
          });
          const narrow = hard?.lots[0];
          if (narrow)
            wide = tell.blend(
              [
                [narrow, 0.6],
                [back, 0.7],
              ],
              "Ambrey Stallwood",
              "2012-03-20",
              "Seven seed parents in 2011; half of this from the bag that had been in the cold since 2004.",
            );
        },
        spring: () =>
          wide && tell.sow({ by: "Ambrey Stallwood", from: [wide], plot: "ledge garden", plants: 66, shares: "equal" }),
      },
      2024: {
        winter: () => {
          tell.book.write("confirmations.csv", {
            variety: "Pothering Ledge",
            steward: "Gannerby Reading Room",
            on: "2024-02-03",
            still: "unknown",
            note: "the drawer was moved; nobody has found the packets yet",
          });
        },
      },
    });
  },
};
