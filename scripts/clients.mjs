// Derives the PostgreSQL schema from the one schema and generates both database clients. Node's built-ins alone.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

const root = path.resolve(import.meta.dirname, "..");
const source = path.join(root, "prisma/schema.prisma");
const generated = path.join(root, "prisma/generated");

/** The PostgreSQL schema: the same models under the other provider. */
export function postgresqlSchema(schema) {
  return schema
    .replace('provider = "sqlite"', 'provider = "postgresql"')
    .replace('output   = "./generated/sqlite"', 'output   = "./postgresql"');
}

/** Generates both clients where the schema changed since the last time. Returns a sentence on failure, else null. */
export function generateClients(say = () => {}) {
  const schema = readFileSync(source, "utf8");
  const version = readFileSync(path.join(root, "node_modules/prisma/package.json"), "utf8");
  const mark = createHash("sha256")
    .update(schema)
    .update(version)
    .update(readFileSync(import.meta.filename))
    .digest("hex");
  const markFile = path.join(generated, "made-from");
  if (existsSync(markFile) && readFileSync(markFile, "utf8") === mark) return null;
  mkdirSync(generated, { recursive: true });
  writeFileSync(path.join(generated, "postgresql.prisma"), postgresqlSchema(schema));
  for (const [engine, file] of [
    ["sqlite", source],
    ["postgresql", path.join(generated, "postgresql.prisma")],
  ]) {
    say(`making the ${engine} client`);
    const run = spawnSync(
      process.execPath,
      [path.join(root, "node_modules/prisma/build/index.js"), "generate", "--schema", file],
      {
        cwd: root,
        encoding: "utf8",
        // generate never runs the native engine, but the command looks for one: any existing file will do
        env: {
          PRISMA_SCHEMA_ENGINE_BINARY: process.execPath,
          PRISMA_HIDE_UPDATE_MESSAGE: "1",
          CHECKPOINT_DISABLE: "1",
          ...process.env,
        },
      },
    );
    if (run.status !== 0)
      return `The ${engine} client could not be made from prisma/schema.prisma: ${(run.stderr || run.stdout).trim().split("\n").slice(-6).join(" ")}`;
  }
  writeFileSync(markFile, mark);
  return null;
}

if (process.argv[1] === import.meta.filename) {
  const failure = generateClients((line) => console.log(line));
  if (failure) {
    console.error(failure);
    process.exit(1);
  }
}
