import type { GrowOut } from "../telling/grow-out";
import { tellYears } from "../telling/ordinary-years";
import { scorePlants } from "../telling/plants-scored";
import type { Keeper, VarietyHistory } from "../telling/variety-history";

const keepers: readonly Keeper[] = [
  {
    who: "Jossa Pellinder",
    from: 1997,
    every: 4,
    first: 1997,
    gives: ["Corvane Ashlock", "Gannerby Reading Room", "Cauldrith Hill Store"],
    plots: ["weir garden"],
  },
  {
    who: "Corvane Ashlock",
    from: 2003,
    to: 2020,
    every: 5,
    gives: ["Jossa Pellinder", "Gannerby Reading Room"],
    plots: ["brick yard"],
  },
  { who: "Tamsel Vike", from: 2018, every: 30, first: 2018, plots: ["ferry bank"] },
];

/** Seed of the fourteen plants of 2014 whose fruits were opened: three of them gave nearly two thirds. Grams a plant. */
const seedOf2014 = [118.4, 104.2, 86.1, 24.6, 22.8, 19.5, 17.2, 16.9, 14.4, 13.1, 11.8, 9.7, 8.2, 6.3] as const;

/** Seed of 2017, with as many seeds taken from each of the eleven. */
const seedOf2017 = [13.1, 13.4, 12.8, 13.0, 13.3, 12.6, 13.2, 12.9, 13.5, 12.7, 13.1] as const;

function sumOf(grams: readonly number[]): number {
  return Math.round(grams.reduce((sum, each) => sum + each, 0) * 10) / 10;
}

const rinds = ["slate", "slate", "slate", "ash", "green-grey"];
const forms = ["flat", "flat", "flat", "drum"];

/** A squash with a greedy mother in 2014 and a cross that was noticed two years too late. */
export const squashGreyAnvil: VarietyHistory = {
  variety: {
    name: "Grey Anvil",
    word: "Anvil",
    crop: "squash-maxima",
    story:
      "Flat enough to sit on, and sat on, at the Kestonhalse ram fair. Jossa Pellinder's keeping since the nineties.",
    type: "Flat drum, slate-grey, ribs shallow, flesh deep orange; keeps past Easter.",
    seedCoat: ["plain", "cream", "white"],
    cautions:
      "Taste a touch of every fruit that is to give seed, and spit. A bitter fruit ends that lot for seed and food; tell whoever had seed of it. The taste clears the plant, never its seed.",
    plantsWanted: 18,
    seedParentsWanted: 12,
    isolationWanted: 500,
    traits: [
      ["rind", "slate-grey, smooth", "orange, green or warted", "fruit"],
      ["shape", "flat drum", "round, turban", "fruit"],
      ["taste of the raw flesh", "sweet or plain", "bitter", "fruit"],
    ],
    otherNames: [["Ram Fair stool", "local name", "Kestonhalse"]],
  },
  tell(tell) {
    tell.founder({
      holder: "Jossa Pellinder",
      year: "1996-10",
      on: "1996-11-02",
      grams: 74,
      other: "two fruits bought at the ram fair",
      notes: "seed of two fruits, from one garden; unknown before here",
    });
    let greedy: GrowOut | undefined;
    let even: GrowOut | undefined;
    let crossed: GrowOut | undefined;
    let showing: GrowOut | undefined;
    tellYears(tell, [1996, 2026], keepers, {
      2014: {
        alone: true,
        spring: () => {
          greedy = tell.sow({
            by: "Jossa Pellinder",
            from: [tell.newest("Jossa Pellinder")],
            plot: "weir garden",
            seeds: 30,
            standing: 19,
            before: 1,
            after: 0,
            seedParents: 14,
            shares: "plants",
            foreign: 0,
            grams: sumOf(seedOf2014),
            note: "All the seed scraped into one bowl. Three plants on the old muck heap filled most of it.",
          });
        },
        autumn: () => {
          if (!greedy) return;
          scorePlants(tell, greedy, { plants: 18, kept: 14, grams: seedOf2014, colours: rinds, forms });
          tell.saw(
            "2014-10-19",
            "Three plants on the muck gave 309 of 473 g. Equal shares of the fourteen would have kept a third more.",
            {
              growOut: greedy.name,
              value: 65,
              unit: "percent of the seed from three plants",
              sure: "each weighed",
              by: "Jossa Pellinder",
            },
          );
        },
      },
      2017: {
        alone: true,
        spring: () => {
          even = tell.sow({
            by: "Jossa Pellinder",
            from: [tell.newest("Jossa Pellinder")],
            plot: "weir garden",
            seeds: 28,
            standing: 16,
            before: 1,
            after: 0,
            seedParents: 11,
            shares: "plants",
            foreign: 0,
            grams: sumOf(seedOf2017),
            note: "Fifty seeds from each fruit and no more.",
          });
        },
        autumn: () =>
          even && scorePlants(tell, even, { plants: 15, kept: 11, grams: seedOf2017, colours: rinds, forms }),
      },
      2018: {
        alone: true,
        spring: () => {
          crossed = tell.sow({
            by: "Corvane Ashlock",
            from: [tell.newest("Corvane Ashlock")],
            plot: "brick yard",
            plants: 14,
            foreign: 0.15,
            note: "Left to the bees in the hot summer; nobody taped a flower.",
          });
          tell.book.write("neighbours.csv", {
            grow_out: crossed.name,
            crop: "squash-maxima",
            what: "orange show squash behind the brick kiln",
            distance_metres: 110,
            bearing: "NE",
            plants: 4,
            window_first: "2018-06-25",
            window_last: "2018-08-30",
            how_sure: "told in 2019",
          });
        },
        autumn: () => {
          const jar = crossed?.lots[0];
          if (jar)
            tell.give(jar, {
              to: "Tamsel Vike",
              on: "2018-11-04",
              grams: 9.4,
              kind: "loan",
              replyDue: "2020-11-30",
              purpose: "a start",
              told: "easy; tape the flowers if there is other squash about",
            });
        },
      },
      2019: {
        spring: () => {
          showing = tell.sow({
            by: "Tamsel Vike",
            from: [tell.newest("Tamsel Vike")],
            plot: "ferry bank",
            seeds: 28,
            standing: 17,
            before: 0,
            after: 2,
            pulledFor: "orange, warted fruit",
            seedParents: 12,
            foreign: 0,
          });
        },
        autumn: () => {
          const jar = crossed?.lots[0];
          if (!jar || !showing) return;
          const found =
            "Two of seventeen plants from this seed bore orange, warted fruit in 2019: about one seed in seven had the show squash for a father.";
          tell.saw("2019-09-28", found, {
            growOut: showing.name,
            value: 2,
            unit: "plants of 17",
            sure: "seen by three people",
            by: "Tamsel Vike",
          });
          tell.warn(
            jar.lot,
            "suspected cross",
            `${found} Nothing bitter tasted so far; taste every fruit.`,
            "2019-10-01",
            "Tamsel Vike",
          );
          jar.apart = true;
          tell.detail(jar, {
            status: "hold",
            status_reason: "crossed with show squash in 2018",
            isolation_grade: "open",
            isolation_reasons: "110 m from four plants of an orange squash, bees, no taping",
          });
        },
      },
      2023: {
        spring: () =>
          tell.sow({
            by: "Tamsel Vike",
            from: [tell.newest("Tamsel Vike")],
            plot: "ferry bank",
            seeds: 34,
            standing: 20,
            before: 4,
            after: 1,
            pulledFor: "orange in the rind",
            seedParents: 9,
            foreign: 0,
            purpose: "compare",
            note: "To see how much orange is left: flowers taped among grey-fruited plants only, the rest pulled.",
          }),
      },
    });
  },
};
