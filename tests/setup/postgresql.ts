import { execFileSync, spawn } from "node:child_process";
import { chownSync, existsSync, readdirSync } from "node:fs";
import net from "node:net";
import path from "node:path";
import { PGlite } from "@electric-sql/pglite";
import { PGLiteSocketServer } from "@electric-sql/pglite-socket";
import pg from "pg";
import { temporaryFolder } from "./registry";

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

/** PostgreSQL compiled to WebAssembly, from npm alone. It has one session, so a pool of one; a closing connection may overlap the next. */
export async function webAssemblyServer(): Promise<TestServer> {
  const port = await freePort();
  const db = await PGlite.create();
  const server = new PGLiteSocketServer({ db, port, host: "127.0.0.1", maxConnections: 10 });
  await server.start();
  return {
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

/** A real server in a temporary folder on a free loopback port. */
export async function realServer(programs: string): Promise<TestServer> {
  const folder = temporaryFolder();
  const as = runAs();
  if (as.uid !== undefined && as.gid !== undefined) chownSync(folder, as.uid, as.gid);
  const data = path.join(folder, "data");
  const environment = { ...process.env, LC_ALL: "C" };
  execFileSync(
    path.join(programs, "initdb"),
    ["-D", data, "-A", "trust", "-U", "postgres", "-E", "UTF8", "--locale=C"],
    {
      stdio: "ignore",
      cwd: folder,
      env: environment,
      ...as,
    },
  );
  const port = await freePort();
  const server = spawn(
    path.join(programs, "postgres"),
    ["-D", data, "-p", String(port), "-c", "listen_addresses=127.0.0.1", "-k", folder, "-F"],
    {
      stdio: "ignore",
      cwd: folder,
      env: environment,
      ...as,
    },
  );
  const url = `postgresql://postgres@127.0.0.1:${port}/postgres?sslmode=disable`;
  const ended = new Promise<void>((resolve) => server.once("exit", () => resolve()));
  await until(url);
  return {
    url,
    poolSize: 5,
    end: async () => {
      server.kill("SIGINT");
      await ended;
    },
  };
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

/** Empties a PostgreSQL database between tests. */
export async function emptied(url: string): Promise<void> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  await client.query("DROP SCHEMA public CASCADE");
  await client.query("CREATE SCHEMA public");
  await client.end();
}

/** Keeps the rows of a registry as it is when new, in a schema beside it: putting them back is far quicker than making it anew. */
export async function keptAsNew(url: string): Promise<void> {
  await asked(url, async (client) => {
    await client.query("DROP SCHEMA IF EXISTS kept CASCADE");
    await client.query("CREATE SCHEMA kept");
    for (const table of await tablesOf(client))
      await client.query(`CREATE TABLE kept."${table}" AS SELECT * FROM public."${table}"`);
  });
}

/** Brings a registry back to what it was when new. */
export async function asWhenNew(url: string): Promise<void> {
  await asked(url, async (client) => {
    const tables = await tablesOf(client);
    // Rows come back table by table, whatever refers to what.
    await client.query("SET session_replication_role = replica");
    await client.query(`TRUNCATE ${tables.map((table) => `public."${table}"`).join(", ")} CASCADE`);
    for (const table of tables) await client.query(`INSERT INTO public."${table}" SELECT * FROM kept."${table}"`);
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
    await client.query("RESET session_replication_role");
  } finally {
    await client.end();
  }
}
