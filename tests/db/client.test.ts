import { expect, test } from "vitest";
import { emptyRegistry } from "../setup/registry";

test("both connections keep the log ahead of writing, and a commit waits until it stands on the disk", async () => {
  const db = await emptyRegistry();
  for (const connection of [db.read, db.write]) {
    const [mode] = await connection.$queryRawUnsafe<{ journal_mode: string }[]>("PRAGMA journal_mode");
    const [sync] = await connection.$queryRawUnsafe<{ synchronous: number | bigint }[]>("PRAGMA synchronous");
    // 2 is FULL: https://www.sqlite.org/pragma.html#pragma_synchronous
    expect([mode?.journal_mode, Number(sync?.synchronous)]).toEqual(["wal", 2]);
  }
});
