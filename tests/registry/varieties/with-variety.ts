import { uuidv7 } from "uuidv7";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { perform } from "@/lib/registry/change-set/perform";
import { recordSteward } from "@/lib/registry/stewards/record-steward";
import { recordVariety } from "@/lib/registry/varieties/record-variety";
import { accepted } from "@/lib/science/outcome";
import { granted } from "@/tests/setup/registry";

export const owner = ownerHere();

/** A variety of the tests; returns its id. */
export async function withVariety(db: Database, name = "Hollow Pea", crop = "pea", more = {}): Promise<string> {
  return granted(await recordVariety(db, owner, { name, crop, ...more })).value.varietyId;
}

/** A steward of the tests; returns the id. */
export async function withSteward(db: Database, name = "Aldis Thornwick"): Promise<string> {
  return granted(await recordSteward(db, owner, { name })).value.stewardId;
}

let code = 0;

/** A founder lot with what is given of it; returns its id. */
export async function withLot(
  db: Database,
  varietyId: string,
  number = "Quern 1",
  patch: Record<string, unknown> = {},
): Promise<string> {
  const id = uuidv7();
  code += 1;
  const row = {
    id,
    number,
    numberKey: number.toLowerCase(),
    code: `code ${code}`,
    varietyId,
    kind: "founder",
    ...patch,
  };
  granted(
    await perform(db, owner, { action: "record", title: `Lot ${number}` }, async (change) => {
      await change.create("Lot", row);
      change.touch(varietyId);
      return accepted(id);
    }),
  );
  return id;
}
