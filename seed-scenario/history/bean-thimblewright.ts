import type { GrowOut } from "../telling/grow-out";
import type { Jar } from "../telling/jar";
import { tellYears } from "../telling/ordinary-years";
import type { Telling } from "../telling/telling";
import type { Keeper, VarietyHistory } from "../telling/variety-history";
import { thirzaHandsOver } from "./hand-over";

const keepers: readonly Keeper[] = [
  {
    who: "Thirza Orrick",
    from: 1997,
    to: 2021,
    every: 4,
    gives: ["Edda Sallowby", "Gannerby Reading Room"],
    plots: ["chapel wall"],
  },
  {
    who: "Edda Sallowby",
    from: 2003,
    every: 4,
    gives: ["Corvane Ashlock", "Gannerby Reading Room", "Cauldrith Hill Store"],
    plots: ["south border"],
  },
  { who: "Corvane Ashlock", from: 2008, to: 2019, every: 5, gives: ["Thirza Orrick"], plots: ["brick yard"] },
];

/** A bean that went down to the sea with a friend in 1999 and came home in 2023. */
export const beanThimblewright: VarietyHistory = {
  variety: {
    name: "Thimblewright",
    word: "Thimble",
    crop: "bean-common",
    story:
      "A dwarf bean that fits a thimble, five to the pod. Ottoline Frayle took a jar to the coast when she married.",
    type: "Stands without sticks; small round seed, white with a wine-red cap; flat green pods with no string.",
    seedCoat: ["two tones", "white", "wine"],
    cautions: "Not to be eaten raw: soak and boil hard, as for any dry bean.",
    plantsWanted: 40,
    seedParentsWanted: 35,
    traits: [
      ["seed", "white with a wine-red cap over a third", "all white; cap over more than half", "seed"],
      ["habit", "stands to the knee", "runs", "leaf"],
    ],
  },
  tell(tell) {
    const first = tell.founder({
      holder: "Thirza Orrick",
      year: "1995?",
      on: "1996-02",
      grams: 410,
      other: "the chapel ladies",
      notes: "a jam jar from the harvest table; unknown before here",
    });
    tell.detail(first, { origin: "received", founder_lines: "many" });
    tell.book.write("lineage_claims.csv", {
      ...{
        lot: first.lot,
        kind: "unknown before",
        words: "It stood on the harvest table; the chapel ladies are dead.",
      },
      ...{ teller: "Thirza Orrick", told_on: "2006-12-09", how_sure: "first hand", standing: "believed" },
      standing_reason: "nobody else remembers a giver",
    });
    let away: Jar | undefined;
    let home: GrowOut | undefined;
    let returned: Jar | undefined;
    let averil: GrowOut | undefined;
    let wide: Jar | undefined;
    tellYears(tell, [1996, 2026], keepers, {
      1997: {
        november: () => {
          away = tell.give(tell.newest("Thirza Orrick"), { to: "Ottoline Frayle", on: "1997-11-08", grams: 34 });
        },
      },
      1999: {
        spring: () => away && tell.sownElsewhere(away, "1999-05", "the terrace at Port Averil"),
      },
      2011: {
        alone: true,
        spring: () =>
          tell.sow({
            by: "Edda Sallowby",
            from: [tell.newest("Edda Sallowby")],
            plot: "hen run",
            seeds: 44,
            standing: 11,
            before: 0,
            after: 0,
            seedParents: 7,
            shares: "cv 0.8",
            seedsOfEach: 22,
            note: "The hens were in before the fence was up: seven plants left to seed, fewer than we ever meant to save from.",
          }),
      },
      2023: {
        november: () => {
          returned = tell.founder({
            holder: "Edda Sallowby",
            year: "2021~",
            on: "2023-11-06",
            grams: 96,
            other: "Ottoline Frayle, by parcel from Port Averil",
            notes: `from the seed that left the valley as ${away?.lot}; sown eleven or twelve times at Port Averil, never fewer than thirty plants, she says`,
            lives: 0.94,
          });
          returned.apart = true;
          tell.detail(returned, {
            status: "usable",
            status_reason: "come home in 2023; grown beside ours in 2024 and found the same",
            origin: "received",
          });
          tell.story(
            "I sowed it every other spring because it was the only thing in the garden that knew where I came from.",
            "Ottoline Frayle",
            { lot: returned.lot, writtenBy: "Edda Sallowby", told: "2023-11-12", about: "1999/2022" },
          );
          tellReturned(tell, { returned, away, first });
          tell.book.write("transfers.csv", {
            kind: "return",
            lot: away?.lot,
            new_lot: returned.lot,
            from_steward: "Ottoline Frayle",
            to_steward: "Edda Sallowby",
            on: "2023-11-06",
            amount: 96,
            unit: "g",
            purpose: "home again",
            note: "a strain of its own after twenty-four years",
          });
          tell.book.write("confirmations.csv", {
            variety: "Thimblewright",
            steward: "Ottoline Frayle",
            on: "2023-11-12",
            still: "yes",
            note: "two jars on the dresser, and the terrace sown again",
          });
        },
      },
      2024: {
        winter: (telling) => {
          thirzaHandsOver(telling);
          if (returned) tell.test(returned, "2024-03-24", { normal: [21] });
        },
        spring: () => {
          if (!returned) return;
          const common = { by: "Edda Sallowby", purpose: "compare", seeds: 56, plants: 40, shares: "equal" } as const;
          averil = tell.sow({ ...common, from: [returned], plot: "harbour row", on: "05-16", before: 0 });
          home = tell.sow({
            ...common,
            from: [tell.newest("Edda Sallowby")],
            plot: "home row",
            on: "05-16",
            before: 0,
          });
          tell.saw("2024-07-06", "Half in flower nine days before the home row. Seed, pod and habit the same.", {
            growOut: averil.name,
            value: 9,
            unit: "days",
            sure: "both rows looked at daily",
            by: "Edda Sallowby",
          });
        },
      },
      2025: {
        winter: () => {
          const [one, other] = [home?.lots[0], averil?.lots[0]];
          if (!one || !other) return;
          wide = tell.blend(
            [
              [one, 48],
              [other, 48],
            ],
            "Edda Sallowby",
            "2025-03-16",
            "Same by every mark after a season side by side; two lines that drifted in different directions for twenty-four years.",
          );
          tell.detail(wide, { status: "share freely" });
        },
        spring: () =>
          wide && tell.sow({ by: "Edda Sallowby", from: [wide], plot: "hen run", plants: 52, shares: "equal" }),
        november: () => {
          const seed = tell.newest("Edda Sallowby");
          for (const to of ["Tamsel Vike", "Cauldrith Hill Store", "Gannerby Reading Room"] as const)
            tell.give(seed, { to, on: "2025-11-15", grams: 32, purpose: "both lines together again" });
        },
      },
    });
  },
};

/** Two tell where the seed that came home had been: the traveller herself, and one who thinks she took hers from the table. */
function tellReturned(
  tell: Telling,
  { returned, away, first }: { readonly returned: Jar; readonly away: Jar | undefined; readonly first: Jar },
): void {
  const claim = { lot: returned.lot, kind: "descends from", steward: "Edda Sallowby", standing: "open" };
  tell.book.write("lineage_claims.csv", {
    ...claim,
    ...{
      parent_lot: away?.lot,
      words: "The same seed all the way, eleven times or twelve, out of the tin she gave me.",
    },
    ...{ teller: "Ottoline Frayle", told_on: "2023-11-12", how_sure: "first hand" },
    ...{ generations_first: 11, generations_last: 12 },
  });
  tell.book.write("lineage_claims.csv", {
    ...claim,
    ...{ parent_lot: first.lot, words: "She had a jar of her own off the harvest table, the year before she left." },
    ...{ teller: "Nan of the chapel house", told_on: "2024", how_sure: "told by another" },
    ...{ generations_first: 12, generations_last: 14 },
  });
}
