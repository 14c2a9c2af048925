import type { FieldRecordOf } from "@/lib/schemas/field/field-records";
import { accepted, type Outcome, refused } from "@/lib/science/outcome";
import type { RowOf } from "../change-set/records";
import { photoArrived, photoErased } from "../photos/arriving";
import { pictureErased, waitFor } from "./stored-record";
import { plantFor } from "./take-plant";
import { commonFaults, fromPhone, type HowTaken, handOf, seenOn, type Taking } from "./taking";

/** A picture stands once its file has come, which is sent apart; until then it waits for it. */
export async function takePhoto(
  taking: Taking,
  record: FieldRecordOf<"photo">,
  growOut: RowOf<"GrowOut">,
  how: HowTaken,
): Promise<Outcome<null>> {
  const faults = await commonFaults(taking, record, growOut, how);
  if (faults.length > 0) return refused(...faults);
  const { plant: sent, traitId, hash, caption } = record.body;
  const stored = await photoArrived({ location: taking.location }, hash);
  if (!stored) return refused(waitFor(hash, "its file"));
  if (await photoErased({ location: taking.location }, hash))
    return refused({
      code: pictureErased,
      path: ["hash"],
      given: null,
      needed: "",
      sentence: "its picture was erased",
    });
  const plant = sent ? await plantFor(taking, record, sent, how) : accepted(null);
  if (!plant.ok) return plant;
  const trait = traitId === null ? null : await taking.ground.trait(traitId);
  const { width, height, bytes } = stored;
  await taking.change.create("Photo", {
    ...{ id: record.id, hash: stored.hash, width, height, bytes, caption },
    ...{ growOutId: record.growOutId, plantId: plant.value, traitId: trait?.id ?? null },
    ...{ takenOn: seenOn(record, how).on, stewardId: await handOf(taking, record) },
    ...fromPhone(record),
  });
  taking.change.touch(growOut.varietyId);
  return accepted(null);
}
