import { type Database, storageFaultOf } from "@/lib/db";
import { accepted, type Outcome, refused } from "@/lib/science/outcome";
import { keepPhotoFile } from "./keep-file";
import { type PhotoFacts, reEncoded } from "./re-encode";

/**
 * Makes of a picture what is stored and puts it into its place: the same picture twice is one file. A record comes to have it by addPhotos.
 * Refused: what reEncoded refuses, and storage that will not take it.
 *
 * @param from its bytes, or the path of a file
 * @param name what it is called in a refusal
 */
export async function storePhoto(
  { location }: Pick<Database, "location">,
  from: Uint8Array | string,
  name: string,
): Promise<Outcome<PhotoFacts>> {
  const made = await reEncoded(from, name);
  if (!made.ok) return made;
  const { jpeg: _jpeg, ...facts } = made.value;
  try {
    await keepPhotoFile(location, made.value);
  } catch (error) {
    const fault = storageFaultOf(error, location.folder);
    if (!fault) throw error;
    return refused({ code: fault.kind, path: ["photo"], given: location.folder, needed: "", sentence: fault.message });
  }
  return accepted(facts);
}
