import type { Client, Database, Transaction } from "@/lib/db";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

/** What pictures are of: one record. A picture of a trait is of one variety's plants, and is seen by who sees that variety. */
export type PhotoSubject =
  | { readonly kind: "variety" | "lot" | "grow-out" | "test"; readonly id: string }
  | { readonly kind: "trait"; readonly id: string; readonly varietyId: string };

export const subjectKinds = [
  "variety",
  "lot",
  "grow-out",
  "test",
  "trait",
] as const satisfies readonly PhotoSubject["kind"][];

/** The columns of a photo that name its record. */
export function columnsOf(subject: PhotoSubject) {
  switch (subject.kind) {
    case "variety":
      return { varietyId: subject.id };
    case "lot":
      return { lotId: subject.id };
    case "grow-out":
      return { growOutId: subject.id };
    case "test":
      return { testId: subject.id };
    case "trait":
      return { traitId: subject.id, varietyId: subject.varietyId };
  }
}

/** The record in words: "lot M 1"; null where there is none, or none that the one who asks may see. */
export async function readSubject(db: Database, subject: PhotoSubject): Promise<string | null> {
  const found = await subjectInWords(db.read, subject);
  return found.ok ? found.value : null;
}

/** The record in words: "lot M 1". Refused where there is none, or none that the one who asks may see. */
export async function subjectInWords(tx: Client | Transaction, subject: PhotoSubject): Promise<Outcome<string>> {
  const found = await nameOf(tx, subject);
  if (found !== null) return accepted(subject.kind === "variety" ? found : `${subject.kind} ${found}`);
  const wrong = `is no ${subject.kind} of this registry`;
  return refused(refusal("unknown", ["of"], subject.id, wrong, "open its page and add the picture there"));
}

async function nameOf(tx: Client | Transaction, subject: PhotoSubject): Promise<string | null> {
  const where = { id: subject.id };
  switch (subject.kind) {
    case "variety":
      return (await tx.variety.findUnique({ where, select: { name: true } }))?.name ?? null;
    case "lot":
      return (await tx.lot.findUnique({ where, select: { number: true } }))?.number ?? null;
    case "grow-out":
      return (await tx.growOut.findUnique({ where, select: { name: true } }))?.name ?? null;
    case "test":
      return (await tx.germinationTest.findUnique({ where, select: { name: true } }))?.name ?? null;
    case "trait": {
      const trait = await tx.trait.findUnique({ where, select: { name: true } });
      const variety = await tx.variety.findUnique({ where: { id: subject.varietyId }, select: { name: true } });
      return trait && variety ? `${trait.name} of ${variety.name}` : null;
    }
  }
}
