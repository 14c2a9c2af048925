import { expect, it } from "vitest";
import type { Actor } from "@/lib/access/actor";
import { type Database, tableNames } from "@/lib/db";
import { delegateOf, type TableName } from "@/lib/registry/change-set/records";
import { seenBy } from "@/lib/registry/privacy/seen-by";
import { onEveryEngine } from "../../setup/engines";
import { aCircle, actor, secrets } from "./a-circle";

/** Every row of every table as an actor reads it, as one text. */
async function everythingSeen(db: Database, who: Actor): Promise<string> {
  const { read } = seenBy(db, who);
  const rows: unknown[] = [];
  for (const table of tableNames) {
    const { findMany } = delegateOf(read, table as TableName);
    rows.push(await findMany.call(delegateOf(read, table as TableName), {} as never));
  }
  return JSON.stringify(rows, (_key, value) => (typeof value === "bigint" ? String(value) : value));
}

const namesOf = (text: string) =>
  Object.entries(secrets)
    .filter(([, secret]) => text.includes(secret))
    .map(([name]) => name);

onEveryEngine("The registry as somebody sees it", (fresh) => {
  it("shows the owner all that is private, and the others what is theirs", async () => {
    const db = await fresh();
    const { stewards, growOuts } = await aCircle(db);
    expect(seenBy(db, actor("owner"))).toBe(db);
    const seen = async (who: Actor) => namesOf(await everythingSeen(db, who)).sort();
    expect(await seen(actor("owner"))).toEqual(Object.keys(secrets).sort());
    expect(await seen(actor("reader"))).toEqual([]);
    expect(await seen(actor("reader", stewards.anna))).toEqual([]);
    expect(await seen(actor("public"))).toEqual([]);
    expect(await seen(actor("helper", null, [growOuts.berts]))).toEqual([]);
    expect(await seen(actor("helper", null, [growOuts.annas]))).toEqual(["neighbour"]);
    expect(await seen(actor("steward", stewards.bert))).toEqual([]);
    const annas = ["address", "contact", "held", "heldGrowOut", "heldLot", "latitude", "neighbour", "store"];
    expect(await seen(actor("steward", stewards.anna))).toEqual(annas);
    const desk = ["address", "borrower", "borrowerInWords", "contact"];
    expect(await seen(actor("librarian", stewards.library))).toEqual(desk);
    expect(await seen(actor("librarian"))).toEqual([...desk, "store"]);
  });
});
