import { uuidv7 } from "uuidv7";
import { type Actor, anybody, ownerHere, type Role } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { perform } from "@/lib/registry/change-set/perform";
import { foldName } from "@/lib/registry/names/fold-name";
import { accepted } from "@/lib/science/outcome";
import { grantedHere as granted } from "./granted-here";

/** Words that may stand in nothing that somebody reads who may not see them. All are invented. */
export const secrets = {
  contact: "zelkova-post-4417",
  address: "Quillgate 83",
  latitude: "47.918273",
  borrower: "Orsina Plett-Vahl",
  borrowerInWords: "the Wymark children",
  neighbour: "Gundobad Ritt's field",
  store: "under the stair at Quillgate",
  held: "Tharvale Moonseed",
  heldLot: "HELD-7731",
  heldGrowOut: "Moonseed behind the wall",
} as const;

export interface Circle {
  readonly stewards: {
    readonly anna: string;
    readonly bert: string;
    readonly library: string;
    readonly borrower: string;
  };
  readonly varieties: { readonly shared: string; readonly open: string; readonly held: string };
  readonly lots: {
    readonly annas: string;
    readonly berts: string;
    readonly librarys: string;
    readonly lent: string;
    readonly held: string;
  };
  readonly growOuts: { readonly annas: string; readonly berts: string; readonly held: string };
  readonly plants: { readonly annas: string };
  readonly transfers: { readonly lent: string; readonly outside: string };
}

export function actor(role: Role, stewardId: string | null = null, growOutIds: readonly string[] = []): Actor {
  if (role === "owner") return ownerHere();
  if (role === "public") return anybody();
  return { name: `a ${role} of the test`, role, stewardId, memberId: null, growOutIds, offsetMinutes: 0 };
}

const day = { on: "2026-03-04", onFirst: "2026-03-04", onLast: "2026-03-04" };

/** A small circle with everything in it that is private: Anna keeps the held variety, the library lent to a borrower. */
export async function aCircle(db: Database): Promise<Circle> {
  const id = () => uuidv7();
  const stewards = { anna: id(), bert: id(), library: id(), borrower: id() };
  const varieties = { shared: id(), open: id(), held: id() };
  const lots = { annas: id(), berts: id(), librarys: id(), lent: id(), held: id() };
  const growOuts = { annas: id(), berts: id(), held: id() };
  const plants = { annas: id() };
  const transfers = { lent: id(), outside: id() };
  const crop = await db.read.crop.findFirstOrThrow({ where: { clonal: false }, orderBy: { key: "asc" } });
  const operation = { action: "settings" as const, title: `A circle with ${secrets.held}` };
  granted(
    await perform(db, ownerHere(), operation, async (change) => {
      await change.create(
        "Steward",
        { id: stewards.anna, kind: "grower", place: "Upper valley", placeGrain: "village" },
        { id: stewards.bert, kind: "grower", place: "Quillgate mill", placeGrain: "none" },
        { id: stewards.library, kind: "library", place: "The old school", placeGrain: "exact" },
        { id: stewards.borrower, place: "Quillgate lodge" },
      );
      const person = (stewardId: string, name: string) => ({ id: id(), stewardId, name, nameKey: foldName(name) });
      await change.create("Person", {
        ...person(stewards.anna, "Anna Vell"),
        contact: secrets.contact,
        address: secrets.address,
      });
      await change.create("Person", person(stewards.bert, "Bert Omm"));
      await change.create("Person", person(stewards.library, "Seed shelf of Omm"));
      await change.create("Person", {
        ...person(stewards.borrower, secrets.borrower),
        contact: `${secrets.contact}-b`,
      });
      const variety = (key: keyof typeof varieties, name: string, sensitivity: string) => ({
        ...{ id: varieties[key], name, nameKey: foldName(name), cropId: crop.id, sensitivity },
      });
      await change.create("Variety", variety("shared", "Vell Early", "circle"));
      await change.create("Variety", variety("open", "Omm Round", "public"));
      await change.create("Variety", variety("held", secrets.held, "held"));
      const name = `${secrets.held} of old`;
      await change.create("VarietyName", { id: id(), varietyId: varieties.held, name, nameKey: foldName(name) });
      const lot = (key: keyof typeof lots, number: string, varietyId: string, holderId: string) => ({
        ...{ id: lots[key], number, numberKey: foldName(number), code: number.padEnd(9, "2").slice(0, 9) },
        ...{ varietyId, holderId, kind: "founder", thousandSeedGrams: 100 },
      });
      await change.create("Lot", lot("annas", "VELL-1", varieties.shared, stewards.anna));
      await change.create("Lot", lot("berts", "OMM-1", varieties.shared, stewards.bert));
      await change.create("Lot", lot("librarys", "SHELF-1", varieties.open, stewards.library));
      await change.create("Lot", { ...lot("lent", "LENT-1", varieties.open, stewards.borrower), kind: "split" });
      await change.create("Lot", {
        ...lot("held", secrets.heldLot, varieties.held, stewards.anna),
        notes: secrets.held,
      });
      await change.create("LotParent", { id: id(), lotId: lots.lent, parentLotId: lots.librarys, share: 1 });
      await change.create("Transfer", {
        ...{ id: transfers.lent, kind: "loan", lotId: lots.librarys, newLotId: lots.lent, ...day, amount: 10 },
        ...{ fromStewardId: stewards.library, toStewardId: stewards.borrower, note: `for ${secrets.borrower}` },
      });
      await change.create("Transfer", {
        ...{ id: transfers.outside, kind: "gift", lotId: lots.librarys, ...day, amount: 5 },
        ...{ fromStewardId: stewards.library, toWords: secrets.borrowerInWords },
      });
      await change.create("Promise", {
        ...{ id: id(), transferId: transfers.lent, varietyId: varieties.open, lotId: lots.librarys },
        ...{ stewardId: stewards.borrower, words: `${secrets.borrower} brings half back`, due: "2027-10" },
      });
      const entry = (lotId: string, kind: string, amount: number) => ({ id: id(), lotId, ...day, kind, amount });
      await change.create("LedgerEntry", entry(lots.annas, "harvested", 500));
      await change.create("LedgerEntry", entry(lots.berts, "harvested", 500));
      await change.create("LedgerEntry", entry(lots.librarys, "received", 500));
      await change.create("LedgerEntry", entry(lots.held, "harvested", 77));
      const given = { ...entry(lots.librarys, "given", 10), otherLotId: lots.lent, transferId: transfers.lent };
      await change.create("LedgerEntry", { ...given, other: secrets.borrower, otherStewardId: stewards.borrower });
      const out = { ...entry(lots.librarys, "given", 5), transferId: transfers.outside };
      await change.create("LedgerEntry", { ...out, other: secrets.borrowerInWords });
      await change.create("LedgerEntry", {
        ...entry(lots.lent, "received", 10),
        other: "SHELF-1",
        otherLotId: lots.librarys,
      });
      const word = { id: id(), varietyId: varieties.open, stewardId: stewards.borrower, lotId: lots.lent, ...day };
      await change.create("HolderConfirmation", { ...word, still: "yes", note: `said ${secrets.borrower}` });
      const growOut = (key: keyof typeof growOuts, title: string, varietyId: string, stewardId: string) => ({
        ...{ id: growOuts[key], name: title, nameKey: foldName(title), varietyId, stewardId },
        ...{ sown: "2026-04-02", sownFirst: "2026-04-02", sownLast: "2026-04-02", plantsStanding: 40 },
      });
      await change.create("GrowOut", growOut("annas", "Vell 2026", varieties.shared, stewards.anna));
      await change.create("GrowOut", growOut("berts", "Omm 2026", varieties.shared, stewards.bert));
      await change.create("GrowOut", growOut("held", secrets.heldGrowOut, varieties.held, stewards.anna));
      await change.create("GrowOutParent", { id: id(), growOutId: growOuts.annas, lotId: lots.annas, share: 1 });
      await change.create("GrowOutParent", { id: id(), growOutId: growOuts.berts, lotId: lots.berts, share: 1 });
      await change.create("GrowOutParent", { id: id(), growOutId: growOuts.held, lotId: lots.held, share: 1 });
      await change.create("Plant", { id: plants.annas, growOutId: growOuts.annas, name: "1", nameKey: "1" });
      const plot = { id: id(), name: "Long bed", nameKey: "long bed", stewardId: stewards.anna, place: "Upper valley" };
      await change.create("Plot", { ...plot, latitude: Number(secrets.latitude), longitude: 8.123 });
      await change.create("GrowOutPlot", { id: id(), growOutId: growOuts.annas, plotId: plot.id });
      await change.create("NeighbourSource", {
        id: id(),
        growOutId: growOuts.annas,
        what: secrets.neighbour,
        distanceMetres: 120,
      });
      const place = { id: id(), name: secrets.store, nameKey: foldName(secrets.store), stewardId: stewards.anna };
      await change.create("Place", place);
      await change.create("Container", { id: id(), code: "JAR-1", lotId: lots.annas, placeId: place.id, kind: "jar" });
      await change.create("Story", { id: id(), varietyId: varieties.held, words: `What is told of ${secrets.held}` });
      return accepted(null);
    }),
  );
  return { stewards, varieties, lots, growOuts, plants, transfers };
}
