import type { FieldRecordOf } from "@/lib/schemas/field/field-records";
import { writeDecimal } from "@/lib/schemas/notebook/decimal";
import { readScore } from "@/lib/schemas/traits/read-score";
import { no, notLooked, type ScoreValue, yes } from "@/lib/schemas/traits/score-value";
import type { TraitDefinition } from "@/lib/schemas/traits/trait";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import type { RowOf } from "../change-set/records";
import { definitionOf } from "../traits/trait-row";
import { addTo } from "./field-ground";
import { askWhetherSame } from "./same-plant-questions";
import { settleSent } from "./settle-sent";
import { refusalsOf, sentRecord, takenBack, waitFor, waits } from "./stored-record";
import { plantFor } from "./take-plant";
import { commonFaults, fromPhone, type HowTaken, handOf, seenOn, type Taking } from "./taking";

/** A mark of a plant becomes a mark of the registry, with the tag as it is written. */
export async function takeMark(
  taking: Taking,
  record: FieldRecordOf<"mark">,
  growOut: RowOf<"GrowOut">,
  how: HowTaken,
): Promise<Outcome<null>> {
  const faults = await commonFaults(taking, record, growOut, how);
  if (faults.length > 0) return refused(...faults);
  const { plant: sent, replaces, tag, intent, words, fate } = record.body;
  const replaced = await standsInPlaceOf(taking, "Mark", record, replaces);
  if (!replaced.ok) return replaced;
  const plant = await plantFor(taking, record, sent, how);
  if (!plant.ok) return plant;
  const row = {
    ...{ id: record.id, plantId: plant.value, tag, intent, words, fate, replacesId: replaced.value },
    ...seenOn(record, how),
    stewardId: await handOf(taking, record),
    ...fromPhone(record),
  };
  await taking.change.create("Mark", row);
  const here = await taking.ground.plantsOf(record.growOutId);
  here.marks.set(row.id, row);
  addTo(here.phones, plant.value, record.deviceId);
  await askWhetherSame(taking, record.growOutId, plant.value);
  taking.change.touch(growOut.varietyId);
  return accepted(null);
}

/** A score becomes a score, by the version of the trait by which it was given. */
export async function takeScore(
  taking: Taking,
  record: FieldRecordOf<"score">,
  growOut: RowOf<"GrowOut">,
  how: HowTaken,
): Promise<Outcome<null>> {
  const faults = await commonFaults(taking, record, growOut, how);
  if (faults.length > 0) return refused(...faults);
  const { plant: sent, traitId, value, text, replaces } = record.body;
  const trait = await taking.ground.trait(traitId);
  if (!trait) {
    const needed = "set this aside, or score the plant anew by a trait that is here";
    return refused(refusal("unknown-trait", ["trait"], traitId, "is no trait of this registry any more", needed));
  }
  const read = scoreSent(definitionOf(trait), { value, text });
  if (!read.ok) return read;
  const replaced = await standsInPlaceOf(taking, "Score", record, replaces);
  if (!replaced.ok) return replaced;
  const plant = await plantFor(taking, record, sent, how);
  if (!plant.ok) return plant;
  await taking.change.create("Score", {
    ...{ id: record.id, plantId: plant.value, traitId, ...read.value, replacesId: replaced.value, takenBack: false },
    on: seenOn(record, how).on,
    stewardId: await handOf(taking, record),
    ...fromPhone(record),
  });
  const here = await taking.ground.plantsOf(record.growOutId);
  addTo(here.phones, plant.value, record.deviceId);
  await askWhetherSame(taking, record.growOutId, plant.value);
  taking.change.touch(growOut.varietyId);
  return accepted(null);
}

/** A phone says yes and no as 1 and 0, and a plant that nobody looked at in words. Refused: what the trait's kind does not have. */
export function scoreSent(trait: TraitDefinition, { value, text }: ScoreValue): Outcome<ScoreValue> {
  const said = text ?? (value === null ? "" : writeDecimal(value));
  const typed = trait.kind === "yes-no" && text === null ? ({ "1": yes, "0": no }[said] ?? said) : said;
  if (typed === "") return refused(refusal("missing", ["value"], "", "was scored", "set this aside"));
  if (trait.kind === "yes-no" && typed === notLooked) return accepted({ value: null, text: notLooked });
  const read = readScore(trait, typed, "north");
  if (read.ok) return read;
  return refused(...read.refusals.map((each) => ({ ...each, sentence: `${trait.name}: ${each.sentence}` })));
}

/** Marks or scores, as far as they are looked through here. */
interface SeenRows {
  count(args: { where: { replacesId: string } }): Promise<number>;
  findUnique(args: {
    where: { id: string };
    select: { id: true; plantId: true; stewardId: true };
  }): Promise<{ readonly plantId: string; readonly stewardId: string | null } | null>;
  findMany(args: {
    where: { plantId: string; stewardId: string; traitId?: string };
    orderBy: { id: "desc" };
    select: { id: true };
  }): Promise<{ readonly id: string }[]>;
}

/**
 * The row that a mark or score stands in the place of; null for none. Another's is left to stand beside it, and one's own gives way. Where the record that it corrects is itself not settled, this one settles it; where
 * another stands in that one's place already, both stand beside each other. Waits where what it corrects has not come.
 */
async function standsInPlaceOf(
  taking: Taking,
  table: "Mark" | "Score",
  record: FieldRecordOf<"mark"> | FieldRecordOf<"score">,
  replaces: string | null,
): Promise<Outcome<string | null>> {
  const { tx } = taking;
  const rows = (table === "Mark" ? tx.mark : tx.score) as unknown as SeenRows;
  const isReplaced = async (id: string) => (await rows.count({ where: { replacesId: id } })) > 0;
  for (let id = replaces; id !== null; ) {
    const row = await rows.findUnique({ where: { id }, select: { id: true, plantId: true, stewardId: true } });
    if (row) {
      const hand = await handOf(taking, record);
      if (row.stewardId === null || hand === null || row.stewardId === hand)
        return accepted((await isReplaced(id)) ? null : id);
      const ofTrait = record.kind === "score" ? { traitId: record.body.traitId } : {};
      const where = { plantId: row.plantId, stewardId: hand, ...ofTrait };
      const own = await rows.findMany({ where, orderBy: { id: "desc" }, select: { id: true } });
      for (const each of own) if (!(await isReplaced(each.id))) return accepted(each.id);
      return accepted(null);
    }
    const stored = await tx.fieldRecord.findUnique({ where: { id } });
    if (!stored) {
      const removed = (await tx.change.count({ where: { recordId: id } })) > 0;
      return removed ? accepted(null) : refused(waitFor(id, "what it corrects"));
    }
    if (stored.state === "taken") return accepted(null);
    if (stored.state === "question") {
      if (refusalsOf(stored).some(({ code }) => code === waits)) return refused(waitFor(id, "what it corrects"));
      await settleSent(taking, stored, {
        state: "set aside",
        code: takenBack,
        words: "Put right by a later record of the phone",
      });
    }
    const sent = sentRecord(stored);
    id = sent.kind === "mark" || sent.kind === "score" ? sent.body.replaces : null;
  }
  return accepted(null);
}
