import { execFileSync, spawn } from "node:child_process";
import { randomUUID } from "node:crypto";
import { chmodSync, chownSync, existsSync, openAsBlob, readdirSync, writeFileSync } from "node:fs";
import net from "node:net";
import path from "node:path";
import { PGlite } from "@electric-sql/pglite";
import { PGLiteSocketServer } from "@electric-sql/pglite-socket";
import pg from "pg";
import { inject } from "vitest";
import { onceARun, processOf } from "./once-a-run";

/** A PostgreSQL for tests: its address, and how to end it. */
export interface TestServer {
  readonly url: string;
  readonly poolSize: number;
  end(): Promise<void>;
}

async function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = net.createServer();
    probe.once("error", reject);
    probe.listen(0, "127.0.0.1", () => {
      const { port } = probe.address() as net.AddressInfo;
      probe.close(() => resolve(port));
    });
  });
}

/** Makes a new registry of an empty database. */
type Preparing = (url: string, poolSize: number) => Promise<void>;

/** PostgreSQL compiled to WebAssembly, from npm alone. It has one session, so a pool of one; a closing connection may overlap the next. */
export async function webAssemblyServer(prepare: Preparing): Promise<TestServer> {
  const kept = await onceARun(inject("runFolder"), "webassembly", async (folder) => {
    const first = await listening(await PGlite.create());
    await prepare(first.url, first.poolSize);
    await keptAsNew(first.url);
    const whole = path.join(folder, "prepared.tar");
    writeFileSync(whole, new Uint8Array(await (await first.db.dumpDataDir("none")).arrayBuffer()));
    await first.end();
    return whole;
  });
  return listening(await PGlite.create({ loadDataDir: await openAsBlob(kept) }));
}

async function listening(db: PGlite): Promise<TestServer & { readonly db: PGlite }> {
  const port = await freePort();
  const server = new PGLiteSocketServer({ db, port, host: "127.0.0.1", maxConnections: 10 });
  await server.start();
  return {
    db,
    url: `postgresql://postgres@127.0.0.1:${port}/postgres?sslmode=disable`,
    poolSize: 1,
    end: async () => {
      await server.stop();
      await db.close();
    },
  };
}

/** The folder of a real server's programs, where one is installed. */
export function serverPrograms(): string | null {
  const fixed = ["/usr/lib/postgresql", "/opt/homebrew/opt", "/usr/local/opt"].flatMap((parent) =>
    existsSync(parent) ? readdirSync(parent).map((name) => path.join(parent, name, "bin")) : [],
  );
  const places = [...(process.env.PATH ?? "").split(path.delimiter), ...fixed];
  return (
    places.find((place) => existsSync(path.join(place, "initdb")) && existsSync(path.join(place, "postgres"))) ?? null
  );
}

/** A server will not run as root: then the user that owns one, or nobody, runs it. */
function runAs(): { uid?: number; gid?: number } {
  if (process.getuid?.() !== 0) return {};
  for (const name of ["postgres", "nobody"]) {
    try {
      const id = (flag: string) =>
        Number(execFileSync("id", [flag, name], { stdio: ["ignore", "pipe", "ignore"] }).toString());
      return { uid: id("-u"), gid: id("-g") };
    } catch {
      // that user is not on this machine
    }
  }
  return {};
}

/** A database of its own on the run's real server, prepared as a new registry is. */
export async function realServer(programs: string, prepare: Preparing): Promise<TestServer> {
  const run = inject("runFolder");
  const server = await onceARun(run, "postgresql", (folder) => started(programs, folder, processOf(run), prepare));
  const name = `file_${randomUUID().replaceAll("-", "")}`;
  await asked(addressOf(server, "postgres"), async (client) => {
    await client.query(`CREATE DATABASE ${name} TEMPLATE prepared`);
  });
  return {
    url: addressOf(server, name),
    poolSize: 5,
    end: () =>
      asked(addressOf(server, "postgres"), async (client) => {
        await client.query(`DROP DATABASE ${name} WITH (FORCE)`);
      }),
  };
}

function addressOf(port: string, database: string): string {
  return `postgresql://postgres@127.0.0.1:${port}/${database}?sslmode=disable`;
}

/** Starts the real server on a free loopback port and prepares the database that the others are copies of; tells its port. */
async function started(programs: string, folder: string, processFile: string, prepare: Preparing): Promise<string> {
  const as = runAs();
  if (as.uid !== undefined && as.gid !== undefined) {
    chownSync(folder, as.uid, as.gid);
    chmodSync(path.dirname(folder), 0o755);
  }
  const data = path.join(folder, "data");
  const environment = { ...process.env, LC_ALL: "C" };
  execFileSync(
    path.join(programs, "initdb"),
    ["-D", data, "-A", "trust", "-U", "postgres", "-E", "UTF8", "--locale=C"],
    { stdio: "ignore", cwd: folder, env: environment, ...as },
  );
  const port = String(await freePort());
  const server = spawn(
    path.join(programs, "postgres"),
    ["-D", data, "-p", port, "-c", "listen_addresses=127.0.0.1", "-k", folder, "-F"],
    // It outlives the file that started it, and ends with the run.
    { stdio: "ignore", cwd: folder, env: environment, detached: true, ...as },
  );
  server.unref();
  writeFileSync(processFile, String(server.pid));
  await until(addressOf(port, "postgres"));
  await asked(addressOf(port, "postgres"), async (client) => {
    await client.query("CREATE DATABASE prepared");
  });
  await prepare(addressOf(port, "prepared"), 5);
  await keptAsNew(addressOf(port, "prepared"));
  return port;
}

async function until(url: string): Promise<void> {
  for (let attempt = 0; attempt < 200; attempt += 1) {
    const client = new pg.Client({ connectionString: url });
    try {
      await client.connect();
      await client.end();
      return;
    } catch {
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
  }
  throw new Error("the test server did not answer in 20 s");
}

/** Keeps the rows of a registry as it is when new, in a schema beside it: putting them back is far quicker than making it anew. */
async function keptAsNew(url: string): Promise<void> {
  await asked(url, async (client) => {
    await client.query("CREATE SCHEMA kept");
    for (const table of await tablesOf(client))
      await client.query(`CREATE TABLE kept."${table}" AS SELECT * FROM public."${table}"`);
  });
}

/** Brings a registry back to what it was when new. */
export async function asWhenNew(url: string): Promise<void> {
  await asked(url, async (client) => {
    const tables = await tablesOf(client);
    await client.query(
      [
        // Rows go and come back table by table, whatever refers to what; emptying a hundred small tables so is quicker than TRUNCATE.
        "SET session_replication_role = replica",
        ...tables.map((table) => `DELETE FROM public."${table}"`),
        ...tables.map((table) => `INSERT INTO public."${table}" SELECT * FROM kept."${table}"`),
        // PostgreSQL as WebAssembly has one session for all.
        "RESET session_replication_role",
      ].join("; "),
    );
  });
}

async function tablesOf(client: pg.Client): Promise<string[]> {
  const { rows } = await client.query(
    "SELECT tablename FROM pg_tables WHERE schemaname = 'public' AND tablename <> '_prisma_migrations'",
  );
  return rows.map(({ tablename }) => String(tablename));
}

async function asked(url: string, work: (client: pg.Client) => Promise<void>): Promise<void> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await work(client);
  } finally {
    await client.end();
  }
}
