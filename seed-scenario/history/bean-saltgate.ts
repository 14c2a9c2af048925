import type { Jar } from "../telling/jar";
import { tellYears } from "../telling/ordinary-years";
import type { Telling } from "../telling/telling";
import type { Keeper, VarietyHistory } from "../telling/variety-history";

const keepers: readonly Keeper[] = [
  {
    who: "Corvane Ashlock",
    from: 1996,
    every: 4,
    gives: ["Ambrey Stallwood", "Gannerby Reading Room", "Cauldrith Hill Store"],
    plots: ["brick yard"],
  },
  {
    who: "Ambrey Stallwood",
    from: 2004,
    to: 2019,
    every: 5,
    gives: ["Gannerby Reading Room", "Corvane Ashlock"],
    plots: ["quarry floor"],
  },
  { who: "Hesk Dunnaby", from: 2014, every: 4, first: 2014, gives: ["Tamsel Vike"], plots: ["stone croft"] },
];

/** A broad bean that selfs and crosses by halves. One of its keepers has not answered since 2021. */
export const beanSaltgate: VarietyHistory = {
  variety: {
    name: "Saltgate Pocket",
    word: "Pocket",
    crop: "bean-broad",
    story:
      "Carried in the coat pocket against cramp by the carters of the salt road, and planted when the pocket wore through.",
    type: "Small brown-violet bean, two or three to the pod, white flower with a full black blotch.",
    seedCoat: ["plain", "violet", "brown"],
    cautions: "Some people must not eat broad beans at all; say so with every packet.",
    plantsWanted: 50,
    seedParentsWanted: 40,
    isolationWanted: 200,
    traits: [
      ["seed colour", "violet-brown, darkening", "green or buff", "seed"],
      ["flower", "white with a full black blotch", "blotch missing or brown", "flower"],
    ],
  },
  tell(tell) {
    const carters = tell.founder({
      holder: "Corvane Ashlock",
      year: "1994",
      on: "1996-02-18",
      grams: 1350,
      other: "his uncle, last of the carters",
      notes: "never bought in; the uncle's own row for forty years",
    });
    tell.detail(carters, { origin: "received", founder_lines: "many" });
    tellTwice(tell, carters);
    tellYears(tell, [1996, 2026], keepers, {
      2008: {
        spring: () =>
          tell.sow({
            by: "Corvane Ashlock",
            from: [tell.newest("Corvane Ashlock")],
            plot: "glasshouse",
            plants: 24,
            selfing: 0.9,
            foreign: 0,
            shares: "equal",
            note: "Under glass with the doors netted: no bees, so nearly all of it selfed.",
          }),
        alone: true,
      },
      2012: {
        spring: () =>
          tell.sow({
            by: "Corvane Ashlock",
            from: [tell.newest("Corvane Ashlock")],
            selfing: 0.45,
            foreign: 0.02,
            plot: "brick yard",
            note: "Hives next door that year; taken as half crossed.",
          }),
        alone: true,
      },
      2021: {
        november: () => {
          tell.book.write("promises.csv", {
            variety: "Saltgate Pocket",
            steward: "Ambrey Stallwood",
            words: "will sow what is left and send some back",
            due: "2023-11-30",
          });
        },
      },
    });
  },
};

/** Ambrey Stallwood had written the same jar into her own list of who has what: two records of one lot. */
function tellTwice(tell: Telling, carters: Jar): void {
  const lot = "Pocket of the carters";
  tell.book.write("lots.csv", {
    ...{ lot, variety: tell.variety.name, holder: "Corvane Ashlock", year: "1994", kind: "founder" },
    notes: "from Ambrey’s list of who has what, 1998",
  });
  tell.book.write("lot_details.csv", { lot, origin: "received", founder_lines: "many", same_as: carters.lot });
  tell.book.write("tests.csv", {
    ...{ test: `${lot} test`, lot, date: "1998-03", replicate: "1", sown: 10, day: 10, normal: 6 },
  });
  tell.story("He let me count ten out of his jar on the kitchen table, and six came up.", "Ambrey Stallwood", {
    lot,
    told: "1998",
  });
}
