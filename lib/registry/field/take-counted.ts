import type { FieldRecordOf } from "@/lib/schemas/field/field-records";
import { accepted, type Outcome, refused } from "@/lib/science/outcome";
import type { RowOf } from "../change-set/records";
import { readInField } from "../grow-outs/in-field";
import { enterFlowering } from "../grow-outs/record-flowering";
import { enterWalk } from "../grow-outs/record-rogue-walk";
import { enterCounts } from "../grow-outs/record-stage-counts";
import { commonFaults, dayAt, fromPhone, fuzzyDay, type HowTaken, handOf, seenOn, type Taking } from "./taking";

type Counted = FieldRecordOf<"walk"> | FieldRecordOf<"count"> | FieldRecordOf<"flowering">;

/** A walk, a count or a flowering note is entered as it is at the desk, and the grow-out's numbers follow. */
export async function takeCounted(
  taking: Taking,
  record: Counted,
  growOut: RowOf<"GrowOut">,
  how: HowTaken,
): Promise<Outcome<null>> {
  // The day is judged with the rest by the rules of each.
  const by = (await commonFaults(taking, record, growOut, how)).filter(({ code }) => !ofTheDay.has(code));
  const today = dayAt(taking.now, record.recordedOffset);
  const field = await readInField(taking.tx, record.growOutId, today);
  if (!field.ok) return field;
  const [from, stewardId] = [fromPhone(record), await handOf(taking, record)];
  const [{ judged }, seen, { change }] = [how, seenOn(record, how), taking];
  const own = { id: record.id, ...seen, stewardId, replacesId: null, ...from };
  const entered =
    record.kind === "count"
      ? await enterCounts(change, field.value, [{ ...own, ...record.body }], { judged, by })
      : record.kind === "flowering"
        ? await enterFlowering(change, field.value, [{ ...own, ...record.body }], { judged, by })
        : await enterWalk(
            change,
            field.value,
            { ...record.body, on: fuzzyDay(seen.on), stewardId },
            { judged, by, id: record.id, from },
          );
  return entered.ok ? accepted(null) : refused(...entered.refusals);
}

const ofTheDay: ReadonlySet<string> = new Set(["not-yet", "before-sowing"]);
