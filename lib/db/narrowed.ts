import type { Client, Database, Prisma } from "./client";

/** Makes connections for a client (Prisma's own shape). */
export type Connector = NonNullable<Prisma.PrismaClientOptions["adapter"]>;
export type Connection = Awaited<ReturnType<Connector["connect"]>>;
type Running = Awaited<ReturnType<Connection["startTransaction"]>>;

/** What is to be seen of the tables: each name stands for a SELECT over the whole ones. */
export interface Narrowing {
  /** sets that the SELECTs ask for, by name, each after those that it needs itself */
  readonly sets: readonly { readonly name: string; readonly rows: string }[];
  /** by table: the SELECT that stands in its place, with the whole tables written as WHOLE."Name" */
  readonly tables: ReadonlyMap<string, string>;
}

/** One connection for several clients of one registry. A client of the whole tables closes it. */
export function shared(connector: Connector): Connector {
  let open: Promise<Connection> | null = null;
  return {
    provider: connector.provider,
    adapterName: connector.adapterName,
    connect: () => {
      open ??= connector.connect().then((connection) => {
        const dispose = () => connection.dispose();
        return withDispose(connection, async () => {
          open = null;
          await dispose();
        });
      });
      return open;
    },
  };
}

/** As it is, but for what happens when it is closed. */
function withDispose(connection: Connection, dispose: () => Promise<void>): Connection {
  return new Proxy(connection, {
    get: (target, key) => {
      if (key === "dispose") return dispose;
      const value: unknown = Reflect.get(target, key);
      return typeof value === "function" ? value.bind(target) : value;
    },
  });
}

/** How clients over narrowed tables are made beside the client of the whole ones. */
export interface Ends {
  readonly read: Connector;
  readonly write: Connector;
  readonly make: (connector: Connector) => Client;
}

// The app is built in parts that each take this file in, and a registry that one of them opened is theirs together.
const shelf = globalThis as typeof globalThis & { kinrowEnds?: WeakMap<Client, Ends> };
shelf.kinrowEnds ??= new WeakMap();
const endsOf = shelf.kinrowEnds;

/** Remembers how a registry was opened, so that it can be narrowed. */
export function withEnds(db: Database, ends: Ends): Database {
  endsOf.set(db.read, ends);
  return db;
}

/**
 * The same registry over fewer rows and columns: every SELECT that is sent through it, written by hand or by Prisma, finds in place of a
 * table what the narrowing says, put before it as a common table expression. A reader of it cannot forget the rule, and a row that is hidden
 * is one that is not there. What is written goes into the whole tables. Throws where the registry was not opened by openDatabase.
 */
export function narrowed(db: Database, read: Narrowing, write: Narrowing): Database {
  const ends = endsOf.get(db.read);
  if (!ends) throw new Error("only a registry that openDatabase opened can be narrowed");
  return {
    engine: db.engine,
    location: db.location,
    whole: db,
    read: ends.make(narrowedConnector(ends.read, rewriter(db.engine, read))),
    write: ends.make(narrowedConnector(ends.write, rewriter(db.engine, write))),
    lastChange: () => db.lastChange(),
    close: async () => {},
  };
}

type Rewrite = (sql: string) => string;

function narrowedConnector(connector: Connector, rewrite: Rewrite): Connector {
  const { provider, adapterName } = connector;
  return { provider, adapterName, connect: async () => narrowedConnection(await connector.connect(), rewrite) };
}

function narrowedConnection(whole: Connection, rewrite: Rewrite): Connection {
  return {
    provider: whole.provider,
    adapterName: whole.adapterName,
    queryRaw: (query) => whole.queryRaw({ ...query, sql: rewrite(query.sql) }),
    executeRaw: (query) => whole.executeRaw(query),
    executeScript: (script) => whole.executeScript(script),
    startTransaction: async (level) => narrowedTransaction(await whole.startTransaction(level), rewrite),
    ...(whole.getConnectionInfo ? { getConnectionInfo: () => whole.getConnectionInfo?.() ?? noInformation } : {}),
    // The connection belongs to the whole registry.
    dispose: async () => {},
  };
}

const noInformation = { supportsRelationJoins: false };

function narrowedTransaction(whole: Running, rewrite: Rewrite): Running {
  return {
    provider: whole.provider,
    adapterName: whole.adapterName,
    options: whole.options,
    queryRaw: (query) => whole.queryRaw({ ...query, sql: rewrite(query.sql) }),
    executeRaw: (query) => whole.executeRaw(query),
    commit: () => whole.commit(),
    rollback: () => whole.rollback(),
    ...(whole.createSavepoint ? { createSavepoint: async (name) => whole.createSavepoint?.(name) } : {}),
    ...(whole.rollbackToSavepoint ? { rollbackToSavepoint: async (name) => whole.rollbackToSavepoint?.(name) } : {}),
    ...(whole.releaseSavepoint ? { releaseSavepoint: async (name) => whole.releaseSavepoint?.(name) } : {}),
  };
}

const mostKept = 1000;

/** Puts what stands for the tables before a SELECT that names them. Everything else passes as it is. */
export function rewriter(engine: Database["engine"], narrowing: Narrowing): Rewrite {
  const whole = engine === "sqlite" ? '"main".' : '"public".';
  const qualified = engine === "sqlite" ? /`main`\.(?=`)/g : /"public"\.(?=")/g;
  const written = (rows: string) => rows.replaceAll("WHOLE.", whole);
  const sets = narrowing.sets.map(({ name, rows }) => ({
    ...{ name, rows },
    written: `"${name}" AS MATERIALIZED (${written(rows)})`,
  }));
  const tables = new Map(
    // Where a statement names a table twice, its indexes are still to be used.
    [...narrowing.tables].map(([name, rows]) => [
      name,
      { rows, written: `"${name}" AS NOT MATERIALIZED (${written(rows)})` },
    ]),
  );
  /** The sets that some SELECTs ask for, themselves or through others, in their order. */
  const setsFor = (asked: readonly { readonly rows: string }[]) => {
    const needed: (typeof sets)[number][] = [];
    for (const set of [...sets].reverse())
      if ([...asked, ...needed].some(({ rows }) => rows.includes(`"${set.name}"`))) needed.unshift(set);
    return needed;
  };
  const kept = new Map<string, string>();
  const narrow = (sql: string) => {
    const named = new Set([...sql.matchAll(/["`](\w+)["`]/g)].map((found) => found[1] ?? ""));
    const inPlace = [...named].flatMap((name) => tables.get(name) ?? []);
    if (inPlace.length === 0) return sql;
    const before = [...setsFor(inPlace), ...inPlace].map((each) => each.written).join(", ");
    const plain = sql.replace(qualified, "");
    const own = /^\s*WITH\s+(RECURSIVE\s+)?/i.exec(plain);
    if (own) return `WITH ${own[1] ?? ""}${before}, ${plain.slice(own[0].length)}`;
    return `WITH ${before} ${plain}`;
  };
  return (sql) => {
    if (!/^\s*(SELECT|WITH)\b/i.test(sql)) return sql;
    const known = kept.get(sql);
    if (known !== undefined) return known;
    const made = narrow(sql);
    if (kept.size >= mostKept) kept.clear();
    kept.set(sql, made);
    return made;
  };
}
