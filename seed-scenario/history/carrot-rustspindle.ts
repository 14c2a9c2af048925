import type { GrowOut } from "../telling/grow-out";
import { tellYears } from "../telling/ordinary-years";
import { scorePlants } from "../telling/plants-scored";
import type { Keeper, VarietyHistory } from "../telling/variety-history";

const keepers: readonly Keeper[] = [
  { who: "Mirabeth Undercroft", from: 1996, to: 2005, every: 3, gives: ["Hesk Dunnaby"], plots: ["lower quillet"] },
  {
    who: "Hesk Dunnaby",
    from: 2001,
    every: 3,
    gives: ["Mirabeth Undercroft", "Cauldrith Hill Store", "Gannerby Reading Room"],
    plots: ["stone croft"],
  },
  {
    who: "Mirabeth Undercroft",
    from: 2012,
    every: 3,
    first: 2012,
    gives: ["Gannerby Reading Room", "Hesk Dunnaby"],
    plots: ["orchard beds"],
  },
];

/** A carrot beside a lane full of wild carrot. The white roots were found two years after the cross. */
export const carrotRustspindle: VarietyHistory = {
  variety: {
    name: "Rustspindle",
    word: "Rust",
    crop: "carrot",
    story: "Long as a spindle and the colour of the gate hinge. The cellar at Cross House was dug for it.",
    type: "Root long, thin, rust-red to the core; shoulder below the soil; never white, never forked by nature.",
    seedCoat: ["stripe", "tan", "brown"],
    cautions: "The sap of the tops and sun together burn the skin: sleeves and gloves, and cut on a dull day.",
    plantsWanted: 140,
    seedParentsWanted: 60,
    isolationWanted: 1000,
    traits: [
      ["root colour", "rust-red through to the core", "white or yellow; pale core", "root"],
      ["root shape", "long spindle, single", "forked, stubby", "root"],
      ["first year", "no flower", "bolts in the first year", "flower"],
    ],
  },
  tell(tell) {
    tell.founder({
      holder: "Mirabeth Undercroft",
      year: "1995",
      on: "1996-03-09",
      grams: 19,
      other: "the last market gardener of Gannerby",
      notes: "a paper cone, from heads grown for his own use",
    });
    let met: GrowOut | undefined;
    tellYears(tell, [1996, 2026], keepers, {
      2006: {
        alone: true,
        spring: () => {
          met = tell.sow({
            by: "Mirabeth Undercroft",
            from: [tell.newest("Mirabeth Undercroft")],
            plot: "lower quillet",
            plants: 150,
            foreign: 0.08,
            note: "The lane was not mown in the wet summer of 2007.",
          });
          tell.book.write("neighbours.csv", {
            grow_out: met.name,
            crop: "carrot",
            what: "wild carrot along the unmown lane",
            distance_metres: 60,
            bearing: "SW",
            plants: 200,
            window_first: "2007-06-20",
            window_last: "2007-08-20",
            how_sure: "remembered two years later",
          });
        },
      },
      2009: {
        spring: () => {
          const jar = met?.lots[0];
          if (!jar) return;
          const shown = tell.sow({
            by: "Mirabeth Undercroft",
            from: [jar],
            plot: "orchard beds",
            plants: 160,
            standing: 160,
            before: 88,
            pulledFor: "white, pale or early",
            foreign: 0,
            note: "Every root looked at when it was lifted; all white, pale and early ones thrown out before they could flower.",
          });
          const found =
            "Found at lifting: 13 white or pale roots among 160, and nine that had flowered in the first year.";
          tell.saw("2009-10-24", found, {
            growOut: shown.name,
            value: 13,
            unit: "roots of 160",
            sure: "counted",
            by: "Mirabeth Undercroft",
          });
          tell.warn(
            jar.lot,
            "suspected cross",
            `${found} Wild carrot, from 2007.`,
            "2009-10-24",
            "Mirabeth Undercroft",
            ["2016-01-15", "no white root in two grow-outs since"],
          );
          tell.detail(jar, { status: "discarded", status_reason: "wild carrot in 2007", isolation_grade: "open" });
        },
      },
      2020: {
        alone: true,
        spring: () => {
          const lost = tell.sow({
            by: "Hesk Dunnaby",
            from: [tell.newest("Hesk Dunnaby")],
            plot: "stone croft",
            plants: 150,
            standing: 138,
            outcome: "roots eaten by voles in the clamp, winter 2020/21; none left to replant",
          });
          tell.saw("2021-02-11", "Opened the clamp: a hundred and thirty-eight roots put down, crumbs left.", {
            growOut: lost.name,
            by: "Hesk Dunnaby",
          });
        },
      },
      2026: {
        spring: () => {
          const roots = tell.sow({
            by: "Mirabeth Undercroft",
            from: [tell.newest("Mirabeth Undercroft")],
            plot: "lower quillet",
            plants: 170,
            purpose: "increase",
            note: "Roots lifted in October and laid in sand; to be replanted in March.",
          });
          scorePlants(tell, roots, {
            plants: 60,
            kept: 42,
            colours: ["rust-red", "rust-red", "rust-red", "orange", "pale core"],
            forms: ["spindle", "spindle", "short", "forked"],
          });
        },
      },
    });
  },
};
