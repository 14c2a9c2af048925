import { tellYears } from "../telling/ordinary-years";
import type { Keeper, VarietyHistory } from "../telling/variety-history";

const keepers: readonly Keeper[] = [
  {
    who: "Mirabeth Undercroft",
    from: 1996,
    every: 4,
    gives: ["Edda Sallowby", "Gannerby Reading Room", "Cauldrith Hill Store"],
    plots: ["orchard beds"],
  },
  {
    who: "Edda Sallowby",
    from: 2001,
    to: 2016,
    every: 5,
    gives: ["Gannerby Reading Room", "Mirabeth Undercroft"],
    plots: ["south border"],
  },
];

/** A lettuce that is easy to keep, and that most borrowers bring back. */
export const lettuceDustSlipper: VarietyHistory = {
  variety: {
    name: "Dust Slipper",
    word: "Slipper",
    crop: "lettuce",
    story: "Sown on the path by whoever came last out of the chapel; it came up where people had walked.",
    type: "Loose bronze-edged rosette, white seed, slow to bolt; never a green rib.",
    seedCoat: ["plain", "white", "slate"],
    plantsWanted: 24,
    seedParentsWanted: 20,
    traits: [
      ["leaf edge", "bronze from the eighth leaf", "all green", "leaf"],
      ["bolting", "after midsummer", "before the rest", "flower"],
      ["seed", "white to silver", "black", "seed"],
    ],
  },
  tell(tell) {
    tell.founder({
      holder: "Mirabeth Undercroft",
      year: "1992/1994",
      on: "1996-03-02",
      grams: 5.2,
      other: "the chapel path",
      notes: "swept up over three summers into one envelope; unknown before here",
      lives: 0.9,
    });
    tellYears(tell, [1996, 2026], keepers, {
      2013: {
        winter: () =>
          tell.saw(
            "2013-02-20",
            "At 24 °C on the boiler hardly anything came; the same seed at 15 °C in the porch nearly all. Dormant, not dead.",
            {
              by: "Mirabeth Undercroft",
            },
          ),
      },
      2017: {
        autumn: () => {
          const own = tell.newest("Mirabeth Undercroft");
          const back = tell.founder({
            holder: "Gannerby Reading Room",
            year: "2017-09",
            on: "2017-10-14",
            grams: 2.4,
            other: "a reader, Pothering",
            notes: "brought back by a borrower: five plants, beside the reader's own red lettuce; kept apart",
            seedWeightUnknown: true,
          });
          back.apart = true;
          tell.detail(back, {
            status: "circle only",
            status_reason: "came back from five plants; not for the counter",
            origin: "received",
          });
          tell.book.write("transfers.csv", {
            kind: "return",
            lot: own.lot,
            new_lot: back.lot,
            to_steward: "Gannerby Reading Room",
            on: "2017-10-14",
            amount: 2.4,
            unit: "g",
            note: "the reader's name is not kept",
          });
        },
      },
    });
  },
};
