import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import type { ContainerInput } from "@/lib/schemas/lots/record-container";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { ChangeWriter } from "../change-set/writer";
import { unknownLot } from "../ledger/record-ledger-entry";
import { newLabelCode } from "../lots/new-label-code";
import { foldName } from "../names/fold-name";

/** Says in which container part of a lot is kept, and where. Filling a container never makes a lot and moves no seed in the ledger. */
export async function recordContainer(
  db: Database,
  actor: Actor,
  lotId: string,
  input: ContainerInput,
): Promise<Outcome<Performed<{ containerId: string; code: string }>>> {
  const lot = await db.read.lot.findUnique({ where: { id: lotId } });
  if (!lot) return refused(unknownLot(lotId));
  const title = `Lot ${lot.number}: a container${input.place ? ` in ${input.place}` : ""}`;
  return perform(db, actor, { action: "desk", title }, async (change, tx) => {
    const faults = [...(await codeFaults(tx, input.code, null)), ...countFaults(input)];
    if (faults.length > 0) return refused(...faults);
    const code = input.code ?? (await newLabelCode(tx));
    const containerId = uuidv7();
    const placeId = await placeOf(tx, change, input, lot.holderId);
    await change.create("Container", { id: containerId, code, lotId, placeId, ...plainFields(input) });
    change.touch(lot.varietyId);
    return accepted({ containerId, code });
  });
}

/** Says that a container stands elsewhere, holds another amount, was opened or sealed. */
export async function changeContainer(
  db: Database,
  actor: Actor,
  containerId: string,
  input: ContainerInput,
): Promise<Outcome<Performed<{ containerId: string; code: string }>>> {
  const container = await db.read.container.findUnique({ where: { id: containerId }, include: { lot: true } });
  if (!container)
    return refused(refusal("unknown", ["container"], containerId, "is no container here", "choose one of the list"));
  const { lot } = container;
  const title = `Lot ${lot.number}: container ${container.code}`;
  return perform(db, actor, { action: "correct-at-desk", title }, async (change, tx) => {
    const faults = [...(await codeFaults(tx, input.code, containerId)), ...countFaults(input)];
    if (faults.length > 0) return refused(...faults);
    const code = input.code ?? container.code;
    const placeId = await placeOf(tx, change, input, lot.holderId);
    await change.update("Container", containerId, { code, placeId, ...plainFields(input) });
    change.touch(lot.varietyId);
    return accepted({ containerId, code });
  });
}

function plainFields(input: ContainerInput) {
  return {
    kind: input.kind,
    amount: input.amount,
    unit: input.unit,
    sealedOn: input.sealedOn?.text ?? null,
    lastOpened: input.lastOpened?.text ?? null,
    desiccant: input.desiccant,
    note: input.note,
  };
}

/** The holder's place of that name; a name that is new here becomes a place. */
export async function placeOf(
  tx: Transaction,
  change: ChangeWriter,
  input: Pick<ContainerInput, "place" | "placeKind" | "building">,
  holderId: string | null,
): Promise<string | null> {
  if (input.place === null) return null;
  const nameKey = foldName(input.place);
  const found = await tx.place.findFirst({ where: { nameKey, stewardId: holderId } });
  if (found) return found.id;
  const id = uuidv7();
  await change.create("Place", {
    id,
    name: input.place,
    nameKey,
    stewardId: holderId,
    kind: input.placeKind,
    building: input.building,
  });
  return id;
}

async function codeFaults(tx: Transaction, code: string | null, own: string | null): Promise<Refusal[]> {
  if (code === null) return [];
  const taken = await tx.container.findUnique({ where: { code }, include: { lot: true } });
  if (!taken || taken.id === own) return [];
  const wrong = `is written on a container of lot ${taken.lot.number}`;
  return [refusal("code-taken", ["code"], code, wrong, "write another, or leave it empty for a new code")];
}

function countFaults(input: ContainerInput): Refusal[] {
  if (input.amount === null || input.unit === "g" || Number.isInteger(input.amount)) return [];
  return [refusal("not-a-count", ["amount"], input.amount, `is no number of ${input.unit}`, "write a whole number")];
}
