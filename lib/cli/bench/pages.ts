import { spawn } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import net from "node:net";
import path from "node:path";
import type { Database } from "@/lib/db";
import { changeAll, enterOne } from "./changes";
import type { BenchRow } from "./rows";

interface Statement {
  readonly sql: string;
  readonly parameters: unknown[];
}

const mostStatements = 12;
const mostTimes = 3;
/** A page that is there in so many milliseconds is quick: the frame, the same for every page, takes most of them. */
const quickMilliseconds = 50;
const runs = 7;
const warmingUp = 3;

/**
 * Each page of a built server over a registry of many lots: how many statements it sends, and how its time compares with the same
 * statements sent alone over the same kind of connection, from the request to the last byte. Before each counted visit everything is
 * marked as changed, so that nothing that the server keeps is of use and the page does its whole work; right after it the statements of
 * that visit are sent alone, once, by a connection that has just as little at hand. Beside it stand a visit after one entry in one lot's
 * ledger, and one after nothing. Of each the quickest visit counts, as what else the machine does only ever adds. Marked are pages that
 * take longer than they may ("!"), and those that do, but are quick all the same ("~"). First of all the frame alone is measured, which every
 * page has around it: behind each page's ratio stands what it would be without that.
 */
export async function measurePages(
  db: Database,
  folder: string,
  lotIds: readonly string[],
  paths: readonly string[],
): Promise<BenchRow[]> {
  const log = path.join(folder, "statements.jsonl");
  writeFileSync(log, "");
  const port = await freePort();
  // As npm start starts it: built when it is stale, and with the same memory.
  const server = spawn(process.execPath, ["scripts/start.mjs"], {
    stdio: ["ignore", "ignore", "inherit"],
    env: { ...process.env, KINROW_DATA: folder, KINROW_STATEMENTS: log, PORT: String(port) },
  });
  try {
    const base = `http://127.0.0.1:${port}`;
    await answered(`${base}/ready`);
    const bench = { db, log, base, lotIds };
    const frame = await quickestFrame(bench);
    const rows: BenchRow[] = [
      { what: "the frame around every page, alone", measured: `${frame.toFixed(1)} ms`, bound: "shown", within: true },
    ];
    for (const [place, page] of paths.entries()) {
      const done = `${place + 1} of ${paths.length}: ${page.slice(0, 60)}`;
      process.stderr.write(process.stderr.isTTY ? `\r${done.padEnd(76)}` : `${done}\n`);
      rows.push(await measurePage({ ...bench, frame }, page).catch((error: Error) => unanswered(page, error)));
    }
    if (process.stderr.isTTY) process.stderr.write("\r");
    return rows;
  } finally {
    server.kill();
  }
}

function unanswered(page: string, { message }: Error): BenchRow {
  return { what: nameOf(page), measured: message, bound: "it answers", within: false };
}

/** The page's address with "one" in the place of a record's id. */
function nameOf(page: string): string {
  return page.replace(/[0-9a-f-]{36}/, "one");
}

interface Bench {
  readonly db: Database;
  readonly log: string;
  readonly base: string;
  readonly lotIds: readonly string[];
}

/** Milliseconds of a page that says only that there is no such page, less what its statements take alone. */
async function quickestFrame({ db, log, base }: Bench): Promise<number> {
  let quickest = Number.POSITIVE_INFINITY;
  for (let run = -warmingUp; run < runs; run += 1) {
    writeFileSync(log, "");
    const from = performance.now();
    await (await fetch(`${base}/no-such-page`)).text();
    const took = performance.now() - from;
    const sent = await sentAlone(db, statementsOf(log));
    if (run >= 0) quickest = Math.min(quickest, took - sent);
  }
  return quickest;
}

async function sentAlone(db: Database, statements: readonly Statement[]): Promise<number> {
  const from = performance.now();
  for (const { sql, parameters } of statements) await db.read.$queryRawUnsafe(sql, ...parameters);
  return performance.now() - from;
}

async function measurePage(
  { db, log, base, lotIds, frame }: Bench & { readonly frame: number },
  page: string,
): Promise<BenchRow> {
  const visit = async () => {
    writeFileSync(log, "");
    const from = performance.now();
    const response = await fetch(`${base}${page}`);
    await response.text();
    if (response.status !== 200) throw new Error(`answered ${response.status}`);
    return { took: performance.now() - from, statements: statementsOf(log) };
  };
  const whole: number[] = [];
  const alone: number[] = [];
  const entered: number[] = [];
  const kept: number[] = [];
  let most = 0;
  // The first rounds warm both sides up and are not counted.
  for (let run = -warmingUp; run < runs; run += 1) {
    await changeAll(db, lotIds);
    const first = await visit();
    const sent = await sentAlone(db, first.statements);
    await enterOne(db, lotIds);
    const second = await visit();
    const third = await visit();
    if (run < 0) continue;
    most = Math.max(most, first.statements.length, second.statements.length, third.statements.length);
    whole.push(first.took);
    alone.push(sent);
    entered.push(second.took);
    kept.push(third.took);
  }
  const [took, sent] = [Math.min(...whole), Math.min(...alone)];
  const times = took / sent;
  const milliseconds = (values: readonly number[]) => `${Math.min(...values).toFixed(0)} ms`;
  return {
    what: nameOf(page),
    measured: `${most} statements, ${took.toFixed(0)} ms = ${times.toFixed(1)} × ${sent.toFixed(1)} ms`,
    bound: `at most ${mostStatements}, ${mostTimes} ×; without the frame ${(Math.max(0, took - frame) / sent).toFixed(1)} ×; after one entry ${milliseconds(entered)}, then ${milliseconds(kept)}`,
    within: most <= mostStatements && times <= mostTimes,
    quick: most <= mostStatements && took <= quickMilliseconds,
  };
}
function statementsOf(log: string): Statement[] {
  const lines = readFileSync(log, "utf8").split("\n").filter(Boolean);
  return lines.map((line) => JSON.parse(line) as Statement).filter(({ sql }) => /^\s*(SELECT|WITH)/i.test(sql));
}

async function answered(url: string): Promise<void> {
  // It may have to be built first.
  for (let attempt = 0; attempt < 6000; attempt += 1) {
    const response = await fetch(url).catch(() => null);
    if (response?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error("the server did not answer within five minutes");
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
