import { countDaysToFlower } from "../telling/days-to-flower";
import type { Jar } from "../telling/jar";
import { tellYears } from "../telling/ordinary-years";
import { scorePlants } from "../telling/plants-scored";
import type { Keeper, VarietyHistory } from "../telling/variety-history";

const keepers: readonly Keeper[] = [
  { who: "Corvane Ashlock", from: 1996, to: 2004, every: 4, gives: ["Mirabeth Undercroft"], plots: ["glasshouse"] },
  {
    who: "Corvane Ashlock",
    from: 2010,
    every: 4,
    gives: ["Gannerby Reading Room", "Tamsel Vike", "Cauldrith Hill Store"],
    plots: ["glasshouse"],
  },
  {
    who: "Mirabeth Undercroft",
    from: 2001,
    every: 6,
    gives: ["Gannerby Reading Room", "Corvane Ashlock"],
    plots: ["orchard beds"],
  },
  { who: "Tamsel Vike", from: 2017, every: 4, gives: ["Gannerby Reading Room"], plots: ["ferry bank"] },
];

/** Days to flower in the glasshouse, and of what stood there as a check: a cold spring holds both back. */
export const yearsBesideCheck = [
  { year: 2010, own: 67.4, check: 67 },
  { year: 2014, own: 70.8, check: 71 },
  { year: 2018, own: 62.6, check: 63.5 },
  { year: 2022, own: 68, check: 69 },
  { year: 2026, own: 63.5, check: 65.5 },
] as const;

/** A tomato whose jar lost its label in the flood of 2007, and which came through the blight of 2024 on three plants. */
export const tomatoLateLamp: VarietyHistory = {
  variety: {
    name: "Late Lamp",
    word: "Lamp",
    crop: "tomato",
    story: "Ripens on the sill when the lamps are lit. Corvane Ashlock's aunt grew it behind glass at the ferry.",
    type: "Long yellow fruit with a nipple, ripening from the inside; leaf thin and drooping.",
    seedCoat: ["plain", "buff", "yellow"],
    plantsWanted: 16,
    seedParentsWanted: 12,
    traits: [
      ["fruit colour", "yellow, green shoulder until late", "red or orange", "fruit"],
      ["fruit shape", "long with a nipple", "round", "fruit"],
      ["leaf", "thin, drooping", "leaf of a potato", "leaf"],
    ],
  },
  tell(tell) {
    tell.founder({
      holder: "Corvane Ashlock",
      year: "1995-09",
      on: "1996-01-20",
      grams: 3.4,
      other: "his aunt at the ferry",
      notes: "a twist of newspaper; six plants each year, as she told it",
      inbreeding: 0.95,
    });
    let washed: Jar | undefined;
    let beforeBlight: Jar | undefined;
    tellYears(tell, [1996, 2026], keepers, {
      2005: {
        spring: () =>
          tell.sow({ by: "Corvane Ashlock", from: [tell.newest("Corvane Ashlock")], plot: "glasshouse", plants: 14 }),
      },
      2006: {
        spring: () =>
          tell.sow({ by: "Corvane Ashlock", from: [tell.newest("Corvane Ashlock")], plot: "glasshouse", plants: 14 }),
      },
      2007: {
        autumn: () => {
          const [newer, older] = tell.jarsOf("Corvane Ashlock");
          for (const jar of [newer, older])
            if (jar)
              tell.discard(
                jar,
                "2007-08-05",
                "the shelf stood in water; of two jars one was saved, and nobody can say which",
              );
          washed = tell.founder({
            holder: "Corvane Ashlock",
            year: "[2005..2006]",
            on: "2007-08-06",
            grams: 1.1,
            other: "off his own flooded shelf",
            notes: `label washed off in July 2007: either ${newer?.lot} or ${older?.lot}; parents not sure, so none are written`,
            lives: 0.78,
            seedWeightUnknown: true,
          });
          tell.detail(washed, { origin: "own grow-out", how_sure: "one of two", status: "usable" });
          tell.saw("2007-08-05", "Pencil would have stayed. The ink is a blue cloud.", {
            lot: washed.lot,
            by: "Corvane Ashlock",
          });
        },
      },
      2008: {
        winter: () => washed && tell.test(washed, "2008-02-14"),
        spring: () =>
          washed &&
          tell.sow({
            by: "Corvane Ashlock",
            from: [washed],
            plot: "glasshouse",
            plants: 16,
            seeds: 40,
            shares: "equal",
          }),
      },
      2024: {
        alone: true,
        spring: () => {
          beforeBlight = tell.newest("Tamsel Vike");
          beforeBlight.kept = true;
          tell.sow({
            by: "Tamsel Vike",
            from: [beforeBlight],
            plot: "ferry bank",
            seeds: 28,
            standing: 15,
            before: 0,
            after: 11,
            pulledFor: "blight",
            seedParents: 3,
            shares: "equal",
            seedsOfEach: 160,
            note: "Blight took eleven of fifteen before a fruit was ripe, and the slugs one. Three is half of the floor for a tomato; grow it again soon from the older jar.",
          });
        },
      },
      2026: {
        spring: () => {
          if (!beforeBlight) return;
          const again = tell.sow({
            by: "Tamsel Vike",
            from: [beforeBlight],
            plot: "allotment 9",
            plants: 16,
            shares: "equal",
            note: "From the jar before the blight.",
          });
          scorePlants(tell, again, { plants: again.counts.standing, kept: again.counts.seedParents, flowers: 66 });
        },
      },
    });
    for (const { year, own } of yearsBesideCheck) {
      const growOut = tell.growOut(`Lamp ${year} glasshouse`);
      const { standing, seedParents } = growOut.counts;
      countDaysToFlower(tell.book, growOut, { mean: own, plants: standing, kept: seedParents });
    }
  },
};
