// npm start: installs, prepares the data folder, builds when stale, serves on this machine alone, and prints one address.
// With --prepare it installs and makes the database clients, no more. Node's built-ins alone: nothing is installed when it begins.
import { spawn } from "node:child_process";
import { accessSync, constants, mkdirSync } from "node:fs";
import net from "node:net";
import path from "node:path";
import { build, prepare, root, stop } from "./steps.mjs";

await prepare();
if (!process.argv.includes("--prepare")) {
  prepareDataFolder();
  await build();
  await serve(port());
}

function prepareDataFolder() {
  const folder = path.resolve(root, process.env.KINROW_DATA || "data");
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    accessSync(folder, constants.R_OK | constants.W_OK);
  } catch (error) {
    stop(
      `The data folder ${folder} cannot be written (${error.code}); give yourself the right to write there, or name another in KINROW_DATA.`,
    );
  }
}

function port() {
  const wanted = process.env.PORT || "4707";
  const number = Number(wanted);
  if (!Number.isInteger(number) || number < 1 || number > 65_535)
    stop(`PORT is "${wanted}"; write a whole number from 1 to 65535.`);
  return number;
}

async function serve(number) {
  if (!(await isFree(number))) {
    stop(
      `Port ${number} is taken by another program (perhaps Kinrow already runs: look at http://127.0.0.1:${number}); end it, or start with PORT=${number + 1}.`,
    );
  }
  const server = spawn(
    process.execPath,
    ["node_modules/next/dist/bin/next", "start", "-H", "127.0.0.1", "-p", String(number)],
    {
      cwd: root,
      stdio: ["ignore", "ignore", "inherit"],
      env: {
        ...process.env,
        NODE_ENV: "production",
        NEXT_TELEMETRY_DISABLED: "1",
        KINROW_DATA: path.resolve(root, process.env.KINROW_DATA || "data"),
      },
    },
  );
  let ended = false;
  server.on("exit", (code) => {
    ended = true;
    process.exitCode = code ?? 0;
  });
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) process.on(signal, () => server.kill(signal));
  // Where npm itself is ended, its child would live on and keep the port: then the server ends as well.
  const parent = process.ppid;
  setInterval(() => {
    if (process.ppid !== parent) server.kill("SIGTERM");
  }, 1000).unref();
  const address = `http://127.0.0.1:${number}`;
  const answer = await firstAnswer(`${address}/ready`, () => ended);
  if (!answer) stop("The server ended before it answered: see the lines above.");
  if (answer.status !== 200) {
    server.kill();
    stop(answer.text);
  }
  console.log(`Kinrow is open at ${address}  (end it with Ctrl-C)`);
}

function isFree(number) {
  return new Promise((resolve) => {
    const probe = net.createServer();
    probe.once("error", () => resolve(false));
    probe.listen(number, "127.0.0.1", () => probe.close(() => resolve(true)));
  });
}

/** Waits for the server; opening the registry (and migrating it) is part of the first answer. */
async function firstAnswer(url, ended) {
  while (!ended()) {
    try {
      const response = await fetch(url);
      return { status: response.status, text: await response.text() };
    } catch {
      await new Promise((resolve) => setTimeout(resolve, 40));
    }
  }
  return null;
}
