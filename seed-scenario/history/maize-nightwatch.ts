import type { GrowOut } from "../telling/grow-out";
import type { Jar } from "../telling/jar";
import { tellYears } from "../telling/ordinary-years";
import { scorePlants } from "../telling/plants-scored";
import type { Telling } from "../telling/telling";
import type { Keeper, VarietyHistory } from "../telling/variety-history";
import { thirzaHandsOver } from "./hand-over";

const keepers: readonly Keeper[] = [
  {
    who: "Jossa Pellinder",
    from: 1998,
    every: 4,
    gives: ["Thirza Orrick", "Cauldrith Hill Store", "Gannerby Reading Room"],
  },
  { who: "Hesk Dunnaby", from: 2005, every: 5, first: 2006, gives: ["Tamsel Vike", "Cauldrith Hill Store"] },
  { who: "Tamsel Vike", from: 2017, every: 4, first: 2019, gives: ["Gannerby Reading Room", "Jossa Pellinder"] },
];

/** A white flint maize: through the eye of a needle in the drought of 2002, widened again in 2005, met by yellow maize in 2012. */
export const maizeNightwatch: VarietyHistory = {
  variety: {
    name: "Gannerby Nightwatch",
    word: "Night",
    crop: "maize-field",
    story: "Roasted by whoever sat up with the ewes. Thirza Orrick had it from her mother's loft.",
    type: "Hard white flint, eight to ten rows, tallow-white to cream, never yellow; plants to the shoulder.",
    aim: "broad-and-alive",
    seedCoat: ["eye", "cream", "tan"],
    plantsWanted: 200,
    seedParentsWanted: 120,
    isolationWanted: 300,
    traits: [
      ["kernel colour", "tallow-white to cream", "yellow, blue or wrinkled kernels", "seed"],
      ["rows of kernels", "8 to 10", "12 or more", "fruit"],
      ["plant height", "120 to 170 cm", "higher than the eyes", "leaf"],
    ],
    otherNames: [
      ["Ewe-bread", "local name", "older people at Cleavehead"],
      ["Night Watch", "other spelling", "the first notebook"],
    ],
  },
  tell(tell) {
    const loft = tell.founder({
      holder: "Thirza Orrick",
      year: "1993~",
      on: "1996-03",
      grams: 640,
      other: "her mother's loft",
      notes: "two strings of ears, shelled in March; unknown before here",
      lives: 0.94,
    });
    loft.kept = true;
    tell.detail(loft, {
      year_words: "the last summer she climbed the ladder",
      origin: "found",
      original_sample: "yes",
      founder_lines: "many",
    });
    tell.story(
      "We were not to touch the white ears. They were for the nights with the ewes, and for seed.",
      "Thirza Orrick",
      { lot: loft.lot, writtenBy: "Mirabeth Undercroft", told: "2006-12-09", about: "195X" },
    );
    tellLoft(tell, loft);
    let crossed: GrowOut | undefined;
    let wide: Jar | undefined;
    tellYears(tell, [1996, 2026], keepers, {
      1996: {
        spring: () => tell.sow({ by: "Thirza Orrick", from: [loft], plot: "long strip", plants: 170 }),
        november: () =>
          tell.give(tell.newest("Thirza Orrick"), {
            to: "Jossa Pellinder",
            on: "1996-11-10",
            told: "keep it from the sweet maize",
          }),
      },
      2000: {
        spring: () =>
          tell.sow({
            by: "Thirza Orrick",
            from: [loft],
            plot: "long strip",
            seeds: 520,
            plants: 150,
            note: "Back to the loft ears while they still come up, rather than to the last copy of a copy.",
          }),
      },
      2002: {
        alone: true,
        spring: () => {
          const dry = tell.sow({
            by: "Jossa Pellinder",
            from: [tell.newest("Jossa Pellinder")],
            plot: "mill field",
            seeds: 330,
            standing: 41,
            before: 6,
            pulledFor: "dried up",
            after: 0,
            seedParents: 9,
            shares: "cv 0.7",
            foreign: 0,
            seedsOfEach: 42,
            note: "Watered from the mill race by bucket until the race was dry.",
          });
          tell.saw(
            "2002-09-28",
            "Nine ears with kernels enough to shell; the rest had silked after the pollen was gone.",
            {
              growOut: dry.name,
              value: 9,
              unit: "ears",
              sure: "counted",
              by: "Jossa Pellinder",
            },
          );
        },
      },
      2005: {
        winter: () => {
          const [old, narrow] = [tell.newest("Thirza Orrick"), tell.newest("Jossa Pellinder")];
          const reason =
            "Nine mothers in 2002 were too few; half of the seed from the line that never went through that year.";
          wide = tell.blend(
            [
              [old, 78],
              [narrow, 54],
            ],
            "Jossa Pellinder",
            "2005-03-12",
            reason,
          );
          tell.detail(wide, { status: "usable" });
        },
        spring: () =>
          wide &&
          tell.sow({
            by: "Jossa Pellinder",
            from: [wide],
            plot: "mill field",
            plants: 200,
            shares: "equal",
            foreign: 0,
          }),
      },
      2012: {
        spring: () => {
          crossed = tell.sow({
            by: "Jossa Pellinder",
            from: [tell.newest("Jossa Pellinder")],
            plot: "mill field",
            plants: 190,
            foreign: 0.045,
            foreignHow: "kernels of another colour counted: 52 of 1150; most of them on the ears of the west rows",
            shares: "equal",
            note: "Yellow fodder maize stood beyond the weir that year; nobody had asked.",
          });
          tell.book.write("neighbours.csv", {
            grow_out: crossed.name,
            crop: "maize-field",
            what: "yellow fodder maize beyond the weir",
            distance_metres: 170,
            bearing: "W",
            size_m2: 4000,
            window_first: "2012-07-20",
            window_last: "2012-08-09",
            how_sure: "paced out in October, too late",
          });
        },
        autumn: () => {
          const jar = crossed?.lots[0];
          if (!jar) return;
          jar.apart = true;
          const found =
            "Found at shelling: 52 yellow kernels among 1,150 looked at, most of them on the ears of the west rows.";
          tell.saw("2012-11-04", found, {
            lot: jar.lot,
            value: 52,
            unit: "kernels of 1150",
            sure: "counted",
            by: "Jossa Pellinder",
          });
          tell.warn(
            jar.lot,
            "suspected cross",
            `${found} Do not sow; do not pass on.`,
            "2012-11-04",
            "Jossa Pellinder",
            ["2014-03-02", "yellow kernels picked out and the rest fed; the next sowing was from the jar before it"],
          );
          tell.detail(jar, {
            status: "discarded",
            status_reason: "met yellow maize in 2012",
            isolation_grade: "open",
            isolation_reasons: "170 m from four thousand square metres of yellow maize in full tassel",
          });
        },
        november: () => {
          const jar = crossed?.lots[0];
          if (!jar) return;
          const told = "crossed: to look at, not to sow";
          tell.give(jar, {
            to: "Thirza Orrick",
            on: "2012-11-11",
            grams: 40,
            purpose: "to look at",
            told,
          }).apart = true;
        },
      },
      2014: {
        alone: true,
        winter: () => {
          const jar = crossed?.lots[0];
          if (jar) tell.discard(jar, "2014-03-02", "to the hens; white kernels and all");
        },
        spring: () => {
          const before = tell.newest("Hesk Dunnaby");
          const seed = tell.give(before, {
            to: "Jossa Pellinder",
            on: "2014-03-20",
            grams: 120,
            purpose: "from before the cross",
          });
          tell.sow({
            by: "Jossa Pellinder",
            from: [seed],
            plot: "weir garden",
            plants: 180,
            foreign: 0,
            shares: "equal",
          });
        },
      },
      2024: { winter: thirzaHandsOver },
      2025: {
        winter: () => {
          const jar = tell.newest("Jossa Pellinder");
          tell.weigh(jar, "2025-03-08", Math.round(jar.grams * 1.09), "weighed with the bag of rice in it, she thinks");
          tell.book.write("questions.csv", {
            kind: "balance",
            sentence: `${jar.lot} weighed more in March 2025 than its entries leave: with the bag of rice, or is a jar missing from the notebook?`,
            variety: tell.variety.name,
            lot: jar.lot,
            raised_at: "2025-03-08T18:05:00Z",
          });
        },
      },
      2026: {
        spring: () => {
          const white = tell.sow({
            by: "Jossa Pellinder",
            from: [tell.newest("Jossa Pellinder")],
            plot: "mill field",
            plants: 190,
            shares: "equal",
            foreign: 0.005,
            detasselled: { plants: 60, seedParents: 60 },
            note: "Two rows of every six had their tassels taken before they shed. Forty plants flagged by the time they tasselled, from all four blocks.",
          });
          scorePlants(tell, white, {
            plants: 40,
            kept: 34,
            flowers: 68,
            forms: ["8 rows", "8 rows", "10 rows", "12 rows"],
          });
        },
        alone: true,
        november: () => tell.test(tell.newest("Jossa Pellinder"), "2026-11-15", { running: true }),
      },
    });
  },
};

/** Where the ears in the loft had come from, two people tell in two ways. */
function tellLoft(tell: Telling, { lot }: Jar): void {
  const written = { lot, kind: "descends from", steward: "Mirabeth Undercroft", standing: "open" };
  tell.book.write("lineage_claims.csv", {
    ...written,
    words: "My mother had it from the drovers’ wives who wintered at Cleavehead, before the first war.",
    teller: "Thirza Orrick",
    told_on: "2006-12-09",
    how_sure: "told by the person",
    generations_first: 8,
    generations_last: 20,
  });
  tell.book.write("lineage_claims.csv", {
    ...written,
    words: "Her mother bought that seed of my father, out of the shop, and he had it off a boat.",
    teller: "the son of the shop at Gannerby",
    told_on: "2011",
    how_sure: "told by another",
  });
}
