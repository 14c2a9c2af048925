import type { Book, Line } from "../telling/book";

type Plot = Omit<Line<"plots.csv">, "name" | "steward" | "place">;

/** Plots by the keeper's name and village; only the village is said, never the spot. */
const plots: Readonly<Record<string, readonly [village: string, Readonly<Record<string, Plot>>]>> = {
  "Thirza Orrick": [
    "Over Sennick",
    {
      "long strip": { area_m2: 160, altitude_m: 240, soil: "loam over slate", wind_exposure: "open to the west" },
      "chapel wall": { area_m2: 24, altitude_m: 236, soil: "builders' rubble and leaf mould", wind_exposure: "none" },
    },
  ],
  "Nab Hurdlestone": [
    "Cleavehead",
    {
      "cleave field": { area_m2: 900, altitude_m: 310, soil: "thin, stony", wind_exposure: "whatever there is" },
      "top patch": { area_m2: 60, altitude_m: 325, soil: "black and sour" },
    },
  ],
  "Jossa Pellinder": [
    "Kestonhalse",
    {
      "mill field": { area_m2: 420, altitude_m: 120, soil: "silt", wind_exposure: "along the river" },
      "weir garden": { area_m2: 260, altitude_m: 118, soil: "silt, an old muck heap in the corner" },
    },
  ],
  "Corvane Ashlock": [
    "Hobbleford",
    {
      glasshouse: { area_m2: 48, altitude_m: 85, soil: "made soil", note: "stood in water in July 2007" },
      "brick yard": { area_m2: 140, altitude_m: 92, soil: "clay", wind_exposure: "walled on three sides" },
    },
  ],
  "Mirabeth Undercroft": [
    "Gannerby Cross",
    {
      "orchard beds": { area_m2: 120, altitude_m: 150, soil: "loam", wind_exposure: "trees all round" },
      "lower quillet": { area_m2: 300, altitude_m: 142, soil: "sandy loam", note: "a lane with wild carrot below it" },
      "cellar bank": { area_m2: 18, altitude_m: 151, soil: "loam", wind_exposure: "none" },
    },
  ],
  "Hesk Dunnaby": [
    "Marrowsty",
    {
      "barn acre": { area_m2: 4000, altitude_m: 175, soil: "marl", wind_exposure: "open" },
      "stone croft": { area_m2: 380, altitude_m: 188, soil: "stony loam" },
    },
  ],
  "Ambrey Stallwood": [
    "Pothering",
    {
      "ledge garden": { area_m2: 90, altitude_m: 205, soil: "shallow, limed", wind_exposure: "gales from the sea" },
      "quarry floor": {
        area_m2: 200,
        altitude_m: 190,
        soil: "made soil on rock",
        wind_exposure: "walled by the quarry",
      },
    },
  ],
  "Edda Sallowby": [
    "Lasting End",
    {
      "hen run": { area_m2: 110, altitude_m: 160, soil: "rich" },
      "south border": { area_m2: 55, altitude_m: 162, soil: "loam", wind_exposure: "house wall behind" },
    },
  ],
  "Orlo Brackstane": [
    "Over Sennick",
    {
      paddock: { area_m2: 500, altitude_m: 230, soil: "loam over slate", wind_exposure: "open to the west" },
      "lane beds": { area_m2: 70, altitude_m: 233, soil: "loam" },
    },
  ],
  "Tamsel Vike": [
    "Hobbleford",
    {
      "allotment 9": { area_m2: 250, altitude_m: 88, soil: "silt loam", note: "eleven neighbours within sixty metres" },
      "ferry bank": { area_m2: 180, altitude_m: 84, soil: "silt", wind_exposure: "along the river" },
    },
  ],
};

export function writePlots(book: Book): void {
  for (const [steward, [place, own]] of Object.entries(plots))
    for (const [name, plot] of Object.entries(own)) book.write("plots.csv", { name, steward, place, ...plot });
}
