import type { Prisma, Transaction } from "@/lib/db";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { grouped } from "../change-set/grouped";
import { profileOfCrop } from "../crops/profile-of-crop";
import { plantsToPull } from "./harvest-warnings";

/** A grow-out with what its harvests are checked against. */
const read = {
  variety: { include: { crop: { include: { overrides: true } } } },
  harvests: { include: { parents: { orderBy: { id: "asc" } } }, orderBy: { id: "asc" } },
  lots: { include: { ledger: true }, orderBy: { id: "asc" } },
} satisfies Prisma.GrowOutInclude;

export type GrowOutForHarvest = Prisma.GrowOutGetPayload<{ include: typeof read }> & {
  readonly plants: readonly Prisma.PlantGetPayload<{ include: { marks: true } }>[];
  readonly profile: Prisma.CropGetPayload<object>;
  readonly toPull: ReadonlyMap<string, string>;
};

/** Reads a grow-out inside the change that harvests it. */
export async function growOutForHarvest(tx: Transaction, id: string): Promise<Outcome<GrowOutForHarvest>> {
  const growOut = await tx.growOut.findUnique({ where: { id }, include: read });
  if (!growOut)
    return refused(refusal("unknown", ["growOut"], id, "is no grow-out of this registry", "choose one of the list"));
  const { crop } = growOut.variety;
  // Marks are read by a join: of more plants than a statement takes arguments they could not be loaded with them.
  const marks = grouped(
    await tx.mark.findMany({ where: { plant: { growOutId: id } }, orderBy: { id: "asc" } }),
    (mark) => mark.plantId,
  );
  const rows = await tx.plant.findMany({ where: { growOutId: id }, orderBy: { id: "asc" } });
  const plants = rows.map((plant) => ({ ...plant, marks: marks.get(plant.id) ?? [] }));
  // Two records of one plant gave as one.
  const leads = new Map(rows.flatMap(({ id: own, sameAsId }) => (sameAsId === null ? [] : [[own, sameAsId] as const])));
  const harvests = growOut.harvests.map((harvest) => ({
    ...harvest,
    parents: harvest.parents.map((parent) => ({
      ...parent,
      plantId: leads.get(parent.plantId ?? "") ?? parent.plantId,
    })),
  }));
  return accepted({
    ...growOut,
    harvests,
    plants,
    profile: profileOfCrop(crop, crop.overrides),
    toPull: plantsToPull(plants),
  });
}
