import { spawn } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import net from "node:net";
import path from "node:path";
import type { Database } from "@/lib/db";
import { type BenchRow, median, medianMilliseconds } from "./rows";

interface Statement {
  readonly sql: string;
  readonly parameters: unknown[];
}

const mostStatements = 12;
const mostTimes = 3;

/**
 * Each page of a built server over a registry of many lots: how many statements it sends, and how its time compares with the same
 * statements sent alone over the same kind of connection. Before each counted visit every variety is marked as changed, so that
 * nothing is taken from the figures' shelf and the page does its whole work; a visit with the shelf full is shown beside.
 */
export async function measurePages(db: Database, folder: string, paths: readonly string[]): Promise<BenchRow[]> {
  const log = path.join(folder, "statements.jsonl");
  writeFileSync(log, "");
  const port = await freePort();
  const server = spawn(
    process.execPath,
    ["node_modules/next/dist/bin/next", "start", "-H", "127.0.0.1", "-p", String(port)],
    {
      stdio: "ignore",
      env: { ...process.env, NODE_ENV: "production", KINROW_DATA: folder, KINROW_STATEMENTS: log },
    },
  );
  try {
    const base = `http://127.0.0.1:${port}`;
    await answered(`${base}/ready`);
    const rows: BenchRow[] = [];
    for (const page of paths) rows.push(await measurePage(db, log, base, page));
    return rows;
  } finally {
    server.kill();
  }
}

async function measurePage(db: Database, log: string, base: string, page: string): Promise<BenchRow> {
  const visit = async () => {
    writeFileSync(log, "");
    const from = performance.now();
    const response = await fetch(`${base}${page}`);
    await response.text();
    if (response.status !== 200) throw new Error(`${page} answered ${response.status}`);
    return { took: performance.now() - from, statements: statementsOf(log) };
  };
  const changed = () => db.write.$executeRawUnsafe('UPDATE "Variety" SET "revision" = "revision" + 1');
  await visit();
  const whole = [];
  const kept = [];
  for (let run = 0; run < 5; run += 1) {
    await changed();
    whole.push(await visit());
    kept.push(await visit());
  }
  const statements = whole[0]?.statements ?? [];
  const took = median(whole.map((each) => each.took));
  const alone = await medianMilliseconds(5, async () => {
    for (const { sql, parameters } of statements) await db.read.$queryRawUnsafe(sql, ...parameters);
  });
  const most = Math.max(...whole.map((each) => each.statements.length));
  const times = took / alone;
  const shelf = median(kept.map((each) => each.took)).toFixed(0);
  return {
    what: page.replace(/[0-9a-f-]{36}/, "one"),
    measured: `${most} statements, ${took.toFixed(0)} ms, ${times.toFixed(1)} × alone (${alone.toFixed(0)} ms)`,
    bound: `at most ${mostStatements} statements, ${mostTimes} ×; ${shelf} ms with figures kept`,
    within: most <= mostStatements && times <= mostTimes,
  };
}

function statementsOf(log: string): Statement[] {
  const lines = readFileSync(log, "utf8").split("\n").filter(Boolean);
  return lines.map((line) => JSON.parse(line) as Statement).filter(({ sql }) => /^\s*(SELECT|WITH)/i.test(sql));
}

async function answered(url: string): Promise<void> {
  for (let attempt = 0; attempt < 600; attempt += 1) {
    const response = await fetch(url).catch(() => null);
    if (response?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error("the server did not answer; is it built (npm start builds it)?");
}

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const probe = net.createServer();
    probe.listen(0, "127.0.0.1", () => {
      const { port } = probe.address() as net.AddressInfo;
      probe.close(() => resolve(port));
    });
  });
}
