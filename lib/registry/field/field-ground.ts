import type { Transaction } from "@/lib/db";
import type { RowOf } from "../change-set/records";
import { samePlant } from "./asked-of-grow-out";

type PlantRow = RowOf<"Plant">;
type MarkRow = Pick<RowOf<"Mark">, "id" | "plantId" | "tag" | "replacesId" | "deviceId">;
type QuestionRow = Pick<RowOf<"Question">, "id" | "plantId" | "otherPlantId" | "answeredAt">;

/** The plants of a grow-out with what two people's marks are compared by. */
export interface PlantsHere {
  readonly plants: Map<string, PlantRow>;
  readonly marks: Map<string, MarkRow>;
  /** the phones that marked or scored a plant */
  readonly phones: Map<string, Set<string>>;
  /** whether two records are one plant: asked, or answered */
  readonly questions: Map<string, QuestionRow>;
}

/** What records are judged against, read once for all records of a heap and kept up with what they write. */
export class FieldGround {
  private readonly growOuts = new Map<string, Promise<RowOf<"GrowOut"> | null>>();
  private readonly plants = new Map<string, Promise<PlantsHere>>();
  private readonly traits = new Map<string, Promise<RowOf<"Trait"> | null>>();
  private readonly stewards = new Map<string, Promise<boolean>>();

  constructor(private readonly tx: Transaction) {}

  /** Reads again what a refused record may have changed in memory only. */
  forget(growOutId: string): void {
    this.growOuts.delete(growOutId);
    this.plants.delete(growOutId);
  }

  growOut(id: string): Promise<RowOf<"GrowOut"> | null> {
    return kept(this.growOuts, id, () => this.tx.growOut.findUnique({ where: { id } }));
  }

  trait(id: string): Promise<RowOf<"Trait"> | null> {
    return kept(this.traits, id, () => this.tx.trait.findUnique({ where: { id } }));
  }

  isSteward(id: string): Promise<boolean> {
    return kept(this.stewards, id, async () => (await this.tx.steward.count({ where: { id } })) > 0);
  }

  plantsOf(growOutId: string): Promise<PlantsHere> {
    return kept(this.plants, growOutId, () => this.readPlants(growOutId));
  }

  private async readPlants(growOutId: string): Promise<PlantsHere> {
    const here = { plant: { growOutId } };
    const plants = await this.tx.plant.findMany({ where: { growOutId } });
    const marks = await this.tx.mark.findMany({
      where: here,
      select: { id: true, plantId: true, tag: true, replacesId: true, deviceId: true },
    });
    const scored = await this.tx.score.findMany({
      where: { ...here, deviceId: { not: null } },
      select: { plantId: true, deviceId: true },
      distinct: ["plantId", "deviceId"],
    });
    const questions = await this.tx.question.findMany({
      where: { growOutId, kind: samePlant },
      select: { id: true, plantId: true, otherPlantId: true, answeredAt: true },
    });
    const phones = new Map<string, Set<string>>();
    for (const { plantId, deviceId } of [...marks, ...scored]) if (deviceId !== null) addTo(phones, plantId, deviceId);
    return { plants: byId(plants), marks: byId(marks), phones, questions: byId(questions) };
  }
}

/** Notes that a phone marked or scored a plant. */
export function addTo(phones: Map<string, Set<string>>, plantId: string, deviceId: string): void {
  phones.set(plantId, (phones.get(plantId) ?? new Set()).add(deviceId));
}

function byId<R extends { readonly id: string }>(rows: readonly R[]): Map<string, R> {
  return new Map(rows.map((row) => [row.id, row]));
}

function kept<T>(read: Map<string, Promise<T>>, key: string, make: () => Promise<T>): Promise<T> {
  const known = read.get(key);
  if (known) return known;
  const made = make();
  read.set(key, made);
  return made;
}
