import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import {
  type CropField,
  type CropOverrideInput,
  CropOverrideSchema,
  cropFields,
  cropRanges,
} from "@/lib/schemas/crops/crop-fields";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { ChangeWriter } from "../change-set/writer";
import { profileOfCrop } from "./profile-of-crop";

/** Gives a field of a crop's profile an own value, with its reason; a second own value of the field replaces the first. */
export async function setOwnValue(
  db: Database,
  actor: Actor,
  input: CropOverrideInput,
): Promise<Outcome<Performed<{ cropId: string }>>> {
  const read = parseForm(CropOverrideSchema, input);
  if (!read.ok) return read;
  const { cropId, field, reason, source } = read.value;
  const value = stored(field, read.value.value);
  if (!value.ok) return value;
  const crop = await db.read.crop.findUnique({ where: { id: cropId }, include: { overrides: true } });
  if (!crop) return refused(refusal("unknown-crop", ["cropId"], cropId, "is no crop here", "choose one of the list"));
  const operation = { action: "settings" as const, title: `Own value for ${crop.commonName}`, reason };
  return perform(db, actor, operation, async (change, tx) => {
    const own = await tx.cropOverride.findMany({ where: { cropId } });
    const wanted = [...own.filter((each) => each.field !== field), { field, value: value.value }];
    const crossed = rangeFault(field, profileOfCrop(crop, wanted));
    if (crossed) return refused(crossed);
    const row = own.find((each) => each.field === field);
    if (row) await change.update("CropOverride", row.id, { value: value.value, reason, source });
    else await change.create("CropOverride", { id: uuidv7(), cropId, field, value: value.value, reason, source });
    await touchVarietiesOf(change, tx, cropId);
    return accepted({ cropId });
  });
}

/** The figures of every variety of a crop may change with its profile. */
export async function touchVarietiesOf(change: ChangeWriter, tx: Transaction, cropId: string): Promise<void> {
  const varieties = await tx.variety.findMany({ where: { cropId }, select: { id: true } });
  change.touch(...varieties.map((variety) => variety.id));
}

/** The text that is stored for a value, or why it cannot stand in that field. */
function stored(field: CropField, typed: string): Outcome<string> {
  const kind = cropFields[field];
  const path = ["value"];
  if (kind.kind === "words") return accepted(typed);
  if (kind.kind === "choice") {
    if ((kind.choices as readonly string[]).includes(typed)) return accepted(typed);
    return refused(refusal("not-a-choice", path, typed, "is none of the choices", `take ${kind.choices.join(", ")}`));
  }
  const text = typed.replace(",", ".");
  const number = /^\d+(\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
  const whole = kind.kind === "whole";
  if (Number.isNaN(number) || (whole && !Number.isInteger(number))) {
    const wrong = whole ? "is not a whole number" : "is not a number";
    return refused(refusal("not-a-number", path, typed, wrong, `write figures alone, in ${kind.unit}`));
  }
  const most = "most" in kind ? kind.most : undefined;
  if (number < kind.least || (most !== undefined && number > most)) {
    const needed = most === undefined ? `write ${kind.least} or more` : `write a number from ${kind.least} to ${most}`;
    return refused(refusal("out-of-range", path, typed, `cannot be a number of ${kind.unit}`, needed));
  }
  return accepted(String(number));
}

function rangeFault(field: CropField, profile: Partial<Record<CropField, unknown>>): Refusal | null {
  const range = cropRanges.find((ends) => ends.includes(field));
  if (!range) return null;
  const [low, high] = [profile[range[0]], profile[range[1]]];
  if (typeof low !== "number" || typeof high !== "number" || low <= high) return null;
  return field === range[0]
    ? refusal(
        "range-crossed",
        ["value"],
        low,
        "lies above the upper end",
        `write ${high} or less, or raise the upper end first`,
      )
    : refusal(
        "range-crossed",
        ["value"],
        high,
        "lies below the lower end",
        `write ${low} or more, or lower the other end first`,
      );
}
