import { moments } from "@/lib/schemas/grow-outs/field-kinds";
import { neighbourOrgans } from "@/lib/schemas/neighbours/neighbour-flowering";
import { bearings } from "@/lib/science/isolation/bearings";
import { count, date, day, type FurtherSpec, joined, nameOf, number, oneOf, text } from "./spec";

const lines = { by: "lines" } as const;
const needed = { needed: true };

/** Neighbour sources, and what was noted of their flowering. A source has no name of its own: its notes name what it is, where, and the how manieth. */
export const neighbourFiles: readonly FurtherSpec[] = [
  {
    file: "neighbours.csv",
    table: "NeighbourSource",
    noun: "neighbour source",
    identity: lines,
    columns: [
      nameOf("grow-out"),
      nameOf("plot"),
      nameOf("crop"),
      nameOf("variety"),
      text("what", needed),
      number("distance_metres"),
      oneOf("bearing", bearings),
      number("size_m2", { field: "sizeM2" }),
      count("plants"),
      day("window_first"),
      day("window_last"),
      text("how_sure"),
      text("note"),
    ],
  },
  {
    file: "neighbour_flowering.csv",
    table: "FloweringNote",
    noun: "flowering note of a neighbour",
    identity: lines,
    events: true,
    where: { neighbourId: { not: null } },
    columns: [
      // A stand beside a plot belongs to no grow-out.
      ...joined("neighbour", needed).map((each) => ({ ...each, needed: each.needed && each.column !== "grow_out" })),
      oneOf("organ", neighbourOrgans, needed),
      oneOf("moment", moments, needed),
      date("on", needed),
      nameOf("steward"),
      text("note"),
    ],
  },
];
