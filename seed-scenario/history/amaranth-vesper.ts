import { tellYears } from "../telling/ordinary-years";
import type { Keeper, VarietyHistory } from "../telling/variety-history";

const keepers: readonly Keeper[] = [{ who: "Hesk Dunnaby", from: 2009, every: 4, first: 2010, plots: ["stone croft"] }];

/** The sole copy: an amaranth from a dead man's shed, in one barn, with one man. */
export const amaranthVesper: VarietyHistory = {
  variety: {
    name: "Vesper Tassel",
    word: "Vesper",
    crop: "amaranth-grain",
    story:
      "A tin on the top shelf at Cleavehead said VESPER in pencil, and nothing else. Nobody living had seen it grow.",
    type: "Wine-red hanging plume to the knee, cream seed; leaf red beneath.",
    aim: "broad-and-alive",
    seedCoat: ["plain", "cream", "pink"],
    sensitivity: "held",
    plantsWanted: 80,
    seedParentsWanted: 50,
    isolationWanted: 325,
    traits: [
      ["plume", "wine-red, hanging", "green, upright", "flower"],
      ["seed", "cream", "black", "seed"],
    ],
    note: "In one pair of hands and one building. Somebody else should have it before another winter.",
  },
  tell(tell) {
    const tin = tell.founder({
      holder: "Hesk Dunnaby",
      year: "199X",
      on: "2009-02",
      grams: 21,
      other: "Nab Hurdlestone's shed",
      notes: "a tin marked VESPER; unknown before here",
      lives: 0.93,
      seedWeightUnknown: true,
    });
    tell.detail(tin, {
      origin: "found",
      original_sample: "yes",
      how_sure: "the name is on the tin, nothing else is known",
    });
    tellYears(tell, [2009, 2026], keepers, {
      2009: {
        alone: true,
        winter: () => tell.test(tin, "2009-03-02", { normal: [14, 11] }),
        spring: () =>
          tell.sow({
            by: "Hesk Dunnaby",
            from: [tin],
            plot: "stone croft",
            seeds: 220,
            standing: 31,
            before: 0,
            after: 2,
            seedParents: 24,
            shares: "cv 0.6",
            selfing: 0.8,
            note: "Everything that came up was kept.",
          }),
      },
      2014: {
        autumn: () =>
          tell.story(
            "I do not know what Nab meant to do with it. It stands in the barn door at dusk and the hens walk round it.",
            "Hesk Dunnaby",
            { writtenBy: "Tamsel Vike", told: "2016-10-30", about: "2014" },
          ),
      },
      2026: {
        november: () => tell.test(tell.newest("Hesk Dunnaby"), "2026-11-12", { running: true }),
        winter: () =>
          tell.warn(
            null,
            "one place",
            "One keeper, one barn: a fire would be the end of it. Wanted: a second keeper and a bag for the hill.",
            "2026-01-12",
            "Tamsel Vike",
          ),
      },
    });
  },
};
