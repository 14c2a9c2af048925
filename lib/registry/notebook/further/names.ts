import type { Client, Transaction } from "@/lib/db";
import { sameName } from "../../names/fold-name";
import type { Joined, Named } from "./spec";

type Kind = Named | Joined;

/** Records by name and names by record, for each kind that a further file may name. */
export interface NameBook {
  idOf(kind: Kind, name: string): string | null;
  nameOf(kind: Kind, id: string): string | null;
  /** a record that was made since the book was read */
  add(kind: Kind, id: string, name: string): void;
}

export async function nameBook(db: Client | Transaction): Promise<NameBook> {
  const ids = new Map<string, string>();
  const names = new Map<string, string>();
  const add = (kind: Kind, id: string, name: string) => {
    if (!ids.has(`${kind} ${sameName(name)}`)) ids.set(`${kind} ${sameName(name)}`, id);
    names.set(`${kind} ${id}`, name);
  };
  const stewards = new Map((await db.person.findMany()).map((person) => [person.stewardId, person.name]));
  for (const [id, name] of stewards) add("steward", id, name);
  for (const { id, name } of await db.variety.findMany({ select: { id: true, name: true } })) add("variety", id, name);
  for (const { id, number } of await db.lot.findMany({ select: { id: true, number: true } })) add("lot", id, number);
  for (const { id, name } of await db.growOut.findMany({ select: { id: true, name: true } })) add("grow-out", id, name);
  for (const { id, name } of await db.germinationTest.findMany({ select: { id: true, name: true } }))
    add("test", id, name);
  for (const crop of await db.crop.findMany({ select: { id: true, key: true, own: true, commonName: true } })) {
    add("crop", crop.id, crop.own ? crop.commonName : crop.key);
  }
  const owned = { select: { id: true, name: true, stewardId: true }, orderBy: { id: "asc" } } as const;
  for (const place of await db.place.findMany(owned))
    add("place", place.id, withKeeper(place.name, stewards.get(place.stewardId ?? "")));
  for (const plot of await db.plot.findMany(owned))
    add("plot", plot.id, withKeeper(plot.name, stewards.get(plot.stewardId ?? "")));
  const strains = await db.strain.findMany({
    select: { id: true, name: true, varietyId: true },
    orderBy: { id: "asc" },
  });
  for (const { id, name, varietyId } of strains) add("strain", id, withKeeper(name, names.get(`variety ${varietyId}`)));
  for (const { id, name, growOutId } of await db.plant.findMany({ select: { id: true, name: true, growOutId: true } }))
    add("plant", id, joinedName([names.get(`grow-out ${growOutId}`) ?? "", name]));
  for (const trait of await db.trait.findMany({ orderBy: { id: "asc" } })) {
    const [variety, crop] = [names.get(`variety ${trait.varietyId}`), names.get(`crop ${trait.cropId}`)];
    add("trait", trait.id, traitName(trait.name, variety, crop, trait.version));
  }
  const transferNames = namesOfTransfers();
  const select = { id: true, kind: true, lotId: true, on: true } as const;
  for (const { id, kind, lotId, on } of await db.transfer.findMany({ select, orderBy: { id: "asc" } }))
    add("transfer", id, transferNames(kind, names.get(`lot ${lotId}`) ?? "", on));
  const inTurn = namesInTurn();
  const harvests = await db.harvest.findMany({
    select: { id: true, lotId: true, growOutId: true, replacesId: true },
    orderBy: { id: "asc" },
  });
  // Only harvests that stand have a name: those that were put right stand in no folder.
  const replaced = new Set(harvests.map((harvest) => harvest.replacesId));
  for (const { id, lotId, growOutId } of harvests.filter((harvest) => !replaced.has(harvest.id)))
    add("harvest", id, inTurn(harvestName(names.get(`lot ${lotId}`), names.get(`grow-out ${growOutId}`))));
  const storyNames = namesInTurn();
  for (const { id, words } of await db.story.findMany({ select: { id: true, words: true }, orderBy: { id: "asc" } }))
    add("story", id, storyNames(words));
  const neighbourNames = namesOfNeighbours();
  const standing = await db.neighbourSource.findMany({
    select: { id: true, what: true, growOutId: true, plotId: true },
    orderBy: { id: "asc" },
  });
  for (const { id, what, growOutId, plotId } of standing)
    add("neighbour", id, neighbourNames(names.get(`grow-out ${growOutId}`), names.get(`plot ${plotId}`), what));
  return {
    idOf: (kind, name) => ids.get(`${kind} ${sameName(name)}`) ?? null,
    nameOf: (kind, id) => names.get(`${kind} ${id}`) ?? null,
    add,
  };
}

/** Two stewards may each have a "top shelf", two varieties each a strain of one keeper. */
export function withKeeper(name: string, steward: string | null | undefined): string {
  return steward ? `${name} (${steward})` : name;
}

/** Gives each name once: the second that is so called gets "(2)" behind it. */
export function namesInTurn(): (name: string) => string {
  const counts = new Map<string, number>();
  return (name) => {
    const count = (counts.get(name) ?? 0) + 1;
    counts.set(name, count);
    return count === 1 ? name : `${name} (${count})`;
  };
}

/**
 * Names transfers in their order by kind, lot and day: "loan Quern 1 2024-05-03"; the second that is so called, "loan Quern 1 2024-05-03 (2)".
 */
export function namesOfTransfers(): (kind: string, lot: string, on: string) => string {
  const inTurn = namesInTurn();
  return (kind, lot, on) => inTurn(`${kind} ${lot} ${on}`);
}

/** A harvest is called by its lot; one of which no lot is on record, by its grow-out. */
export function harvestName(lot: string | null | undefined, growOut: string | null | undefined): string {
  return lot || (growOut ?? "");
}

/** A neighbour source by its grow-out, or by its plot where it has none, by what it is, and by its turn among those that are alike. */
export function neighbourName(
  growOut: string | null | undefined,
  plot: string | null | undefined,
  what: string,
  turn: number,
): string {
  return joinedName([growOut || "", growOut ? "" : (plot ?? ""), what, String(turn)]);
}

/** Names neighbour sources in their order. */
export function namesOfNeighbours(): (
  growOut: string | null | undefined,
  plot: string | null | undefined,
  what: string,
) => string {
  const turns = new Map<string, number>();
  return (growOut, plot, what) => {
    const alike = neighbourName(growOut, plot, what, 0);
    const turn = (turns.get(alike) ?? 0) + 1;
    turns.set(alike, turn);
    return neighbourName(growOut, plot, what, turn);
  };
}

/** The name of a record that is known by several cells, as one text. */
export function joinedName(parts: readonly string[]): string {
  return JSON.stringify(parts.map(sameName));
}

export function partsOf(name: string): readonly string[] {
  return JSON.parse(name) as string[];
}

/** A version of a trait: of one variety, of a crop, or shared by all. */
export function traitName(
  name: string,
  variety: string | null | undefined,
  crop: string | null | undefined,
  version: number | string,
): string {
  return joinedName([name, variety ?? "", crop ?? "", String(version)]);
}
