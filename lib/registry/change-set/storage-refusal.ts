import { storageFaultOf } from "@/lib/db";
import type { Refusal } from "@/lib/science/outcome";

/** What the disk or another program stood against, as a refusal: nothing of it was written, and what was typed is still there. Null for any other error. */
export function storageRefusalOf(error: unknown, place: string): Refusal | null {
  const fault = storageFaultOf(error, place);
  return fault && { code: fault.kind, path: [], given: fault.place, needed: "", sentence: fault.message };
}
