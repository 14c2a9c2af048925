import type { SeedShape } from "./coat";

interface Outline {
  /** the edge of the seed on a field of 48 */
  readonly edge: string;
  /** the scar or point where it was fastened, and what else is cut into it */
  readonly cut: string;
  /** the middle of the scar, about which an eye is drawn */
  readonly scar: readonly [number, number];
  /** the way stripes run, in degrees */
  readonly lie: number;
  /** how the whole seed lies on the page, in degrees */
  readonly turn: number;
}

export const outlines: Record<SeedShape, Outline> = {
  bean: {
    edge: "M4.5 25.5C3.8 14.5 12 7 24.50 7S45.20 14.50 44.50 25c-.6 8.5-5.50 14.5-11.50 14-4.6-.4-5-5-9-5s-4.50 4.6-9 5C9.50 39.50 5 34 4.50 25.5Z",
    cut: "M20 30c0-1.3 1.8-2.1 4-2.1s4 .8 4 2.1-1.8 2.1-4 2.1-4-.8-4-2.1Z",
    scar: [24, 31],
    lie: 0,
    turn: -22,
  },
  kernel: {
    edge: "M24 44c-2.8 0-4-2.2-5.5-5C14 31 8.5 24 9 14.5 9.3 8.5 14 5 19 5c2 0 3.3 1.2 5 1.2S27 5 29 5c5 0 9.7 3.5 10 9.5.5 9.5-5 16.5-9.5 24.5-1.5 2.8-2.7 5-5.5 5Z",
    cut: "M19.8 37.5h8.4M17 9.5c2.5 2.2 5 3 7 3s4.5-.8 7-3",
    scar: [24, 43],
    lie: 90,
    turn: 8,
  },
  flat: {
    edge: "M24 4c9.5 5.5 14.5 13.5 14 23.5C37.5 38 32 44 24 44S10.5 38 10 27.5C9.5 17.5 14.5 9.5 24 4Z",
    cut: "M24 10.5c6.3 4.3 9.6 10 9.3 17C33 35 29.3 39.3 24 39.3S15 35 14.7 27.5c-.3-7 3-12.7 9.3-17Z",
    scar: [24, 5],
    lie: 90,
    turn: 14,
  },
  round: {
    edge: "M24 6.5c10.5 0 17.5 7.5 17.5 17.8S34 42 23.7 42 6.5 34.5 6.5 24.3 13.5 6.5 24 6.5Z",
    cut: "M31 15.5a2.2 2.2 0 1 0 .1 0Z",
    scar: [31, 17],
    lie: 20,
    turn: 0,
  },
  long: {
    edge: "M24 2.5c5.5 6 8.7 13 8.7 21.5S29.5 39.5 24 45.5c-5.5-6-8.7-13-8.7-21.5S18.5 8.5 24 2.5Z",
    cut: "M24 9v30",
    scar: [24, 45],
    lie: 90,
    turn: 28,
  },
  angular: {
    edge: "M7 33.5 19.5 9.5c2-3.7 6.5-3.9 8.7-.2L41.5 31c2.4 4 .3 8.3-4.3 8.7L13 42c-5.5.5-8.4-4-6-8.5Z",
    cut: "M24 15.5c-.6 6.5-4 12.5-9.5 17.5",
    scar: [24, 8],
    lie: 60,
    turn: 0,
  },
  cluster: {
    edge: "M16 8.5c3-3.5 9-3.2 11.5.3C32 6.5 38 9 38.5 14.5c4 2 6 7.5 3.3 11.5 1.7 5-1.3 10.5-6.6 11-2 5-8.5 6.8-12.7 3.5-5 2.5-11.3-.3-12.2-5.5C5.5 33 3.8 27 6.5 23c-2-5.5 1.5-11.2 7-11.5Z",
    cut: "M17 16.5v3.6M15.2 18.3h3.6M31 20.5v3.6M29.2 22.3h3.6M20.5 31v3.6M18.7 32.8h3.6",
    scar: [24, 25],
    lie: 0,
    turn: 0,
  },
};
