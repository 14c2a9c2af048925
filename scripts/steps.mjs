// What start and test share: running a step with progress, and stopping with one sentence. Node's built-ins alone.
import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";

export const root = path.resolve(import.meta.dirname, "..");

/** Stops with a sentence that says what to do. */
export function stop(sentence) {
  console.error(`\n${sentence}`);
  process.exit(1);
}

/** Runs a command. Progress goes to standard error, so that a command line's own output stays clean. Its output is kept and shown only when it fails; a line of progress comes every ten seconds. */
export function quietly(title, command, args, options = {}) {
  return new Promise((resolve) => {
    const from = Date.now();
    const seconds = () => Math.round((Date.now() - from) / 1000);
    process.stderr.write(`${title} ...\n`);
    const beat = setInterval(() => process.stderr.write(`  ${title}: ${seconds()} s so far\n`), 10_000);
    const child = spawn(command, args, { cwd: root, stdio: ["ignore", "pipe", "pipe"], ...options });
    let output = "";
    for (const stream of [child.stdout, child.stderr]) {
      stream.setEncoding("utf8");
      stream.on("data", (text) => {
        output += text;
      });
    }
    child.on("error", (error) => {
      output += error.message;
    });
    child.on("close", (code) => {
      clearInterval(beat);
      process.stderr.write(`  ${code === 0 ? "done" : "failed"} after ${seconds()} s\n`);
      resolve({ ok: code === 0, output });
    });
  });
}

/** A hash over files and folders, so that a step runs again only when what it reads has changed. */
export function hashOf(places, salt = "") {
  const hash = createHash("sha256").update(salt);
  const add = (place) => {
    const full = path.join(root, place);
    if (!existsSync(full)) return;
    if (statSync(full).isDirectory()) {
      for (const name of readdirSync(full).sort())
        if (name !== "generated" && !name.startsWith(".")) add(path.join(place, name));
    } else hash.update(place).update(readFileSync(full));
  };
  for (const place of places) add(place);
  return hash.digest("hex");
}

/** True where a mark file says that a step was done for this very input. */
export function isMarked(file, hash) {
  const full = path.join(root, file);
  return existsSync(full) && readFileSync(full, "utf8") === hash;
}

export function mark(file, hash) {
  const full = path.join(root, file);
  mkdirSync(path.dirname(full), { recursive: true });
  writeFileSync(full, hash);
}

/** Installs the packages of package-lock.json where they are not, and makes the database clients. */
export async function prepare() {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    stop(`Kinrow needs Node 20.19 or newer and this is ${process.versions.node}; install a newer Node and try again.`);
  }
  const installed = hashOf(["package-lock.json"], `${process.versions.modules} ${process.platform} ${process.arch}`);
  if (!isMarked("node_modules/.installed", installed)) {
    const npm = process.env.npm_execpath;
    const [command, args] = npm?.endsWith(".js") ? [process.execPath, [npm]] : ["npm", []];
    const run = await quietly(
      "Installing packages (a few minutes the first time: where no ready-made database driver can be had, it is compiled)",
      command,
      [...args, "ci", "--no-audit", "--no-fund"],
      { env: { ...process.env, npm_config_loglevel: "error" }, shell: process.platform === "win32" },
    );
    if (!run.ok) {
      console.error(run.output.trim().split("\n").slice(-25).join("\n"));
      stop(
        "The packages could not be installed: see the lines above. Without internet, connect and try again; where a driver had to be compiled, install python3, make and a C++ compiler first.",
      );
    }
    mark("node_modules/.installed", installed);
  }
  const { generateClients } = await import("./clients.mjs");
  const failure = generateClients((line) => console.error(`${line} ...`));
  if (failure) stop(failure);
}

const built = [
  "app",
  "components",
  "lib",
  "seed-scenario",
  "prisma/schema.prisma",
  "package-lock.json",
  "next.config.ts",
  "proxy.ts",
  "instrumentation.ts",
  "instrumentation-client.ts",
  "scripts/field-bundle.mjs",
  "tsconfig.json",
];

/** Builds the pages where a source changed since they were built. */
export async function build() {
  const hash = hashOf(built, process.versions.modules);
  if (isMarked(".next/built-from", hash)) return;
  const run = await quietly(
    "Building the pages (about half a minute)",
    process.execPath,
    ["node_modules/next/dist/bin/next", "build"],
    {
      env: { ...process.env, NODE_ENV: "production", NEXT_TELEMETRY_DISABLED: "1" },
    },
  );
  if (!run.ok) {
    console.error(run.output.trim().split("\n").slice(-40).join("\n"));
    stop(
      "The pages could not be built: see the lines above; if you changed nothing, take a fresh clone and try again.",
    );
  }
  const { bundleField } = await import("./field-bundle.mjs");
  await bundleField().catch((error) => stop(`The field's page could not be bundled: ${error.message}`));
  mark(".next/built-from", hash);
}
