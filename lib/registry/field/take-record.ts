import type { FieldRecord } from "@/lib/schemas/field/field-records";
import { type Outcome, refused } from "@/lib/science/outcome";
import { unknownGrowOut } from "../plants/save-plants";
import { takeCounted } from "./take-counted";
import { takeHarvest, takeSeedTaken } from "./take-harvest";
import { takePhoto } from "./take-photo";
import { takeMark, takeScore } from "./take-seen";
import { takeUndo } from "./take-undo";
import type { HowTaken, Taking } from "./taking";

/** Makes rows of the registry of a record, by the rules of its kind; or says why not, and for what it waits. */
export async function takeRecord(taking: Taking, record: FieldRecord, how: HowTaken): Promise<Outcome<null>> {
  const growOut = await taking.ground.growOut(record.growOutId);
  if (!growOut) return refused(unknownGrowOut(record.growOutId));
  switch (record.kind) {
    case "mark":
      return takeMark(taking, record, growOut, how);
    case "score":
      return takeScore(taking, record, growOut, how);
    case "walk":
    case "count":
    case "flowering":
      return takeCounted(taking, record, growOut, how);
    case "taken":
      return takeSeedTaken(taking, record);
    case "harvest":
      return takeHarvest(taking, record, growOut, how);
    case "photo":
      return takePhoto(taking, record, growOut, how);
    case "undo":
      return takeUndo(taking, record);
  }
}
