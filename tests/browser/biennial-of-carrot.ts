import { mkdtempSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { dateInWords } from "@/lib/display/dates";
import { addDays } from "@/lib/science/dates/civil-day";
import { crop, reserveOf, sizeOf, sowingOf, type TestTold, testRead } from "./worked-out";

/*
 * Two years of a biennial as its steward told them, our own invention, and what follows from them.
 */

const carrot = crop("carrot");

export const told = {
  variety: "Marl Lantern",
  crop: carrot,
  steward: "Tamsel Orre",
  founder: {
    ...{ number: "ML 1", grams: 12, thousandSeedGrams: 1.2 },
    test: { on: "2022-02-01", each: 50, days: [14], counts: [[38], [41]] } satisfies TestTold,
  },
  growOut: "Marl Lantern 2022",
  plantsWanted: 60,
  seedParents: 24,
  sown: "2022-05-10",
  plots: { first: "the low bed", second: "the walled garden" },
  up: 84,
  thinned: 70,
  bolters: 4,
  lifted: 64,
  replanted: 50,
  flowering: 46,
  flower: ["2023-06-12", "2023-06-28", "2023-08-02"],
  harvested: { number: "ML 2", on: "2023-09-14", grams: 96 },
} as const;

/** A folder with the variety and the lot that it begins with, as another registry or a spreadsheet writes it. */
export function founderFolder(): string {
  const folder = mkdtempSync(path.join(os.tmpdir(), "kinrow-founder-"));
  const { variety, steward, founder } = told;
  const { number, grams, thousandSeedGrams, test } = founder;
  const files = {
    varieties: ["variety,crop,story,type_description", `${variety},${carrot.commonName},,`],
    stewards: ["steward,place,kind", `${steward},Orrebeck,grower`],
    lots: [
      "lot,variety,holder,year,kind,from,thousand_seed_grams,inbreeding,notes",
      `${number},${variety},${steward},2021,founder,,${thousandSeedGrams},,`,
    ],
    ledger: ["lot,date,kind,grams,other,notes", `${number},2021-12-01,weighed,${grams},,`],
    tests: [
      "test,lot,date,replicate,sown,day,normal,abnormal,hard,fresh,dead",
      ...test.counts.flatMap((counts, replicate) =>
        counts.map(
          (count, place) =>
            `${number} test 1,${number},${test.on},${replicate + 1},${test.each},${test.days[place]},${count},,,,`,
        ),
      ),
    ],
  };
  for (const [name, lines] of Object.entries(files)) writeFileSync(path.join(folder, `${name}.csv`), lines.join("\n"));
  return folder;
}

/** What is to be sown for the plants wanted, and what stays. */
export const sowing = (() => {
  const { grams, thousandSeedGrams, test } = told.founder;
  const { seeds } = sowingOf(testRead(test), told.plantsWanted);
  const sown = (seeds * thousandSeedGrams) / 1000;
  const left = grams - sown;
  const keptBack = reserveOf(sowingOf(testRead(test), carrot.plantsMin ?? 0).seeds);
  return { seeds, sown, left, seedsLeft: (left / thousandSeedGrams) * 1000, keptBack };
})();

/** The plants of the harvest: all that came to flower shed pollen, and of some of them seed was kept in equal weights. */
export const parents = { pollenParents: told.flowering, seedParents: told.seedParents, seedShares: "equal" } as const;
export const size = sizeOf(carrot, parents).effectiveSize;

/** The months in which it is expected to flower, by the days that the crop usually takes. */
export const expectedFlower = [carrot.daysToFlowerMin, carrot.daysToFlowerMax]
  .map((days) => dateInWords(addDays(told.sown, days ?? 0).slice(0, 7)))
  .join(" to ");
