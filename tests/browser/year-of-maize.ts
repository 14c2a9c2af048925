import { dayNumber } from "@/lib/science/dates/civil-day";
import { crossingOfPair } from "@/lib/science/isolation/crossing-of-pair";
import { type IsolationPurpose, isolationDistances } from "@/lib/science/isolation/distance-rule";
import { floweringCurve } from "@/lib/science/isolation/flowering-curve";
import { windowDays, windowOverlap } from "@/lib/science/isolation/flowering-window";
import { isolationGrade } from "@/lib/science/isolation/isolation-grade";
import { neighbourVerdict } from "@/lib/science/isolation/neighbour-verdict";
import { shareOfNeighbours } from "@/lib/science/isolation/share-of-neighbours";
import {
  crop,
  held,
  reserveOf,
  sizeOf,
  sowingOf,
  type TestTold,
  testRead,
  thousandGrams,
  windowOf,
} from "./worked-out";

/*
 * One year of an outcrosser as its steward told it, our own invention, and what follows from it.
 */

const maize = crop("maize-field");
const sweet = crop("maize-sweet");

export const told = {
  variety: "Ossel Flint",
  crop: maize,
  steward: "Tamsel Orre",
  founder: {
    number: "OF 1",
    grams: 200,
    weighed: [
      { seeds: 100, grams: 31.2 },
      { seeds: 100, grams: 30.6 },
    ],
    test: {
      ...{ on: "2024-02-12", each: 25, days: [4, 7] },
      counts: [
        [18, 5],
        [20, 3],
        [19, 3],
        [21, 3],
      ],
    } satisfies TestTold,
  },
  growOut: "Ossel Flint 2024",
  seedParentsMeant: 30,
  plotM2: 80,
  up: 118,
  thinned: 104,
  standing: 100,
  mistaken: 140,
  offType: 2,
  sick: 1,
  flowering: 96,
  pollen: ["2024-07-20", "2024-07-25", "2024-08-02"],
  silk: ["2024-07-23", "2024-07-28", "2024-08-06"],
  neighbour: { crop: sweet, metres: 150, areaM2: 900, flowers: ["2024-07-18", "2024-08-01"] },
  /** grams of the seed of plants 1 to 11; the ears of plant 12 were mouldy */
  bags: [88, 74, 70, 41, 36, 33, 30, 28, 25, 22, 19],
  /** centimetres of plants 1 to 14 */
  heights: [212, 198, 205, 187, 190, 201, 176, 183, 195, 208, 179, 192, 169, 171],
  harvested: {
    number: "OF 2",
    weighed: [
      { seeds: 100, grams: 30.1 },
      { seeds: 100, grams: 29.2 },
      { seeds: 100, grams: 30.7 },
    ],
    test: {
      ...{ on: "2024-12-02", each: 50, days: [4, 7] },
      counts: [
        [40, 7],
        [43, 5],
        [38, 8],
        [44, 4],
      ],
    } satisfies TestTold,
  },
  given: { to: "Brenna Sallow", grams: 60, tooManySeeds: 1320 },
} as const;

const { founder, harvested, crop: profile } = told;

/** Plants that the plan proposes: the crop's floor. */
export const plants = profile.plantsMin ?? 0;

/** The founder lot: its test and seed weight in grams, what was tested and sown of it, what is kept back. */
export const first = (() => {
  const test = testRead(founder.test);
  const seed = thousandGrams(founder.weighed) / 1000;
  const sowing = sowingOf(test, plants);
  const [tested, sown] = [test.sown * seed, sowing.seeds * seed];
  const [afterTest, afterSowing] = [founder.grams - tested, founder.grams - tested - sown];
  return { test, seed, sowing, tested, sown, afterTest, afterSowing, keptBack: reserveOf(sowing.seeds) };
})();

/** The plants of the harvest, its effective size as each gave and in equal shares, and its weight in grams. */
export const harvest = (() => {
  const seedShares = told.bags;
  const parents = { pollenParents: told.flowering, seedParents: seedShares.length };
  const uneven = sizeOf(profile, { ...parents, seedShares }).effectiveSize;
  const even = sizeOf(profile, parents).effectiveSize;
  return { parents, seedShares, uneven, even, grams: seedShares.reduce((sum, weight) => sum + weight, 0) };
})();

/**
 * The harvested lot once it is tested. The lot that needs most seed sets the reserve; what is free of this one is at most what lies in it.
 */
export const second = (() => {
  const test = testRead(harvested.test);
  const seed = thousandGrams(harvested.weighed) / 1000;
  const tested = test.sown * seed;
  const grams = harvest.grams - tested;
  const keptBack = reserveOf(Math.max(first.sowing.seeds, sowingOf(test, plants).seeds));
  const all = first.afterSowing / first.seed + grams / seed;
  return { test, seed, tested, grams, keptBack, free: Math.min(grams / seed, all - keptBack.seeds) };
})();

const ends = (days: readonly [string, string, string]) => windowOf([days[0], days[2]]);

/** Days on which pollen flew, silk was open, both, and the neighbour's pollen met our silk. */
export const days = {
  pollen: windowDays(ends(told.pollen)),
  silk: windowDays(ends(told.silk)),
  both: windowOverlap(ends(told.pollen), ends(told.silk)),
  met: windowOverlap(windowOf(told.neighbour.flowers), ends(told.silk)),
};

/** The distances to the neighbour's crop, the verdict on it, and the grade of the seed once somebody looked. */
export function isolation(purpose: IsolationPurpose) {
  const { neighbour } = told;
  const distances = isolationDistances(maize, purpose, null);
  const crossing = crossingOfPair(maize, neighbour.crop);
  const { verdict } = neighbourVerdict({
    ...{ sameVariety: false, clonal: false, apartAsSeen: false, crossing, distances, overlap: days.met },
    ...{ distanceMetres: neighbour.metres, sizeRatio: neighbour.areaM2 / told.plotM2 },
  });
  const grade = (looked: boolean) => isolationGrade({ clonal: false, looked, verdicts: [verdict], methods: [] }).grade;
  return { distances, verdict, grade };
}

/** The share of foreign pollen from that neighbour. */
export function foreignPollen() {
  const { neighbour, pollen: _, silk } = told;
  const [first, last] = neighbour.flowers;
  const curve = (from: string, to: string, peak?: string) =>
    held(
      floweringCurve(
        {
          ...{ first: dayNumber(from), last: dayNumber(to) },
          ...(peak === undefined ? {} : { peak: dayNumber(peak) }),
        },
        [],
      ),
    );
  return held(
    shareOfNeighbours({
      ...{ cropKey: maize.key, plotM2: told.plotM2, plants: told.flowering },
      stigma: curve(silk[0], silk[2], silk[1]),
      sources: [
        {
          ...{ id: "neighbour", distanceMetres: neighbour.metres, sizeM2: neighbour.areaM2, plants: null },
          ...{ factor: crossingOfPair(maize, neighbour.crop).factor ?? 0, pollen: curve(first, last) },
        },
      ],
    }),
  );
}
