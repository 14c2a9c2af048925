import { tellYears } from "../telling/ordinary-years";
import type { Keeper, VarietyHistory } from "../telling/variety-history";
import { thirzaHandsOver } from "./hand-over";

const keepers: readonly Keeper[] = [
  {
    who: "Thirza Orrick",
    from: 1996,
    to: 2021,
    every: 4,
    gives: ["Edda Sallowby", "Gannerby Reading Room"],
    plots: ["chapel wall"],
  },
  {
    who: "Edda Sallowby",
    from: 2002,
    every: 4,
    gives: ["Thirza Orrick", "Cauldrith Hill Store", "Gannerby Reading Room"],
    plots: ["hen run"],
  },
  { who: "Tamsel Vike", from: 2024, every: 4, first: 2025, gives: ["Gannerby Reading Room"], plots: ["allotment 9"] },
];

/** A runner bean on the chapel wall, lifted and replanted as roots in one year. */
export const runnerBellrope: VarietyHistory = {
  variety: {
    name: "Chapel Bellrope",
    word: "Bellrope",
    crop: "bean-runner",
    story: "Climbed the bell rope of the chapel at Over Sennick the year the ringer was ill, and nobody cut it down.",
    type: "Scarlet flower, pods longer than a hand and rough; seed violet with black marbling.",
    seedCoat: ["speckle", "violet", "black"],
    cautions: "Pods and seed are not to be eaten raw: boil them hard.",
    plantsWanted: 40,
    seedParentsWanted: 30,
    isolationWanted: 400,
    traits: [
      ["flower", "scarlet", "white, or red and white", "flower"],
      ["seed", "violet, marbled black", "white; all black", "seed"],
    ],
  },
  tell(tell) {
    tell.founder({
      holder: "Thirza Orrick",
      year: "1995-10",
      on: "1996-01-06",
      grams: 980,
      other: "off the chapel wall",
      notes: "the chapel had them before the oldest member; unknown before here",
    });
    tellYears(tell, [1996, 2026], keepers, {
      2011: {
        spring: () =>
          tell.sow({
            by: "Thirza Orrick",
            from: [tell.newest("Thirza Orrick")],
            plot: "long strip",
            plants: 36,
            foreign: 0.03,
            note: "Roots of the year before were replanted among the seedlings where they had come through the winter in sand.",
          }),
      },
      2016: {
        spring: () => {
          const few = tell.sow({
            by: "Edda Sallowby",
            from: [tell.newest("Edda Sallowby")],
            plot: "south border",
            seeds: 34,
            standing: 21,
            before: 5,
            pulledFor: "white flower",
            after: 1,
            seedParents: 11,
            shares: "cv 0.6",
            foreign: 0.06,
            note: "White flowers from the poles across the lane; five whites pulled, below the floor of plants afterwards.",
          });
          tell.book.write("neighbours.csv", {
            grow_out: few.name,
            crop: "bean-runner",
            what: "white-flowered runners on poles across the lane",
            distance_metres: 35,
            bearing: "S",
            plants: 24,
            window_first: "2016-07-02",
            window_last: "2016-09-10",
            how_sure: "counted",
          });
        },
      },
      2022: {
        november: () => {
          const left = tell.founder({
            holder: "Gannerby Reading Room",
            on: "2022-11-19",
            grams: null,
            notes:
              "a jam jar of runner beans left on the counter, a note says Bellrope; not weighed yet, year not known; unknown before here",
            seedWeightUnknown: true,
          });
          left.apart = true;
          tell.detail(left, {
            status: "quarantine",
            status_reason: "nobody knows who brought it",
            origin: "found",
            how_sure: "perhaps",
          });
        },
      },
      2024: { winter: thirzaHandsOver },
      2026: {
        alone: true,
        spring: () =>
          tell.sow({
            by: "Edda Sallowby",
            from: [tell.newest("Edda Sallowby")],
            plot: "hen run",
            seeds: 44,
            standing: 15,
            before: 1,
            after: 0,
            seedParents: 9,
            shares: "cv 0.4",
            note: "Slugs took two thirds in the wet May; nine plants gave seed, below the floor.",
          }),
        november: () => tell.test(tell.newest("Edda Sallowby"), "2026-11-16", { running: true }),
      },
    });
  },
};
