import type { Prisma, Transaction } from "@/lib/db";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { profileOfCrop } from "../crops/profile-of-crop";
import { plantsToPull } from "./harvest-warnings";

/** A grow-out with what its harvests are checked against. */
const read = {
  variety: { include: { crop: { include: { overrides: true } } } },
  plants: { include: { marks: { orderBy: { id: "asc" } } }, orderBy: { id: "asc" } },
  harvests: { include: { parents: { orderBy: { id: "asc" } } }, orderBy: { id: "asc" } },
  lots: { include: { ledger: true }, orderBy: { id: "asc" } },
} satisfies Prisma.GrowOutInclude;

export type GrowOutForHarvest = Prisma.GrowOutGetPayload<{ include: typeof read }> & {
  readonly profile: Prisma.CropGetPayload<object>;
  readonly toPull: ReadonlyMap<string, string>;
};

/** Reads a grow-out inside the change that harvests it. */
export async function growOutForHarvest(tx: Transaction, id: string): Promise<Outcome<GrowOutForHarvest>> {
  const growOut = await tx.growOut.findUnique({ where: { id }, include: read });
  if (!growOut)
    return refused(refusal("unknown", ["growOut"], id, "is no grow-out of this registry", "choose one of the list"));
  const { crop } = growOut.variety;
  return accepted({ ...growOut, profile: profileOfCrop(crop, crop.overrides), toPull: plantsToPull(growOut.plants) });
}
