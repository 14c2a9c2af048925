import type { TableName } from "../change-set/records";

/**
 * Where the owner of a table's row is found. Named in several ways, each that is named must be the actor's own; with `any` one is enough.
 */
export interface Ownership {
  /** columns that name the steward whose it is */
  readonly hands?: readonly string[];
  /** columns that name a row of another table, whose owner is the owner */
  readonly through?: Readonly<Record<string, TableName>>;
  readonly any?: true;
  /** whoever may try the action may add one; to change it, it must be one's own */
  readonly anybodyAdds?: true;
  /** whoever may try the action may write it, and change it */
  readonly anybodyWrites?: true;
  /** of the whole registry: only the owner of the registry writes it */
  readonly registry?: true;
  /** a librarian writes it: `adds` only new ones */
  readonly desk?: "writes" | "adds";
  /** a helper writes it on a grow-out that is named; a list: only these columns, and no new rows */
  readonly field?: "writes" | readonly string[];
}

const ofLot: Ownership = { through: { lotId: "Lot" }, desk: "writes" };
const inField: Ownership = { through: { growOutId: "GrowOut" }, field: "writes" };
const registry: Ownership = { registry: true };

/**
 * The table of owners. A lot belongs to its holder, a grow-out and a plot to their steward, and what hangs on them likewise. A variety is kept in
 * common: who keeps it (holds a lot, has a grow-out or a strain of it) may change what is written of it; one that nobody keeps, anybody.
 * Seed in another's hand is that hand's, but for the change set that puts it there. A test fails for a table that has no row here.
 */
export const ownership: Readonly<Record<TableName, Ownership>> = {
  Steward: { hands: ["id"], anybodyAdds: true, desk: "writes" },
  Person: { hands: ["stewardId"], anybodyAdds: true, desk: "writes" },
  Crop: registry,
  CropOverride: registry,
  CrossingGroup: registry,
  CrossingPair: registry,
  Setting: registry,
  TableOverride: registry,
  Member: registry,
  MemberGrowOut: registry,
  Invitation: registry,
  Variety: { through: { id: "Variety" }, anybodyAdds: true, desk: "adds" },
  VarietyName: { through: { varietyId: "Variety" }, desk: "adds" },
  TypeTrait: { through: { varietyId: "Variety" } },
  Strain: { hands: ["stewardId"], through: { varietyId: "Variety" }, any: true, desk: "adds" },
  Trait: { through: { varietyId: "Variety" } },
  Lot: { hands: ["holderId"], desk: "writes" },
  LotParent: ofLot,
  LotMaking: ofLot,
  LineageClaim: ofLot,
  FounderKinship: { through: { firstId: "Lot", secondId: "Lot" }, any: true },
  Place: { hands: ["stewardId"], desk: "writes" },
  Container: ofLot,
  LedgerEntry: ofLot,
  SeedWeighing: ofLot,
  MoistureReading: ofLot,
  Drying: ofLot,
  GerminationTest: ofLot,
  TestReplicate: { through: { testId: "GerminationTest" }, desk: "writes" },
  TestCount: { through: { replicateId: "TestReplicate" }, desk: "writes" },
  // What follows from counts and passes stands on the grow-out, too.
  GrowOut: {
    hands: ["stewardId"],
    field: [
      ...["plantsStanding", "malesStanding", "roguedBeforePollen", "roguedAfterPollen", "neighboursLookedOn"],
      ...["detasselled"],
    ],
  },
  GrowOutParent: { through: { growOutId: "GrowOut" } },
  Plot: { hands: ["stewardId"] },
  GrowOutPlot: { through: { growOutId: "GrowOut" } },
  StageCount: inField,
  RoguePass: inField,
  FloweringNote: { through: { growOutId: "GrowOut", neighbourId: "NeighbourSource" }, field: "writes" },
  NeighbourSource: { through: { growOutId: "GrowOut", plotId: "Plot" }, field: "writes" },
  IsolationMethod: inField,
  Plant: inField,
  Mark: { through: { plantId: "Plant" }, field: "writes" },
  Score: { through: { plantId: "Plant" }, field: "writes" },
  Harvest: { through: { growOutId: "GrowOut" } },
  HarvestSeedParent: { through: { harvestId: "Harvest" } },
  Transfer: { hands: ["fromStewardId", "toStewardId"], any: true, desk: "writes" },
  Promise: { hands: ["stewardId"], through: { transferId: "Transfer", lotId: "Lot" }, any: true, desk: "writes" },
  HolderConfirmation: { hands: ["stewardId"], through: { varietyId: "Variety" }, any: true, desk: "writes" },
  Story: { through: { varietyId: "Variety", lotId: "Lot", growOutId: "GrowOut" }, any: true, desk: "writes" },
  Observation: {
    through: { varietyId: "Variety", lotId: "Lot", growOutId: "GrowOut" },
    any: true,
    desk: "writes",
    field: "writes",
  },
  Photo: {
    through: { varietyId: "Variety", lotId: "Lot", growOutId: "GrowOut", plantId: "Plant", testId: "GerminationTest" },
    any: true,
    desk: "writes",
    field: "writes",
  },
  Warning: { through: { varietyId: "Variety", lotId: "Lot" }, any: true, desk: "writes" },
  Question: {
    through: {
      ...{ varietyId: "Variety", lotId: "Lot", growOutId: "GrowOut", plantId: "Plant", testId: "GerminationTest" },
      fieldRecordId: "FieldRecord",
    },
    any: true,
    anybodyAdds: true,
    desk: "writes",
    field: "writes",
  },
  // A phone is registered by whoever carries it; what it sends says whose grow-out it is.
  FieldDevice: { anybodyWrites: true, field: "writes" },
  // What was seen is stored, whoever sends it, and a question asked; what is made of it goes by the tables above.
  FieldRecord: { through: { growOutId: "GrowOut" }, anybodyAdds: true, field: "writes" },
};
