import { refusal } from "@/lib/science/outcome";
import { longestSide, mostBytesStored } from "../../photos/photo-limits";
import { another, count, day, type FurtherSpec, joined, nameOf, photoFile, text } from "./spec";

const subjects = ["varietyId", "lotId", "growOutId", "testId", "traitId"] as const;

/** Pictures: the file of each lies in the folder, too, by the path that its cell gives. */
export const photoFiles: readonly FurtherSpec[] = [
  {
    file: "photos.csv",
    table: "Photo",
    noun: "picture",
    identity: { by: "lines" },
    columns: [
      photoFile("file", { needed: true, field: "hash" }),
      nameOf("variety"),
      nameOf("lot"),
      nameOf("grow-out"),
      another("plant", "plant", "plantId"),
      nameOf("test"),
      ...joined("trait"),
      text("shows", { field: "scale" }),
      text("caption"),
      day("taken_on"),
      nameOf("steward", { column: "taken_by", field: "stewardId" }),
      // The file itself says them, where it is there.
      count("width"),
      count("height"),
      count("bytes"),
    ],
    refuses: (fields) => {
      if (subjects.every((column) => (fields[column] ?? null) === null)) {
        const needed = "name a variety, lot, grow-out, test or trait";
        return refusal("of-nothing", ["variety"], null, "says what it is a picture of", needed);
      }
      const wrong = Object.entries(most).find(([column, limit]) => !isWithin(fields[column], limit));
      if (!wrong) return null;
      const [column, limit] = wrong;
      return refusal("no-measure", [column], fields[column], "cannot be", `1 to ${limit}, or nothing beside its file`);
    },
  },
];

const most = { width: longestSide, height: longestSide, bytes: mostBytesStored };

function isWithin(value: unknown, limit: number): boolean {
  return typeof value === "number" && value >= 1 && value <= limit;
}
