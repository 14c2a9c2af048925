import { afterAll, beforeAll, describe } from "vitest";
import { type Database, type Location, openDatabase } from "@/lib/db";
import { prepareRegistry } from "@/lib/registry/open-registry";
import { asWhenNew, realServer, serverPrograms, type TestServer, webAssemblyServer } from "./postgresql";
import { emptyRegistry, temporaryFolder } from "./registry";

const programs = serverPrograms();

type Engine = readonly [string, (() => Promise<TestServer>) | null];

const webAssembly: Engine = ["PostgreSQL (WebAssembly)", () => webAssemblyServer(prepare)];
const real: readonly Engine[] = programs ? [["PostgreSQL (a real server)", () => realServer(programs, prepare)]] : [];

// PostgreSQL as WebAssembly takes seconds to start: where a real server is found it stands for both, but for the tests that ask for every server.
const all = process.env.KINROW_ENGINES === "all";

/**
 * Runs the same tests on SQLite and on PostgreSQL; `fresh()` gives an empty registry of that engine. `everyServer`: on each kind of PostgreSQL
 * that there is (what speaks to the engine itself); KINROW_ENGINES=all does so for all tests.
 */
export function onEveryEngine(
  title: string,
  tests: (fresh: () => Promise<Database>) => void,
  { everyServer = all } = {},
): void {
  const servers = [["SQLite", null] as Engine, ...(everyServer || real.length === 0 ? [webAssembly] : []), ...real];
  describe.each(servers)(`${title} on %s`, (_name, start) => {
    let server: TestServer | null = null;
    let open: Database | null = null;
    let used = false;

    beforeAll(async () => {
      server = start ? await start() : null;
    });

    afterAll(async () => {
      await open?.close();
      await server?.end();
    });

    tests(async () => {
      if (!server) return emptyRegistry();
      await open?.close();
      if (used) await asWhenNew(server.url);
      used = true;
      open = await openDatabase(at(server.url), { poolSize: server.poolSize });
      return open;
    });
  });
}

function at(url: string): Location {
  return { engine: "postgresql", url, folder: temporaryFolder(), demonstration: false };
}

async function prepare(url: string, poolSize: number): Promise<void> {
  await (await prepareRegistry(at(url), { poolSize })).close();
}
