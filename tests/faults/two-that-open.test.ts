import { type ChildProcess, fork } from "node:child_process";
import { once } from "node:events";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openDatabase } from "@/lib/db";
import { verifyRegistry } from "@/lib/registry/safe-keeping/verify/verify-registry";
import { cropList } from "@/lib/science/crops/crop-profile";
import { migrationNames, olderRegistry, olderRelease } from "@/tests/setup/older-release";
import { temporaryFolder } from "@/tests/setup/registry";
import { locationOf, type OpenSaid, type OpenTask } from "./protocol";

/*
 * Two processes that open one folder at the same moment. What has to come of it is plain: each step of the tables is taken once, by one of the two;
 * the other waits, or says why it does not go on; nothing that was acknowledged is missing, and the registry verifies.
 */
let both: ChildProcess[] = [];

beforeAll(async () => {
  both = [1, 2].map(() => fork("tests/faults/opener.ts", { execArgv: ["--import", "tsx"] }));
  await Promise.all(both.map((each) => once(each, "message")));
});

afterAll(() => {
  for (const each of both) each.kill();
});

async function bothOpen(folder: string, as: OpenTask["as"], writes = 0): Promise<OpenSaid[]> {
  const answers = both.map(async (each) => (await once(each, "message"))[0] as OpenSaid);
  for (const each of both) each.send({ folder, as, writes } satisfies OpenTask);
  return Promise.all(answers);
}

const opened = (answers: readonly OpenSaid[]) => answers.flatMap((each) => (each.opened ? [each] : []));
const refused = (answers: readonly OpenSaid[]) => answers.flatMap((each) => (each.opened ? [] : [each.said]));
const steps = (answers: readonly OpenSaid[]) => opened(answers).flatMap((each) => each.applied);

/** The registry verifies, and its history has so many change sets. */
async function sound(folder: string, changeSets: number): Promise<void> {
  const db = await openDatabase(locationOf(folder));
  try {
    expect((await verifyRegistry(db, `${folder}/photos`)).findings).toEqual([]);
    expect([await db.read.changeSet.count(), await db.lastChange()]).toEqual([changeSets, changeSets]);
  } finally {
    await db.close();
  }
}

describe("two command lines on one folder at the same moment", () => {
  it.each([1, 2, 3])("make a new registry once, with one crop list (round %i)", async () => {
    const folder = temporaryFolder();
    const answers = await bothOpen(folder, "command");
    expect(refused(answers)).toEqual([]);
    expect(steps(answers).toSorted()).toEqual(migrationNames());
    expect(opened(answers).map((each) => each.crops)).toEqual([cropList().length, cropList().length]);
    await sound(folder, 1);
  });

  it.each([1, 2, 3])("bring the registry of an older release up once (its first %i steps)", async (howMany) => {
    const folder = temporaryFolder();
    await olderRegistry(locationOf(folder), olderRelease(`${temporaryFolder()}/release`, howMany));
    const answers = await bothOpen(folder, "command");
    expect(refused(answers)).toEqual([]);
    expect(steps(answers).toSorted()).toEqual(migrationNames().slice(howMany));
    await sound(folder, 2);
  });

  it("write one after the other, and no entry is turned away or lost", async () => {
    const folder = temporaryFolder();
    const answers = await bothOpen(folder, "command", 40);
    expect(refused(answers)).toEqual([]);
    const written = opened(answers).reduce((sum, each) => sum + each.written, 0);
    expect(written).toBeGreaterThan(60);
    await sound(folder, 1 + written);
  });
});

describe("two servers that start on one folder at the same moment", () => {
  it.each([1, 2])("are one that opens it and one that says who has it (round %i)", async () => {
    const folder = temporaryFolder();
    const answers = await bothOpen(folder, "server");
    expect(opened(answers).map((each) => each.applied)).toEqual([migrationNames()]);
    expect(refused(answers)).toEqual([expect.stringContaining(`${folder} is open in another Kinrow already`)]);
    await sound(folder, 1);
  });
});
