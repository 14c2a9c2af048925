import type { Cell } from "../telling/csv-text";

/** Where a person keeps seed. `slows`: how many times as long seed lives there as in a dry cupboard. */
export interface Store {
  readonly name: string;
  readonly kind: "cupboard" | "cellar" | "fridge" | "freezer" | "deposit elsewhere";
  readonly building: string;
  readonly temperature: number;
  readonly humidity: number;
  readonly slows: number;
  readonly jar: string;
  readonly desiccant: Cell;
  readonly note: Cell;
}

/** How a person tests seed: replicates of so many seeds. */
export interface TestHabit {
  readonly replicates: number;
  readonly seeds: number;
  readonly basis: "normal seedlings" | "sprouted";
  readonly method: string;
  readonly temperature: string;
}

/** Somebody of the circle. All of them are invented, and so are their villages. */
export interface Person {
  readonly name: string;
  readonly initials: string;
  readonly place: string;
  readonly kind: "grower" | "library" | "genebank";
  readonly store: Store;
  readonly tests: TestHabit;
  readonly plots: readonly string[];
  /** how closely dates are written down */
  readonly dates: "day" | "month";
  /** first and last year in the circle */
  readonly years: readonly [number, number];
}

const towel = { basis: "normal seedlings", method: "paper towel", temperature: "kitchen, about 20 °C" } as const;

function cupboard(name: string, building: string, more: Partial<Store> = {}): Store {
  return {
    name,
    kind: "cupboard",
    building,
    temperature: 16,
    humidity: 50,
    slows: 1,
    jar: "glass jar",
    desiccant: null,
    note: null,
    ...more,
  };
}

const people = [
  {
    name: "Thirza Orrick",
    initials: "TO",
    place: "Over Sennick",
    kind: "grower",
    store: cupboard("landing cupboard", "Chapel End house", { note: "the jars went to Tamsel Vike in spring 2024" }),
    tests: { replicates: 1, seeds: 20, ...towel },
    plots: ["long strip", "chapel wall"],
    dates: "day",
    years: [1996, 2023],
  },
  {
    name: "Nab Hurdlestone",
    initials: "NH",
    place: "Cleavehead",
    kind: "grower",
    store: cupboard("shed tins", "Cleavehead shed", {
      temperature: 13,
      humidity: 68,
      slows: 0.8,
      jar: "tobacco tin",
      note: "cleared in February 2009",
    }),
    tests: {
      replicates: 1,
      seeds: 10,
      basis: "sprouted",
      method: "wet cloth in a saucer",
      temperature: "above the stove",
    },
    plots: ["cleave field", "top patch"],
    dates: "month",
    years: [1996, 2008],
  },
  {
    name: "Jossa Pellinder",
    initials: "JP",
    place: "Kestonhalse",
    kind: "grower",
    store: cupboard("larder shelf", "Mill Row 4", { humidity: 46, slows: 1.1, desiccant: "rice, dried in the oven" }),
    tests: { replicates: 1, seeds: 20, ...towel },
    plots: ["mill field", "weir garden"],
    dates: "day",
    years: [1996, 2026],
  },
  {
    name: "Corvane Ashlock",
    initials: "CA",
    place: "Hobbleford",
    kind: "grower",
    store: cupboard("glasshouse store", "potting house", {
      temperature: 15,
      humidity: 45,
      desiccant: "silica, orange",
    }),
    tests: { replicates: 1, seeds: 25, basis: "normal seedlings", method: "tray of sand", temperature: "bench, 22 °C" },
    plots: ["glasshouse", "brick yard"],
    dates: "day",
    years: [1996, 2026],
  },
  {
    name: "Mirabeth Undercroft",
    initials: "MU",
    place: "Gannerby Cross",
    kind: "grower",
    store: cupboard("north cellar", "Cross House", {
      kind: "cellar",
      temperature: 10,
      humidity: 55,
      slows: 1.25,
      jar: "rubber-ringed jar",
      desiccant: "silica, orange",
    }),
    tests: { replicates: 2, seeds: 25, ...towel },
    plots: ["orchard beds", "lower quillet"],
    dates: "day",
    years: [1996, 2026],
  },
  {
    name: "Hesk Dunnaby",
    initials: "HD",
    place: "Marrowsty",
    kind: "grower",
    store: cupboard("grain room", "Marrowsty barn", {
      temperature: 12,
      humidity: 52,
      slows: 1.1,
      jar: "tin with a lid",
    }),
    tests: { replicates: 2, seeds: 50, basis: "normal seedlings", method: "rolled paper", temperature: "20 °C" },
    plots: ["barn acre", "stone croft"],
    dates: "month",
    years: [1996, 2026],
  },
  {
    name: "Ambrey Stallwood",
    initials: "AS",
    place: "Pothering",
    kind: "grower",
    store: cupboard("back bedroom", "Ledge Cottage", { jar: "paper packet in a tin" }),
    tests: { replicates: 1, seeds: 20, ...towel },
    plots: ["ledge garden", "quarry floor"],
    dates: "day",
    years: [2001, 2026],
  },
  {
    name: "Edda Sallowby",
    initials: "ES",
    place: "Lasting End",
    kind: "grower",
    store: cupboard("dresser drawer", "Lasting End farm", { humidity: 48, slows: 1.1 }),
    tests: { replicates: 1, seeds: 25, ...towel },
    plots: ["hen run", "south border"],
    dates: "day",
    years: [1996, 2026],
  },
  {
    name: "Ottoline Frayle",
    initials: "OF",
    place: "Port Averil",
    kind: "grower",
    store: cupboard("harbour house dresser", "harbour house"),
    tests: { replicates: 1, seeds: 20, ...towel },
    plots: ["terrace"],
    dates: "month",
    years: [1996, 1998],
  },
  {
    name: "Orlo Brackstane",
    initials: "OB",
    place: "Over Sennick",
    kind: "grower",
    store: cupboard("tack room", "Brackstane stable", { temperature: 13, humidity: 58, slows: 0.9, jar: "cloth bag" }),
    tests: { replicates: 1, seeds: 20, ...towel },
    plots: ["paddock", "lane beds"],
    dates: "day",
    years: [2011, 2026],
  },
  {
    name: "Tamsel Vike",
    initials: "TV",
    place: "Hobbleford",
    kind: "grower",
    store: cupboard("kitchen fridge", "ferry flat", {
      kind: "fridge",
      temperature: 5,
      humidity: 40,
      slows: 1.8,
      desiccant: "silica, orange",
    }),
    tests: { replicates: 2, seeds: 25, ...towel },
    plots: ["allotment 9", "ferry bank"],
    dates: "day",
    years: [2016, 2026],
  },
  {
    name: "Gannerby Reading Room",
    initials: "GR",
    place: "Gannerby Cross",
    kind: "library",
    store: cupboard("seed cabinet", "reading room", { temperature: 19, humidity: 42, jar: "packets in a card drawer" }),
    tests: { replicates: 1, seeds: 50, ...towel },
    plots: [],
    dates: "day",
    years: [2008, 2026],
  },
  {
    name: "Cauldrith Hill Store",
    initials: "CH",
    place: "Cauldrith Hill",
    kind: "genebank",
    store: cupboard("cold room", "hill station", {
      kind: "freezer",
      temperature: -18,
      humidity: 20,
      slows: 6,
      jar: "foil bag, sealed",
    }),
    tests: {
      replicates: 4,
      seeds: 50,
      basis: "normal seedlings",
      method: "top of paper",
      temperature: "20 °C, 16 h light",
    },
    plots: [],
    dates: "day",
    years: [2003, 2026],
  },
] as const satisfies readonly Person[];

export type PersonName = (typeof people)[number]["name"];

export const everybody: readonly Person[] = people;

export function person(name: PersonName): Person {
  const found = everybody.find((each) => each.name === name);
  if (!found) throw new RangeError(`${name} is nobody of the circle`);
  return found;
}
