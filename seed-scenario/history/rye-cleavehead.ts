import { tellYears } from "../telling/ordinary-years";
import type { Keeper, VarietyHistory } from "../telling/variety-history";
import { nabsShed } from "./hand-over";

const keepers: readonly Keeper[] = [
  { who: "Nab Hurdlestone", from: 1996, to: 2005, every: 3, gives: ["Hesk Dunnaby"], plots: ["cleave field"] },
  {
    who: "Hesk Dunnaby",
    from: 2000,
    every: 3,
    gives: ["Cauldrith Hill Store", "Tamsel Vike", "Gannerby Reading Room"],
  },
  { who: "Tamsel Vike", from: 2019, every: 3, gives: ["Orlo Brackstane"], plots: ["ferry bank"] },
];

/** A tall rye that came with a farm: nobody knows from where. Its harvest of 2007 stood in the flood. */
export const ryeCleavehead: VarietyHistory = {
  variety: {
    name: "Cleavehead Tall",
    word: "Cleave",
    crop: "rye",
    story: "Came with the farm when Nab Hurdlestone's father took it. For thatch first, for bread second.",
    type: "Straw above a man's hat, thin green-grey grain, nodding heads; never short, never early.",
    aim: "broad-and-alive",
    seedCoat: ["stripe", "tan", "slate"],
    cautions:
      "Look every harvest over for black ergot bodies before it is sown, eaten or fed; follow your local rules for grain that has any.",
    plantsWanted: 250,
    seedParentsWanted: 150,
    isolationWanted: 300,
    traits: [
      ["straw", "150 to 190 cm", "below the belt", "leaf"],
      ["grain colour", "green-grey to tan", "yellow, plump grain", "seed"],
    ],
    otherNames: [["Thatch rye", "local name", "Hesk Dunnaby"]],
  },
  tell(tell) {
    const first = tell.founder({
      holder: "Nab Hurdlestone",
      year: "[1993..1995]",
      on: "1996~",
      grams: 1900,
      other: "came with the farm",
      notes: "unknown before here; sown and saved on the farm for longer than anybody remembers",
      seedWeightUnknown: true,
      lives: 0.94,
    });
    tell.detail(first, {
      year_words: "one of the dry harvests before the tractor",
      origin: "came with the farm",
      how_sure: "told, not seen",
    });
    tell.story(
      "My father measured a farm by its straw. This one stood over his hat, so he signed.",
      "Nab Hurdlestone",
      { lot: first.lot, writtenBy: "Hesk Dunnaby", told: "2004-11", about: "194X" },
    );
    tellYears(tell, [1996, 2026], keepers, {
      2003: {
        november: () =>
          tell.give(tell.newest("Hesk Dunnaby"), { to: "Cauldrith Hill Store", on: "2003-11-12", grams: 22 }),
      },
      2006: {
        alone: true,
        autumn: () => {
          const lost = tell.sow({
            by: "Hesk Dunnaby",
            from: [tell.newest("Hesk Dunnaby")],
            plot: "barn acre",
            plants: 320,
            standing: 318,
            outcome: "stood in the flood of July 2007, lodged and sprouted in the ear; nothing kept",
          });
          tell.saw("2007-07-24", "Water to the lowest ears for six days. What could be reached had sprouted.", {
            growOut: lost.name,
            sure: "seen",
            by: "Hesk Dunnaby",
          });
        },
      },
      2008: {
        autumn: () =>
          tell.sow({
            by: "Hesk Dunnaby",
            from: [tell.newest("Hesk Dunnaby")],
            plot: "stone croft",
            seeds: 640,
            note: "Sown thick from what was left; half of it came up.",
          }),
      },
      2009: {
        winter: () => {
          const [tin] = tell.jarsOf("Nab Hurdlestone");
          if (tin) nabsShed(tell, tin, "Hesk Dunnaby", "the last tin of Nab's own; too old to hope for much");
        },
      },
      2025: {
        autumn: () => {
          const jar = tell.newest("Hesk Dunnaby");
          tell.saw(
            "2025-08-30",
            "Black ergot bodies among the grain, five in the kilogram looked through; floated off in brine, twice.",
            {
              lot: jar.lot,
              value: 5,
              unit: "bodies a kilogram",
              sure: "counted",
              by: "Hesk Dunnaby",
            },
          );
          tell.warn(
            jar.lot,
            "ergot",
            "Ergot found at threshing. For sowing only, after cleaning; none of it to be eaten or fed; local rules decide.",
            "2025-08-30",
            "Hesk Dunnaby",
          );
        },
      },
      2026: {
        autumn: () =>
          tell.sow({ by: "Hesk Dunnaby", from: [tell.newest("Hesk Dunnaby")], plot: "stone croft", plants: 300 }),
      },
    });
  },
};
