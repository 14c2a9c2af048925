import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import type { RecordLotInput } from "@/lib/schemas/lots/record-lot";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { ChangeWriter } from "../change-set/writer";
import { foldName } from "../names/fold-name";
import { holderOfLot } from "./holder-of-lot";
import { newLabelCode } from "./new-label-code";
import { numberFaults } from "./number-faults";
import { varietyByName } from "./variety-by-name";

export interface RecordedLot {
  readonly lotId: string;
  readonly number: string;
}

/**
 * Enters a lot by hand: a founder lot (received, purchased, found, of a keeping that is not on record) or one more harvest of a grow-out
 * that is, with what is in the jar and the story it came with. It gets a label code for life; without a number the code is its number.
 */
export async function recordLot(
  db: Database,
  actor: Actor,
  input: RecordLotInput,
): Promise<Outcome<Performed<RecordedLot>>> {
  const title = `A lot of ${input.variety}${input.number ? `: ${input.number}` : ""}`;
  return perform(db, actor, { action: "desk", title }, async (change, tx) => {
    const variety = await varietyByName(tx, input.variety);
    const holder = await holderOfLot(tx, change, input);
    const source = variety.ok ? await growOutOf(tx, input, variety.value) : accepted(null);
    const faults = [
      ...[variety, holder, source].flatMap((each) => (each.ok ? [] : each.refusals)),
      ...(await numberFaults(tx, input.number)),
      ...founderFaults(input),
      ...amountFaults(input),
    ];
    if (faults.length > 0 || !variety.ok || !holder.ok || !source.ok) return refused(...faults);
    const code = await newLabelCode(tx);
    const number = input.number ?? code;
    const lotId = uuidv7();
    const founder = input.origin !== "harvest";
    await change.create("Lot", {
      id: lotId,
      number,
      numberKey: foldName(number),
      code,
      varietyId: variety.value.id,
      holderId: holder.value,
      kind: founder ? "founder" : "harvest",
      growOutId: source.value,
      origin: founder ? input.origin : "own grow-out",
      year: input.year?.text ?? null,
      yearFirst: input.year?.first ?? null,
      yearLast: input.year?.last ?? null,
      yearWords: input.yearWords,
      thousandSeedGrams: input.thousandSeedGrams,
      founderLines: input.founderLines,
      inbreeding: input.inbreeding,
      treatment: input.treatment,
      treatmentSubstance: input.treatmentSubstance,
      identityGrade: input.identityGrade,
      donorNumber: input.donorNumber,
      notes: input.notes,
    });
    await firstEntry(change, lotId, input);
    if (input.story)
      await change.create("Story", {
        id: uuidv7(),
        lotId,
        words: input.story,
        teller: input.giver,
        stewardId: actor.stewardId,
      });
    change.touch(variety.value.id);
    return accepted({ lotId, number });
  });
}

async function firstEntry(change: ChangeWriter, lotId: string, input: RecordLotInput): Promise<void> {
  if (input.amount === null || input.amountOn === null) return;
  await change.create("LedgerEntry", {
    id: uuidv7(),
    lotId,
    on: input.amountOn.text,
    onFirst: input.amountOn.first,
    onLast: input.amountOn.last,
    kind: input.amountKind,
    amount: input.amount,
    unit: "g",
    other: input.amountKind === "received" ? input.giver : null,
  });
}

async function growOutOf(
  tx: Transaction,
  input: RecordLotInput,
  variety: { id: string; name: string },
): Promise<Outcome<string | null>> {
  if (input.origin !== "harvest") return accepted(null);
  const path = ["growOut"];
  if (input.growOut === null)
    return refused(refusal("missing", path, "", "stands here", "write the grow-out that it was harvested from"));
  const found = await tx.growOut.findMany({ where: { nameKey: foldName(input.growOut) } });
  const growOut = found.find((each) => each.name === input.growOut) ?? found[0];
  if (!growOut) {
    const needed = "choose one of the list; where it is not on record, the lot's parents are not known here";
    return refused(refusal("unknown-grow-out", path, input.growOut, "is no grow-out of this registry", needed));
  }
  if (growOut.varietyId !== variety.id)
    return refused(
      refusal(
        "grow-out-of-another",
        path,
        growOut.name,
        `is no grow-out of ${variety.name}`,
        "choose one of this variety",
      ),
    );
  return accepted(growOut.id);
}

/** What is only said of a lot whose parents are not on record. */
function founderFaults(input: RecordLotInput): Refusal[] {
  if (input.origin !== "harvest") return [];
  const needed = "leave it empty: it follows from the grow-out";
  return (["founderLines", "inbreeding"] as const)
    .filter((field) => input[field] !== null)
    .map((field) => refusal("founder-only", [field], input[field], "is said of founder lots only", needed));
}

function amountFaults(input: RecordLotInput): Refusal[] {
  if (input.amount === null) return [];
  const faults: Refusal[] = [];
  if (input.amount === 0 && input.amountKind !== "weighed")
    faults.push(refusal("nothing", ["amount"], 0, "moves no seed", "write an amount above 0, or choose weighed"));
  if (input.amountOn === null)
    faults.push(refusal("missing", ["amountOn"], "", "stands here", "write when it was weighed or came in"));
  return faults;
}
