import type { FieldRecordOf } from "@/lib/schemas/field/field-records";
import { type Outcome, refused } from "@/lib/science/outcome";
import type { RowOf } from "../change-set/records";
import { waitFor } from "./stored-record";
import type { HowTaken, Taking } from "./taking";

/** A picture stands when its file has come; until then it waits. */
export async function takePhoto(
  _taking: Taking,
  record: FieldRecordOf<"photo">,
  _growOut: RowOf<"GrowOut">,
  _how: HowTaken,
): Promise<Outcome<null>> {
  return refused(waitFor(record.body.hash, "its file"));
}
