// npm start: installs, prepares the data folder, builds when stale, serves on this machine alone, and prints one address. With --share it is
// opened to others (share.mjs); --new-passphrase gives an owner who has forgotten theirs a new one.
// With --prepare it installs and makes the database clients, no more. Node's built-ins alone: nothing is installed when it begins.
import { spawn } from "node:child_process";
import { accessSync, constants, mkdirSync } from "node:fs";
import net from "node:net";
import path from "node:path";
import { serverFlags } from "./server-flags.mjs";
import { build, prepare, root, stop } from "./steps.mjs";

const share = process.argv.includes("--share");
const known = ["--prepare", "--share", "--new-passphrase"];
const strange = process.argv.slice(2).find((word) => !known.includes(word));
if (strange) stop(`"${strange}" is nothing that can be asked for here; npm start takes --share and --new-passphrase.`);

await prepare();
if (!process.argv.includes("--prepare")) {
  prepareDataFolder();
  const number = port();
  // Said before the pages are built, which takes a while; asked again when they are.
  await stopWhereTaken(number);
  await build();
  await serve(number);
}

function prepareDataFolder() {
  const folder = path.resolve(root, process.env.KINROW_DATA || "data");
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    accessSync(folder, constants.R_OK | constants.W_OK);
  } catch (error) {
    if (error.code === "EEXIST" || error.code === "ENOTDIR")
      stop(`${folder} is no folder; name a folder for the data in KINROW_DATA, or move what stands there away.`);
    stop(
      `The data folder ${folder} cannot be written (${error.code}); give yourself the right to write there, or name another in KINROW_DATA.`,
    );
  }
}

function port() {
  const wanted = process.env.PORT || "4707";
  const number = Number(wanted);
  if (!/^\d+$/.test(wanted) || number < 1 || number > 65_535)
    stop(`PORT is "${wanted}"; write a whole number from 1 to 65535.`);
  return number;
}

async function stopWhereTaken(number) {
  if (await isFree(number)) return;
  stop(
    `Port ${number} is taken by another program (perhaps Kinrow already runs: look at http://127.0.0.1:${number}); end it, or start with PORT=${number + 1}.`,
  );
}

async function serve(number) {
  await stopWhereTaken(number);
  const environment = {
    ...process.env,
    NODE_ENV: "production",
    NEXT_TELEMETRY_DISABLED: "1",
    PORT: String(number),
    KINROW_SHARED: share ? "yes" : "no",
    KINROW_DATA: path.resolve(root, process.env.KINROW_DATA || "data"),
  };
  const server = spawn(process.execPath, [...serverFlags(), "scripts/serve.mjs"], {
    cwd: root,
    stdio: ["ignore", "ignore", "inherit", "ipc"],
    env: environment,
  });
  server.on("exit", (code) => {
    process.exitCode = code ?? 0;
    process.exit();
  });
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) process.on(signal, () => server.kill(signal));
  // Where npm itself is ended, its child would live on and keep the port: then the server ends as well.
  const parent = process.ppid;
  setInterval(() => {
    if (process.ppid !== parent) server.kill("SIGTERM");
  }, 1000).unref();
  const ready = await told(server, "ready");
  if (ready.status !== 200) {
    server.kill();
    stop(ready.text);
  }
  if (share) {
    const { askForOwner, tellAddress } = await import("./share.mjs");
    // Until an owner can sign in, nothing listens to the network.
    if (ready.text === "no owner" || process.argv.includes("--new-passphrase")) await askForOwner(environment);
    server.send("open");
    await told(server, "open");
    await tellAddress(number, environment.KINROW_DATA);
  } else {
    await told(server, "open");
    console.log(`Kinrow is open at http://127.0.0.1:${number}  (end it with Ctrl-C)`);
  }
}

/** Waits for a word from the server. */
function told(server, kind) {
  return new Promise((resolve) => {
    const heard = (message) => {
      if (message.kind === "refused") {
        stop(`The port could not be opened (${message.code}); end the program that has it, or name another in PORT.`);
      }
      if (message.kind !== kind) return;
      server.off("message", heard);
      resolve(message);
    };
    server.on("message", heard);
  });
}

function isFree(number) {
  return new Promise((resolve) => {
    const probe = net.createServer();
    probe.once("error", () => resolve(false));
    probe.listen(number, share ? undefined : "127.0.0.1", () => probe.close(() => resolve(true)));
  });
}
