import { afterAll, beforeAll, describe } from "vitest";
import { type Database, openDatabase } from "@/lib/db";
import { prepareRegistry } from "@/lib/registry/open-registry";
import {
  asWhenNew,
  emptied,
  keptAsNew,
  realServer,
  serverPrograms,
  type TestServer,
  webAssemblyServer,
} from "./postgresql";
import { emptyRegistry, temporaryFolder } from "./registry";

const programs = serverPrograms();

type Engine = readonly [string, (() => Promise<TestServer>) | null];

const webAssembly: Engine = ["PostgreSQL (WebAssembly)", webAssemblyServer];
const real: readonly Engine[] = programs ? [["PostgreSQL (a real server)", () => realServer(programs)]] : [];

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
    let made = false;

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
      const location = {
        engine: "postgresql" as const,
        url: server.url,
        folder: temporaryFolder(),
        demonstration: false,
      };
      const options = { poolSize: server.poolSize };
      if (made) {
        await asWhenNew(server.url);
        open = await openDatabase(location, options);
        return open;
      }
      await emptied(server.url);
      await (await prepareRegistry(location, options)).close();
      await keptAsNew(server.url);
      made = true;
      open = await openDatabase(location, options);
      return open;
    });
  });
}
