// For developers: writes the next migration of both databases from prisma/schema.prisma, with the check constraints of
// prisma/check-constraints.json in every table that it creates.
//   node scripts/migration.mjs NAME
// Needs Prisma's migration engine (PRISMA_SCHEMA_ENGINE_BINARY where it cannot be downloaded) and, for the second history, an empty
// PostgreSQL database named by KINROW_SHADOW (postgresql://...).
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { postgresqlSchema } from "./clients.mjs";

const root = path.resolve(import.meta.dirname, "..");
const name = process.argv[2];
const shadow = process.env.KINROW_SHADOW;
if (!name || !/^[a-z0-9_]+$/.test(name) || !shadow) {
  console.error("usage: KINROW_SHADOW=postgresql://... node scripts/migration.mjs name_in_lower_case");
  process.exit(2);
}

const checks = JSON.parse(readFileSync(path.join(root, "prisma/check-constraints.json"), "utf8"));

/** Adds each table's check constraints to its CREATE TABLE, also where a table is rebuilt as "new_X". */
function withChecks(sql) {
  return sql.replace(/CREATE TABLE "(new_)?(\w+)" \(\n([\s\S]*?)\n\);/g, (whole, rebuilt, table, body) => {
    const own = checks.filter((c) => c.table === table).map((c) => `    CONSTRAINT "${c.name}" CHECK (${c.check})`);
    if (own.length === 0) return whole;
    return `CREATE TABLE "${rebuilt ?? ""}${table}" (\n${body.trimEnd()},\n${own.join(",\n")}\n);`;
  });
}

const work = mkdtempSync(path.join(os.tmpdir(), "migration-"));
const now = readFileSync(path.join(root, "prisma/schema.prisma"), "utf8");
const beforeFile = path.join(root, "prisma/migrations/schema-of-last-migration.prisma");
const before = existsSync(beforeFile) ? readFileSync(beforeFile, "utf8") : null;
const stamp = new Date().toISOString().replace(/\D/g, "").slice(0, 14);

for (const engine of ["sqlite", "postgresql"]) {
  const derive = engine === "sqlite" ? (s) => s : postgresqlSchema;
  writeFileSync(path.join(work, "now.prisma"), derive(now));
  if (before) writeFileSync(path.join(work, "before.prisma"), derive(before));
  const from = before ? ["--from-schema", path.join(work, "before.prisma")] : ["--from-empty"];
  const run = spawnSync(
    "npx",
    ["prisma", "migrate", "diff", ...from, "--to-schema", path.join(work, "now.prisma"), "--script"],
    {
      cwd: root,
      encoding: "utf8",
      env: {
        ...process.env,
        KINROW_DATABASE: engine === "sqlite" ? `file:${path.join(work, "empty.sqlite")}` : shadow,
      },
    },
  );
  if (run.status !== 0 || !run.stdout.trim()) {
    console.error(
      `No ${engine} migration came out: ${run.stderr.trim() || "the engine printed nothing (is the database reachable?)"}`,
    );
    process.exit(1);
  }
  const folder = path.join(root, "prisma/migrations", engine, `${stamp}_${name}`);
  mkdirSync(folder, { recursive: true });
  writeFileSync(path.join(folder, "migration.sql"), withChecks(run.stdout));
  const lock = path.join(root, "prisma/migrations", engine, "migration_lock.toml");
  if (!existsSync(lock)) writeFileSync(lock, `provider = "${engine}"\n`);
  console.log(`${engine}: ${readdirSync(path.dirname(folder)).length - 1} migrations`);
}
writeFileSync(beforeFile, now);
rmSync(work, { recursive: true });
