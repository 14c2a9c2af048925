import { expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { namesForNeighbours } from "@/lib/registry/neighbours/names-for-neighbours";
import { readNeighbours } from "@/lib/registry/neighbours/read-neighbours";
import { recordNeighbour } from "@/lib/registry/neighbours/record-neighbour";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { aGrowOut, neighbour } from "./with-grow-out";

it("a neighbourhood is read in three statements however many sources it has, and the form's names in two", async () => {
  const sent: string[] = [];
  const db = await emptyRegistry({ onStatement: (sql) => sent.push(sql) });
  const { growOutId } = await aGrowOut(db);
  const statements = async (read: () => Promise<unknown>) => {
    sent.length = 0;
    await read();
    return sent.filter((sql) => /^\s*SELECT/i.test(sql)).length;
  };
  // one of its own, and two for own values in the published tables after something has changed
  expect(await statements(() => readNeighbours(db, growOutId))).toBe(3);
  for (let source = 0; source < 30; source++)
    granted(await recordNeighbour(db, ownerHere(), growOutId, neighbour(`maize ${source}`)));
  expect(await statements(() => readNeighbours(db, growOutId))).toBe(3);
  expect(await statements(() => namesForNeighbours(db))).toBe(2);
});
