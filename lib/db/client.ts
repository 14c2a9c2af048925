import { PrismaBetterSqlite3 } from "@prisma/adapter-better-sqlite3";
import { PrismaPg } from "@prisma/adapter-pg";
import type { Prisma } from "@/prisma/generated/sqlite/client";
import { PrismaClient } from "@/prisma/generated/sqlite/client";
import { inTurn } from "./in-turn";
import type { Engine, Location } from "./location";
import { type Connector, type Ends, shared, withEnds } from "./narrowed";

export type { Prisma };
/** The client of both engines: typed by the SQLite one, which has the narrower interface. */
export type Client = PrismaClient;
export type Transaction = Prisma.TransactionClient;

/** An open registry: one connection to read and one to write, so that no reader sees half a change. */
export interface Database {
  readonly engine: Engine;
  readonly location: Location;
  readonly read: Client;
  readonly write: Client;
  /** where somebody sees only part of it: the whole registry, for what is worked out of all its records */
  readonly whole?: Database;
  /** the number of the last change set, 0 where nothing was written yet; also where who changed what is not to be seen */
  lastChange(): Promise<number>;
  close(): Promise<void>;
}

export interface OpenOptions {
  /** connections to a PostgreSQL server */
  readonly poolSize?: number;
  /** called with each statement that is sent and its arguments, as JSON (for the bench and the counts in tests) */
  readonly onStatement?: (sql: string, parameters: string) => void;
}

/** Opens a registry whose tables stand (see migrate). Full synchronisation: what was acknowledged survives a power cut. */
export async function openDatabase(location: Location, options: OpenOptions = {}): Promise<Database> {
  return location.engine === "sqlite" ? openSqlite(location, options) : openPostgresql(location, options);
}

async function openSqlite(location: Location, options: OpenOptions): Promise<Database> {
  const ends: Ends = {
    read: shared(new PrismaBetterSqlite3({ url: location.url })),
    write: shared(new PrismaBetterSqlite3({ url: location.url })),
    make: (connector) => watched((log) => new PrismaClient({ adapter: connector, ...log }), options),
  };
  const connect = async (connector: Connector) => {
    const client = ends.make(connector);
    await client.$queryRawUnsafe("PRAGMA journal_mode = WAL");
    await client.$queryRawUnsafe("PRAGMA busy_timeout = 10000");
    await client.$executeRawUnsafe("PRAGMA synchronous = FULL");
    await client.$executeRawUnsafe("PRAGMA foreign_keys = ON");
    // What was erased is gone from the file's free pages, too.
    await client.$queryRawUnsafe("PRAGMA secure_delete = ON");
    return client;
  };
  const [read, write] = [await connect(ends.read), await connect(ends.write)];
  const close = async () => {
    await read.$disconnect();
    await write.$disconnect();
  };
  return withEnds({ engine: "sqlite", location, read, write, lastChange: lastChangeIn(read), close }, ends);
}

async function openPostgresql(location: Location, options: OpenOptions): Promise<Database> {
  const { PrismaClient: PostgresqlClient } = await import("@/prisma/generated/postgresql/client");
  const connector = shared(inTurn(new PrismaPg({ connectionString: location.url, max: options.poolSize ?? 5 })));
  const make = (adapter: Connector) =>
    watched((log) => new PostgresqlClient({ adapter, ...log }) as unknown as Client, options);
  const client = make(connector);
  const close = () => client.$disconnect();
  const db = { engine: "postgresql" as const, location, read: client, write: client, lastChange: lastChangeIn(client) };
  return withEnds({ ...db, close }, { read: connector, write: connector, make });
}

function lastChangeIn(client: Client): () => Promise<number> {
  return async () => (await client.changeSet.aggregate({ _max: { number: true } }))._max.number ?? 0;
}

type Log = { log?: [{ emit: "event"; level: "query" }] };

function watched(make: (log: Log) => Client, options: OpenOptions): Client {
  if (!options.onStatement) return make({});
  const client = make({ log: [{ emit: "event", level: "query" }] });
  const watch = client.$on as (event: "query", heard: (event: { query: string; params: string }) => void) => void;
  watch.call(client, "query", (event) => options.onStatement?.(event.query, event.params));
  return client;
}
