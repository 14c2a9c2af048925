import type { GrowOutRead } from "@/lib/registry/grow-outs/read-grow-out";
import { textsOfParents } from "./typed-parents";

/** What stands in the fields in which a plan, or the record of a grow-out, is put right. */
export function fieldsOfGrowOut({ growOut, parents, steward }: GrowOutRead): Record<string, string> {
  return {
    name: growOut.name,
    purpose: growOut.purpose ?? "",
    steward: steward ?? "",
    plantsPlanned: growOut.plantsPlanned?.toString() ?? "",
    seedParentsPlanned: growOut.seedParentsPlanned?.toString() ?? "",
    sown: growOut.sown ?? "",
    seedsSown: growOut.seedsSown?.toString() ?? "",
    note: growOut.note ?? "",
    ...textsOfParents(parents),
  };
}
