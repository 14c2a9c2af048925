import { countDaysToFlower } from "../telling/days-to-flower";
import type { VarietyHistory } from "../telling/variety-history";
import { yearsBesideCheck } from "./tomato-late-lamp";

/** A tomato that is kept for nothing but to stand beside another: one tin in the freezer, sown in the same glasshouse, never saved from. */
export const tomatoLockhouse: VarietyHistory = {
  variety: {
    name: "Lockhouse Plain",
    word: "Lock",
    crop: "tomato",
    story:
      "Round, red and dull. It is grown to be looked at beside Late Lamp, so that a cold spring is not taken for a change.",
    type: "Round red fruit the size of a hen's egg; leaf broad.",
    seedCoat: ["plain", "buff", "tan"],
    traits: [["fruit", "round, red", "long or yellow", "fruit"]],
  },
  tell(tell) {
    const packet = (year: string, on: string) => {
      const jar = tell.founder({
        holder: "Corvane Ashlock",
        ...{ year, on, grams: 1.6, other: "the lock keeper's widow", inbreeding: 0.95, lives: 0.95 },
        notes: "kept for a check: sown beside Late Lamp and never saved from",
      });
      tell.detail(jar, { origin: "received", founder_lines: "one", status: "usable", treatment: "none" });
      tell.test(jar, `${on.slice(0, 4)}-02-06`, { normal: [23] });
      return jar;
    };
    const first = packet("2009-09", "2010-01-16");
    let second = first;
    for (const { year, check } of yearsBesideCheck) {
      tell.year = year;
      if (year === 2022) {
        tell.discard(first, "2021-03-06", "twelve years old; the widow sent a new packet of the same");
        second = packet("2020-09", "2021-01-23");
        const part = tell.give(second, { to: "Cauldrith Hill Store", on: "2021-02-20", grams: 0.4 });
        tell.test(part, "2026-01-20", { normal: [46] });
      }
      if (year === 2026) tell.test(second, "2026-01-24", { normal: [22] });
      const beside = tell.sow({
        by: "Corvane Ashlock",
        from: [second],
        plot: "glasshouse",
        seeds: 24,
        standing: 10,
        before: 0,
        after: 0,
        purpose: "compare",
        unwritten: ["seed_parents", "seed_shares"],
        note: "A check beside Late Lamp; no seed kept.",
      });
      countDaysToFlower(tell.book, beside, { mean: check, plants: 10, kept: 0 });
    }
    for (const steward of ["Corvane Ashlock", "Cauldrith Hill Store"])
      tell.book.write("confirmations.csv", { variety: "Lockhouse Plain", steward, on: "2026-02-01", still: "yes" });
  },
};
