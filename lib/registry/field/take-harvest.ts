import { may } from "@/lib/access/permissions";
import type { FieldRecordOf } from "@/lib/schemas/field/field-records";
import type { ToldParent } from "@/lib/schemas/harvests/harvest-entry";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import type { RowOf } from "../change-set/records";
import { enterHarvest } from "../harvests/record-harvest";
import { settleSent } from "./settle-sent";
import { isTakenBack, type StoredRecord, sentRecord, superseded, waitFor } from "./stored-record";
import { plantFor } from "./take-plant";
import { commonFaults, fromPhone, fuzzyDay, type HowTaken, handOf, seenOn, type Taking } from "./taking";

type Taken = FieldRecordOf<"taken">;

/**
 * Seed taken in waits for its harvest, which names it. Refused where it comes when its harvest is entered and does not name it; where another of its phone
 * stands in its place by then, it is set aside.
 */
export async function takeSeedTaken(taking: Taking, record: Taken): Promise<Outcome<null>> {
  const { harvestId } = record.body;
  const others = await sentOfHarvest(taking, record.deviceId, harvestId);
  if (!others.some(({ sent, row }) => sent.kind === "harvest" && row.state === "taken"))
    return refused(waitFor(harvestId, "its harvest"));
  const later = others.find(
    ({ row, sent }) => sent.kind === "taken" && sent.body.replaces === record.id && !isTakenBack(row),
  );
  if (later) return refused(supersededBy(later.row.id));
  const needed = "put the harvest right, or set this aside";
  return refused(
    refusal("harvest-closed", ["plant"], record.body.plant.name, "came after its harvest was entered", needed),
  );
}

function supersededBy(id: string) {
  return {
    code: superseded,
    path: [],
    given: id,
    needed: "",
    sentence: "was put right by a later record of the phone",
  };
}

/**
 * A harvest whose parts are all here is entered by the rules of the desk: it becomes a lot with a number of its own, with what each plant gave and which
 * seed was lost. Waits for parts that have not come; refused by whom may not harvest, and by the rules of harvests.
 */
export async function takeHarvest(
  taking: Taking,
  record: FieldRecordOf<"harvest">,
  growOut: RowOf<"GrowOut">,
  how: HowTaken,
): Promise<Outcome<null>> {
  const parts = await partsOf(taking, record);
  if (!parts.ok) return parts;
  const allowed = may(taking.actor, "record");
  if (!allowed.ok) {
    const needed = "the steward of the grow-out or the owner enters it";
    return refused(refusal("not-allowed", ["harvest"], "a harvest", "makes a lot, which a helper may not", needed));
  }
  const faults = (await commonFaults(taking, record, growOut, how)).filter(({ code }) => code !== "over");
  if (faults.length > 0) return refused(...faults);
  const told: ToldParent[] = [];
  for (const [row, part] of parts.value.standing.entries()) {
    const { plant: sent, fate, grams, seeds } = part.body;
    if (fate === "not taken") continue;
    const plant = await plantFor(taking, part, sent, how);
    if (!plant.ok) return plant;
    const leading = (await taking.ground.plantsOf(record.growOutId)).plants.get(plant.value)?.sameAsId ?? plant.value;
    told.push({ row, plantId: leading, grams, seeds, lost: fate === "kept" ? null : fate.slice("lost: ".length) });
  }
  const holder = growOut.stewardId
    ? await taking.tx.person.findUnique({ where: { stewardId: growOut.stewardId }, select: { name: true } })
    : null;
  const nothing = { seedParents: null, grams: null, seeds: null, detasselled: null, seedParentsDetasselled: null };
  const input = {
    ...nothing,
    ...{ mouldyShare: null, number: null, newHolder: null, holder: holder?.name ?? null },
    ...{ on: fuzzyDay(seenOn(record, how).on), bulked: record.body.bulked, note: record.body.note, parents: told },
  };
  const today = seenOn(record, how).on;
  const entered = await enterHarvest(taking.change, record.growOutId, input, today, {
    ...{ id: record.id, from: fromPhone(record), stewardId: await handOf(taking, record) },
  });
  if (!entered.ok) return entered;
  for (const row of parts.value.rows)
    await settleSent(taking, row, { state: "taken", words: "Entered with its harvest" });
  for (const row of parts.value.replaced)
    await settleSent(taking, row, { state: "set aside", code: superseded, words: "Put right by a later record" });
  return accepted(null);
}

/** The seed that a harvest names, as it stands; what was taken back is none of it. */
export async function partsOf(
  taking: Pick<Taking, "tx">,
  record: FieldRecordOf<"harvest">,
): Promise<Outcome<{ standing: readonly Taken[]; rows: readonly StoredRecord[]; replaced: readonly StoredRecord[] }>> {
  const others = await sentOfHarvest(taking, record.deviceId, record.body.harvestId);
  const byId = new Map(others.map((each) => [each.row.id, each]));
  const missing = record.body.parts.find((id) => !byId.has(id));
  if (missing !== undefined) return refused(waitFor(missing, "the seed that it names"));
  const replacedBy = new Map(
    others.flatMap((each) =>
      each.sent.kind === "taken" && each.sent.body.replaces && !isTakenBack(each.row)
        ? [[each.sent.body.replaces, each]]
        : [],
    ),
  );
  const standing = new Map<string, { row: StoredRecord; sent: Taken }>();
  for (const id of record.body.parts) {
    let part = byId.get(id);
    for (let next = part; next; next = replacedBy.get(next.row.id)) part = next;
    if (part?.sent.kind === "taken" && !isTakenBack(part.row)) standing.set(part.row.id, part as never);
  }
  const parts = [...standing.values()];
  const replaced = others.flatMap(({ row, sent }) =>
    sent.kind === "taken" && row.state === "question" && replacedBy.has(row.id) ? [row] : [],
  );
  return accepted({ standing: parts.map(({ sent }) => sent), rows: parts.map(({ row }) => row), replaced });
}

/** What a phone sent of one harvest, in its order. */
async function sentOfHarvest({ tx }: Pick<Taking, "tx">, deviceId: string, harvestId: string) {
  const rows = await tx.fieldRecord.findMany({
    where: { deviceId, kind: { in: ["taken", "harvest"] }, body: { contains: harvestId } },
    orderBy: { sequence: "asc" },
  });
  return rows.map((row) => ({ row, sent: sentRecord(row) }));
}
