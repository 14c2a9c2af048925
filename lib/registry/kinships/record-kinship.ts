import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import type { KinshipInput } from "@/lib/schemas/lots/lineage-claims";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { foldName } from "../names/fold-name";
import { oneMeant } from "../search/one-meant";
import { coancestryFaults } from "./kinship-faults";

/**
 * Records how two founder lots are related and how that is known: unrelated, of the same source (as close as the older is to itself), or a
 * coancestry. The figures of what descends from both follow it; until one is recorded they show a span.
 * Refused: a lot that is not on record, no founder, of another crop, or named twice; a pair that is recorded already; a coancestry that does
 * not go with the kind.
 */
export async function recordKinship(
  db: Database,
  actor: Actor,
  input: KinshipInput,
): Promise<Outcome<Performed<{ kinshipId: string }>>> {
  const title = `Kinship of lots ${input.first} and ${input.second}: ${input.kind}`;
  return perform(db, actor, { action: "record", title }, async (change, tx) => {
    const [first, second] = [
      await founderNamed(tx, input.first, "first"),
      await founderNamed(tx, input.second, "second"),
    ];
    const faults = [...[first, second].flatMap((each) => (each.ok ? [] : each.refusals)), ...coancestryFaults(input)];
    if (faults.length > 0 || !first.ok || !second.ok) return refused(...faults);
    const [one, other] = [first.value, second.value];
    if (one.id === other.id)
      return refused(refusal("of-itself", ["second"], input.second, "is the first lot itself", "choose two lots"));
    if (one.variety.cropId !== other.variety.cropId) {
      const wrong = `is of ${other.variety.name}, another crop than ${one.variety.name}`;
      return refused(refusal("other-crop", ["second"], input.second, wrong, "lots of different crops are no kin"));
    }
    if (await tx.founderKinship.count({ where: pairOf(recordIds(one), recordIds(other)) })) {
      const needed = "put that right instead";
      return refused(
        refusal("recorded-already", ["second"], input.second, "has a kinship to the first already", needed),
      );
    }
    const kinshipId = uuidv7();
    const { kind, coancestry, how } = input;
    await change.create("FounderKinship", {
      ...{ id: kinshipId, firstId: one.id, secondId: other.id },
      ...{ kind, coancestry, how },
    });
    change.touch(one.varietyId, other.varietyId);
    return accepted({ kinshipId });
  });
}

/** A kinship may stand under another record of either lot. */
function pairOf(one: string[], other: string[]) {
  return {
    OR: [
      { firstId: { in: one }, secondId: { in: other } },
      { firstId: { in: other }, secondId: { in: one } },
    ],
  };
}

function recordIds({ id, otherRecords }: { readonly id: string; readonly otherRecords: readonly { id: string }[] }) {
  return [id, ...otherRecords.map((each) => each.id)];
}

/** The founder lot of a number; of several records of one lot the leading one. */
async function founderNamed(tx: Transaction, number: string, field: string) {
  const variety = { select: { name: true, cropId: true } };
  const otherRecords = { select: { id: true } };
  const found = await tx.lot.findMany({
    where: { numberKey: foldName(number) },
    include: { variety, otherRecords, sameAs: { include: { variety, otherRecords } } },
  });
  const record = oneMeant(number, found, (each) => each.number);
  const lot = record?.sameAs ?? record;
  if (!lot)
    return refused(refusal("unknown-lot", [field], number, "is no lot of this registry", "choose one of the list"));
  if (lot.kind === "founder") return accepted(lot);
  const needed = "how it is related follows from its parents; choose a founder";
  return refused(refusal("no-founder", [field], number, "is no founder lot: its parents are on record", needed));
}
