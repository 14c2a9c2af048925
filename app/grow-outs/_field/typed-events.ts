import type { CountOnRecord, PassOnRecord } from "@/lib/registry/grow-outs/field-records";
import { plantsCounted, pulledRows, reasonNotSaid, sheetField } from "@/lib/schemas/grow-outs/field-counts";
import { type Stage, stages } from "@/lib/schemas/grow-outs/field-kinds";
import { parseTypedDate } from "@/lib/science/dates/parse-typed-date";

type Texts = Readonly<Record<string, string>>;

/*
 * What stands in a form so far, as events. What cannot be read yet is passed over: the form says what is wrong when it is sent.
 */

/** The counts of a sheet. */
export function typedCounts(typed: Texts): CountOnRecord[] {
  return stages.flatMap((stage) => {
    const cell = (field: string) => typed[sheetField(stage, field)];
    return typedCount(`typed-${stage}`, stage, cell("plants"), cell("males"), cell("on"));
  });
}

/** One count; none where its plants are no number. */
export function typedCount(
  id: string,
  stage: Stage,
  plants: string | undefined,
  males: string | undefined,
  on: string | undefined,
): CountOnRecord[] {
  const counted = numberTyped(plants);
  if (counted === null) return [];
  return [{ id, stage, plants: counted, males: numberTyped(males), thinnedBy: null, ...dayTyped(on), ...rest }];
}

/** The lines of a walk. */
export function typedWalk(typed: Texts): PassOnRecord[] {
  const lines = pulledRows.flatMap((reason) => {
    const pulled = numberTyped(typed[sheetField("pulled", reason)]);
    return pulled ? [{ reason: reason === reasonNotSaid ? null : reason, pulled }] : [];
  });
  const none = typed.noneFound ? [{ reason: null, pulled: 0 }] : [];
  return (lines.length > 0 ? lines : none).map(({ reason, pulled }) => ({
    ...typedPass(typed),
    id: `typed-${reason}`,
    reason,
    pulled,
  }));
}

/** What all lines of a walk say alike. */
export function typedPass(typed: Texts): PassOnRecord {
  return {
    id: "typed",
    stage: typed.stage || null,
    timing: typed.timing === "before" || typed.timing === "after" ? typed.timing : null,
    looked: numberTyped(typed.looked),
    left: numberTyped(typed.left),
    pulled: numberTyped(typed.pulled) ?? 0,
    reason: typed.reason || null,
    ...dayTyped(typed.on),
    ...rest,
  };
}

const rest = { note: null, stewardId: null, replacesId: null };

export function numberTyped(text: string | undefined): number | null {
  if (text === undefined || text.trim() === "") return null;
  const read = plantsCounted(text);
  return read.ok ? read.value : null;
}

function dayTyped(text: string | undefined) {
  const read = text?.trim() ? parseTypedDate(text) : null;
  if (!read?.ok) return { on: null, onFirst: null, onLast: null };
  return { on: read.value.text, onFirst: read.value.first, onLast: read.value.last };
}
