import { type Database, placeholders } from "@/lib/db";

/** The tables that fields of records point to, each with the column of its name (and of its id, where that is not `id`). */
const named = {
  Variety: ["name"],
  Lot: ["number"],
  GrowOut: ["name"],
  Person: ["name", "stewardId"],
  Strain: ["name"],
  Crop: ["commonName"],
  Place: ["name"],
  Plot: ["name"],
  GerminationTest: ["name"],
  TestReplicate: ["name"],
  Plant: ["name"],
  Trait: ["name"],
  NeighbourSource: ["what"],
  Transfer: ["kind"],
  CrossingGroup: ["key"],
  Harvest: ["on"],
  Story: ["words"],
  Member: ["role"],
  User: ["name"],
  FieldDevice: ["name"],
  FieldRecord: ["kind"],
} as const satisfies Record<string, readonly [string, string?]>;

type Target = keyof typeof named;

// The name of a field alone does not always say which table it points to; ids are of no two tables.
const targets: Readonly<Record<string, Target | readonly Target[]>> = {
  sameAsId: ["Lot", "Plant"],
  firstId: "Lot",
  secondId: "Lot",
  otherPlantId: "Plant",
  varietyId: "Variety",
  possiblySameAsId: "Variety",
  lotId: "Lot",
  parentLotId: "Lot",
  otherLotId: "Lot",
  newLotId: "Lot",
  growOutId: "GrowOut",
  stewardId: "Person",
  holderId: "Person",
  otherStewardId: "Person",
  fromStewardId: "Person",
  toStewardId: "Person",
  successorStewardId: "Person",
  strainId: "Strain",
  cropId: "Crop",
  placeId: "Place",
  plotId: "Plot",
  testId: "GerminationTest",
  replicateId: "TestReplicate",
  plantId: "Plant",
  traitId: "Trait",
  neighbourId: "NeighbourSource",
  transferId: "Transfer",
  crossingGroupId: "CrossingGroup",
  harvestId: "Harvest",
  storyId: "Story",
  memberId: "Member",
  userId: "User",
  deviceId: "FieldDevice",
  fieldRecordId: "FieldRecord",
};

/** So many names of one kind of record are looked up at once; a page shows fewer. */
const atMost = 2000;

/** Whether a field holds another record's id. */
export function pointsToRecord(field: string): boolean {
  return field in targets;
}

/** The names of the records that some fields point to, by their ids. One statement; none where no record is pointed to. */
export async function namesOfIds(
  db: Database,
  fields: Iterable<{ readonly field: string; readonly value: unknown }>,
): Promise<Map<string, string>> {
  const wanted = new Map<Target, Set<string>>();
  for (const { field, value } of fields) {
    if (typeof value !== "string") continue;
    for (const target of [targets[field] ?? []].flat())
      wanted.set(target, (wanted.get(target) ?? new Set()).add(value));
  }
  if (wanted.size === 0) return new Map();
  const ids = [...wanted].map(([table, own]) => [table, [...own].slice(0, atMost)] as const);
  const places = placeholders(
    db.engine,
    ids.reduce((sum, [, own]) => sum + own.length, 0),
  ).split(", ");
  const parts = ids.map(([table, own]) => {
    const [name, id = "id"] = named[table] as readonly [string, string?];
    const these = places.splice(0, own.length).join(", ");
    return `SELECT "${id}" AS "id", COALESCE("${name}", 'one without a name') AS "name" FROM "${table}" WHERE "${id}" IN (${these})`;
  });
  const all = ids.flatMap(([, own]) => own);
  const rows = await db.read.$queryRawUnsafe<{ id: string; name: string }[]>(parts.join(" UNION ALL "), ...all);
  return new Map(rows.map(({ id, name }) => [id, name]));
}
