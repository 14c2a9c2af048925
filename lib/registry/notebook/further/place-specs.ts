import { foldName } from "../../names/fold-name";
import { day, type FurtherSpec, nameOf, number, oneOf, text } from "./spec";

const needed = { needed: true };
const folded = (cells: Readonly<Record<string, unknown>>) => ({ nameKey: foldName(String(cells.name)) });

const units = ["g", "seeds", "ears", "heads", "pods", "fruits", "packets"];

/** How exactly others may see where something is. */
export const grains = ["exact", "village", "none"];

/** Where seed is kept and where it grows. */
export const placeFiles: readonly FurtherSpec[] = [
  {
    file: "places.csv",
    table: "Place",
    noun: "place",
    identity: { by: "keyed", columns: 2 },
    columns: [
      text("name", needed),
      nameOf("steward"),
      oneOf("kind", ["cupboard", "cellar", "fridge", "freezer", "deposit elsewhere"]),
      text("building"),
      number("temperature_c"),
      number("relative_humidity_percent"),
      text("note"),
    ],
    fixed: folded,
  },
  {
    file: "containers.csv",
    table: "Container",
    noun: "container",
    identity: { by: "keyed", columns: 1 },
    columns: [
      text("code", needed),
      nameOf("lot", needed),
      nameOf("place"),
      text("kind"),
      number("amount"),
      oneOf("unit", units),
      day("sealed_on"),
      day("last_opened"),
      text("desiccant"),
      text("note"),
    ],
  },
  {
    file: "plots.csv",
    table: "Plot",
    noun: "plot",
    identity: { by: "keyed", columns: 2 },
    inOrderOf: 2,
    columns: [
      text("name", needed),
      nameOf("steward"),
      text("place"),
      number("latitude"),
      number("longitude"),
      number("area_m2", { field: "areaM2" }),
      number("altitude_m"),
      text("soil"),
      text("wind_exposure"),
      text("note"),
      oneOf("place_grain", grains),
    ],
    fixed: folded,
  },
];
