import type { GrowOut } from "../telling/grow-out";
import type { Jar } from "../telling/jar";
import { tellYears } from "../telling/ordinary-years";
import type { Keeper, VarietyHistory } from "../telling/variety-history";
import { thirzaHandsOver } from "./hand-over";

const keepers: readonly Keeper[] = [
  {
    who: "Edda Sallowby",
    from: 1996,
    every: 4,
    gives: ["Thirza Orrick", "Gannerby Reading Room", "Cauldrith Hill Store"],
    plots: ["hen run"],
  },
  { who: "Thirza Orrick", from: 1998, to: 2020, every: 5, gives: ["Edda Sallowby"], plots: ["chapel wall"] },
  { who: "Tamsel Vike", from: 2018, every: 4, gives: ["Gannerby Reading Room"], plots: ["allotment 9"] },
];

/** A grey pea that everybody grew, and two tins of it without a label. */
export const peaQuillet: VarietyHistory = {
  variety: {
    name: "Quillet Grey",
    word: "Quillet",
    crop: "pea",
    story: "The field pea of the small plots, for porridge on Fridays. Edda Sallowby's family never bought another.",
    type: "Purple flower, grey-brown speckled seed with a black eye, vines to the chin.",
    seedCoat: ["speckle", "buff", "brown"],
    plantsWanted: 60,
    seedParentsWanted: 50,
    traits: [
      ["flower colour", "purple with a darker keel", "white or pink", "flower"],
      ["seed", "grey-brown, speckled, black eye", "no eye; green; wrinkled", "seed"],
      ["height", "120 to 160 cm", "below the knee", "leaf"],
    ],
    otherNames: [["Friday Grey", "local name", "Lasting End"]],
  },
  tell(tell) {
    const family = tell.founder({
      holder: "Edda Sallowby",
      year: "1995",
      on: "1996-01",
      grams: 820,
      other: "her family's own",
      notes: "saved on the farm every year; not known whether it is one line or many",
    });
    tell.detail(family, { origin: "own grow-out, before the notebook" });
    let tins: Jar[] = [];
    let home: Jar | undefined;
    let wide: Jar | undefined;
    let compared: GrowOut[] = [];
    tellYears(tell, [1996, 2026], keepers, {
      2009: {
        winter: () => {
          home = tell.newest("Edda Sallowby");
          home.kept = true;
          tins = ["the taller tin", "the flat tin"].map((which, place) =>
            tell.founder({
              holder: "Edda Sallowby",
              year: place === 0 ? "[1999..2006]" : "[1999..2007]",
              on: "2009-02",
              grams: place === 0 ? 310 : 145,
              other: "Nab Hurdlestone's shed",
              notes: `${which}: label gone, mice; Edda thinks Quillet Grey by the black eye; unknown before here`,
              lives: place === 0 ? 0.93 : 0.9,
              seedWeightUnknown: true,
            }),
          );
          for (const tin of tins) {
            tin.apart = true;
            tell.detail(tin, {
              status: "finished",
              status_reason: "label lost; grown apart in 2010, found the same, and blended in 2011",
              origin: "found",
              how_sure: "perhaps",
            });
            tell.test(tin, "2009-03-06");
          }
        },
      },
      2010: {
        spring: () => {
          for (const tin of tins)
            tell.weigh(tin, "2010-03-20", Math.floor(tin.grams * 9.9) / 10, "weighed before a part was sown");
          compared = tins.map((tin, place) =>
            tell.sow({
              by: "Edda Sallowby",
              from: [tin],
              plot: place === 0 ? "south border near row" : "south border far row",
              on: place === 0 ? "04-03" : "04-04",
              seeds: place === 0 ? 120 : 90,
              purpose: "compare",
              before: place === 0 ? 0 : 4,
              pulledFor: "white flower",
              shares: "equal",
              note: "Beside the home strain, to see whether it is the same.",
            }),
          );
          tell.saw("2010-06-11", "All purple with the dark keel, and the eye as it should be.", {
            growOut: compared[0]?.name,
            by: "Edda Sallowby",
          });
          tell.saw("2010-06-11", "Four white-flowered plants pulled before they opened further; the rest like ours.", {
            growOut: compared[1]?.name,
            value: 4,
            unit: "plants",
            by: "Edda Sallowby",
          });
        },
      },
      2011: {
        winter: () => {
          const seed = compared.flatMap(({ lots }) => lots);
          const [tall, flat] = seed;
          if (!home || !tall || !flat) return;
          wide = tell.blend(
            [
              [home, 60],
              [tall, 45],
              [flat, 20],
            ],
            "Edda Sallowby",
            "2011-03-09",
            "The tins were the same variety, kept apart from ours for who knows how long: the widest it has been in our time.",
          );
          wide.kept = true;
          home.kept = false;
          for (const tin of tins)
            tell.discard(tin, "2011-03-12", "what was left of the tins; their seed goes on in the blend");
          tell.detail(wide, { status: "share freely" });
        },
        spring: () =>
          wide && tell.sow({ by: "Edda Sallowby", from: [wide], plot: "hen run", plants: 72, shares: "equal" }),
      },
      2024: { winter: thirzaHandsOver },
    });
  },
};
