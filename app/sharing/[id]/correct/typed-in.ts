import type { UnitSettings } from "@/lib/display/units";
import type { TransferRead } from "@/lib/registry/transfers/read-transfer";
import { weightAsTyped } from "../../../lots/_words/units-of";

/**
 * A transfer as its fields stand in the form, in the steward's unit of weight. An amount in ears or packets is not typed here: left empty, it
 * stays as it is.
 */
export function typedIn(
  { on, amount, unit, purpose, conditions, told, replyDue, note }: TransferRead["transfer"],
  units: UnitSettings,
): Record<string, string> {
  const shown = amount === null ? "" : unit === "g" ? weightAsTyped(amount, units) : String(amount);
  return {
    on,
    amount: unit === "g" || unit === "seeds" ? shown : "",
    unit: unit === "seeds" ? "seeds" : "g",
    purpose: purpose ?? "",
    conditions: conditions ?? "",
    told: told ?? "",
    replyDue: replyDue ?? "",
    note: note ?? "",
  };
}
