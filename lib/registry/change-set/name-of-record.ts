import type { Transaction } from "@/lib/db";
import type { TableName } from "./records";

type Row = Readonly<Record<string, unknown>>;

const nouns: Readonly<Partial<Record<TableName, string>>> = {
  LedgerEntry: "ledger entry",
  GerminationTest: "germination test",
  TestReplicate: "replicate",
  TestCount: "count",
  GrowOut: "grow-out",
  GrowOutParent: "parent of a grow-out",
  GrowOutPlot: "plot of a grow-out",
  LotParent: "parent of a lot",
  LotMaking: "blend or split",
  Person: "steward",
  VarietyName: "other name",
  TypeTrait: "line of the type description",
  CropOverride: "own value of a crop",
  TableOverride: "own value in a table",
  CrossingGroup: "crossing group",
  CrossingPair: "crossing pair",
  MoistureReading: "moisture reading",
  SeedWeighing: "seed weighing",
  StageCount: "count of plants",
  RoguePass: "rogue pass",
  FloweringNote: "flowering note",
  NeighbourSource: "neighbour source",
  IsolationMethod: "isolation method",
  HarvestSeedParent: "seed parent",
  HolderConfirmation: "word from a holder",
  LineageClaim: "claim of descent",
  FounderKinship: "kinship of founder lots",
  Member: "member",
  MemberGrowOut: "grow-out of a helper",
  Invitation: "invitation",
  Photo: "picture",
  FieldDevice: "phone of the field",
  FieldRecord: "record from the field",
};

/** The trade's word for a table's row. */
export function nounOf(table: TableName): string {
  return nouns[table] ?? table.toLowerCase();
}

/** A record by the name that a person knows it by; where it has none, by what it belongs to. */
export async function nameOfRecord(tx: Transaction, table: TableName, row: Row): Promise<string> {
  const own = text(row.number) ?? text(row.name) ?? text(row.code) ?? text(row.tag);
  if (own) return own;
  if (table === "Steward")
    return (await tx.person.findUnique({ where: { stewardId: String(row.id) } }))?.name ?? "(no name)";
  const words = [
    text(row.on) ?? text(row.year),
    text(row.kind) ?? text(row.stage) ?? text(row.trait) ?? text(row.key),
  ].filter(Boolean);
  if (typeof row.lotId === "string") {
    const lot = await tx.lot.findUnique({ where: { id: row.lotId }, select: { number: true } });
    if (lot) words.push(`of lot ${lot.number}`);
  } else if (typeof row.growOutId === "string") {
    const growOut = await tx.growOut.findUnique({ where: { id: row.growOutId }, select: { name: true } });
    if (growOut) words.push(`of grow-out ${growOut.name}`);
  } else if (typeof row.varietyId === "string") {
    const variety = await tx.variety.findUnique({ where: { id: row.varietyId }, select: { name: true } });
    if (variety) words.push(`of ${variety.name}`);
  } else if (typeof row.replicateId === "string") {
    const replicate = await tx.testReplicate.findUnique({ where: { id: row.replicateId }, include: { test: true } });
    if (replicate) words.push(`of test ${replicate.test.name}`);
  } else if (typeof row.testId === "string") {
    const test = await tx.germinationTest.findUnique({ where: { id: row.testId }, select: { name: true } });
    if (test) words.push(`of test ${test.name}`);
  } else if (typeof row.plantId === "string") {
    const plant = await tx.plant.findUnique({ where: { id: row.plantId }, select: { name: true } });
    if (plant) words.push(`of plant ${plant.name}`);
  }
  return words.length > 0 ? words.join(" ") : String(row.id ?? "");
}

function text(value: unknown): string | null {
  return typeof value === "string" && value !== "" ? value : null;
}
