import type { Prisma } from "@/lib/db";

export type SeenTable = Prisma.ModelName;
type Named = Readonly<Record<string, SeenTable>>;

/** What becomes of a row that names another which is hidden: the row goes with it, or only its naming does. */
export interface Hanging {
  readonly hide?: Named;
  readonly blank?: Named;
}

/**
 * By table: the columns that name a row of a table whose rows can be hidden. What hangs on a hidden variety, lot or grow-out is hidden with it,
 * link by link; where the row says something of its own, it stays, and what it names is not there. A test holds this list against the foreign keys.
 */
export const hanging: Readonly<Partial<Record<SeenTable, Hanging>>> = {
  VarietyName: { hide: { varietyId: "Variety", possiblySameAsId: "Variety" } },
  TypeTrait: { hide: { varietyId: "Variety" }, blank: { traitId: "Trait" } },
  Strain: { hide: { varietyId: "Variety" } },
  Trait: { hide: { varietyId: "Variety" }, blank: { previousId: "Trait" } },
  Lot: { hide: { varietyId: "Variety" }, blank: { growOutId: "GrowOut", strainId: "Strain", sameAsId: "Lot" } },
  LotParent: { hide: { lotId: "Lot", parentLotId: "Lot" } },
  LineageClaim: {
    hide: { lotId: "Lot", parentLotId: "Lot" },
    blank: { storyId: "Story" },
  },
  FounderKinship: { hide: { firstId: "Lot", secondId: "Lot" } },
  LotMaking: { hide: { lotId: "Lot" } },
  Container: { hide: { lotId: "Lot" }, blank: { placeId: "Place" } },
  LedgerEntry: {
    hide: { lotId: "Lot" },
    blank: { otherLotId: "Lot", transferId: "Transfer", replacesId: "LedgerEntry" },
  },
  SeedWeighing: { hide: { lotId: "Lot" } },
  MoistureReading: { hide: { lotId: "Lot" } },
  Drying: { hide: { lotId: "Lot" } },
  GerminationTest: { hide: { lotId: "Lot" } },
  TestReplicate: { hide: { testId: "GerminationTest" } },
  TestCount: { hide: { replicateId: "TestReplicate" }, blank: { replacesId: "TestCount" } },
  GrowOut: { hide: { varietyId: "Variety" } },
  GrowOutParent: { hide: { growOutId: "GrowOut", lotId: "Lot" } },
  GrowOutPlot: { hide: { growOutId: "GrowOut" } },
  StageCount: { hide: { growOutId: "GrowOut" } },
  RoguePass: { hide: { growOutId: "GrowOut" } },
  FloweringNote: { hide: { growOutId: "GrowOut", neighbourId: "NeighbourSource" } },
  NeighbourSource: { hide: { growOutId: "GrowOut" }, blank: { varietyId: "Variety" } },
  IsolationMethod: { hide: { growOutId: "GrowOut" } },
  Plant: { hide: { growOutId: "GrowOut" }, blank: { sameAsId: "Plant" } },
  Mark: { hide: { plantId: "Plant" } },
  Score: { hide: { plantId: "Plant", traitId: "Trait" }, blank: { replacesId: "Score" } },
  Harvest: { hide: { growOutId: "GrowOut", lotId: "Lot" } },
  HarvestSeedParent: { hide: { harvestId: "Harvest" }, blank: { plantId: "Plant" } },
  Transfer: { hide: { lotId: "Lot", newLotId: "Lot" } },
  Promise: { hide: { varietyId: "Variety", lotId: "Lot", transferId: "Transfer" } },
  HolderConfirmation: { hide: { varietyId: "Variety", lotId: "Lot" } },
  Story: { hide: { varietyId: "Variety", lotId: "Lot", growOutId: "GrowOut" } },
  Observation: { hide: { varietyId: "Variety", lotId: "Lot", growOutId: "GrowOut" } },
  Photo: {
    hide: {
      ...{ varietyId: "Variety", lotId: "Lot", growOutId: "GrowOut", plantId: "Plant", testId: "GerminationTest" },
      traitId: "Trait",
    },
  },
  Warning: { hide: { varietyId: "Variety", lotId: "Lot" } },
  Question: {
    hide: {
      ...{ varietyId: "Variety", lotId: "Lot", growOutId: "GrowOut", plantId: "Plant", testId: "GerminationTest" },
      ...{ otherLotId: "Lot", otherPlantId: "Plant", fieldRecordId: "FieldRecord" },
    },
  },
  FieldDevice: { blank: { userId: "User" } },
  FieldRecord: { hide: { growOutId: "GrowOut", deviceId: "FieldDevice" }, blank: { changeSetId: "ChangeSet" } },
  Change: { hide: { changeSetId: "ChangeSet" } },
  ChangeSet: { blank: { undoesId: "ChangeSet" } },
};

/** Tables that are nobody's but the owner's: who comes in, and how. */
export const ownersTables: readonly SeenTable[] = [
  "User",
  "Session",
  "Account",
  "Verification",
  "Passkey",
  "RateLimit",
  "Member",
  "MemberGrowOut",
  "Invitation",
];

/** What somebody who has not signed in sees nothing of: the rest is varieties that are public, told where they are kept to the village. */
export const notForThePublic: readonly SeenTable[] = [
  ...ownersTables,
  "Person",
  "Place",
  "Plot",
  "GrowOutPlot",
  "Container",
  "LedgerEntry",
  "Transfer",
  "Promise",
  "HolderConfirmation",
  "NeighbourSource",
  "IsolationMethod",
  "Question",
  "FieldDevice",
  "FieldRecord",
  "ChangeSet",
  "Change",
];

/** Tables of which everybody who may read at all sees every row and column. */
export const openToReaders: readonly SeenTable[] = [
  "Crop",
  "CropOverride",
  "CrossingGroup",
  "CrossingPair",
  "Setting",
  "TableOverride",
];
