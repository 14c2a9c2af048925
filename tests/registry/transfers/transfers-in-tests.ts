import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { balanceOf } from "@/lib/registry/ledger/balance";
import { giveSeed } from "@/lib/registry/transfers/give-seed";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { defaultSettings } from "@/lib/schemas/settings";
import { giveSchema } from "@/lib/schemas/transfers/transfer";
import type { Outcome } from "@/lib/science/outcome";
import { granted } from "../../setup/registry";
import { aLot, anEntry, aSteward, aTest, aVariety } from "../lots/lots-in-tests";

export const owner = ownerHere();
export const today = "2026-11-24";
export const settings = defaultSettings;

/**
 * A broad bean of Oda's that wants 20 plants: 220 g at 500 g a thousand seeds are 440 seeds. Of 18 of 20 tested the reserve is 218 seeds
 * (34 for a sowing, twice, two tests of 50 and an archive of 50), so that 222 seeds, 111 g, are free.
 */
export async function aJarOfBeans(db: Database) {
  const varietyId = await aVariety(db, "Hamble Long", "bean-broad", { plantsWanted: 20 });
  const oda = await aSteward(db, "Oda Fenlight");
  const rin = await aSteward(db, "Rin Olderwick");
  const fields = { number: "Ham 3", year: "2024", holderId: oda, thousandSeedGrams: 500, treatment: "none" };
  const lotId = await aLot(db, varietyId, fields);
  await anEntry(db, lotId, "harvested", 220, "2024-10-01");
  await aTest(db, lotId, "T1", "2026-02-01", 20, 18);
  return { varietyId, oda, rin, lotId };
}

export type Typed = Readonly<Record<string, string | readonly string[]>>;

/** Gives as the form sends it: a gift of 20 g to Rin on 1 November, with what the crop list says of harm told, unless told otherwise. */
export async function give(db: Database, lotId: string, typed: Typed = {}) {
  const start = { kind: "gift", on: "2026-11-01", amount: "20", unit: "g", told: ["caution-crop"] };
  const to = "holder" in typed || "newHolder" in typed || "toWords" in typed ? {} : { holder: "Rin Olderwick" };
  const input = granted(parseForm(giveSchema("north"), { ...start, ...to, ...typed }));
  return giveSeed(db, owner, lotId, input, { settings, today });
}

/** Code and field of each refusal. */
export function faultsOf(outcome: Outcome<unknown>): string[] {
  return outcome.ok ? [] : outcome.refusals.map((each) => `${each.code} at ${each.path.join(".")}`);
}

/** Grams by the ledger of a lot. */
export async function gramsIn(db: Database, lotId: string): Promise<number | null> {
  const lot = await db.read.lot.findUniqueOrThrow({ where: { id: lotId }, include: { ledger: true } });
  return balanceOf(lot.ledger, lot.thousandSeedGrams).grams;
}
