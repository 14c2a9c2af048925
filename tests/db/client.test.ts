import { statSync } from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";
import { migrate, openDatabase } from "@/lib/db";
import { emptyRegistry, temporaryFolder } from "../setup/registry";

test("both connections keep the log ahead of writing, and a commit waits until it stands on the disk", async () => {
  const db = await emptyRegistry();
  for (const connection of [db.read, db.write]) {
    const [mode] = await connection.$queryRawUnsafe<{ journal_mode: string }[]>("PRAGMA journal_mode");
    const [sync] = await connection.$queryRawUnsafe<{ synchronous: number | bigint }[]>("PRAGMA synchronous");
    // 2 is FULL: https://www.sqlite.org/pragma.html#pragma_synchronous
    expect([mode?.journal_mode, Number(sync?.synchronous)]).toEqual(["wal", 2]);
  }
});

test("a new registry and its logs are its owner's alone, also in a folder that others may look into", async () => {
  const folder = temporaryFolder();
  const location = {
    engine: "sqlite" as const,
    url: path.join(folder, "registry.sqlite"),
    folder,
    demonstration: false,
  };
  await migrate(location);
  const db = await openDatabase(location);
  try {
    await db.write.setting.create({ data: { id: "s1", key: "confirmedYears", value: "3" } });
    for (const ending of ["", "-wal", "-shm"]) {
      const rights = statSync(`${location.url}${ending}`).mode & 0o777;
      expect([ending, rights.toString(8)]).toEqual([ending, "600"]);
    }
  } finally {
    await db.close();
  }
});
