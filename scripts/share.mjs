// Opening a registry to others: an owner with a passphrase first, then the address, as words and as a code to scan.
import { spawn } from "node:child_process";
import { X509Certificate } from "node:crypto";
import { readFileSync } from "node:fs";
import path from "node:path";
import readline from "node:readline";
import { Writable } from "node:stream";
import { inAddress, namesOfMachine, nameToTell } from "./certificates.mjs";
import { root, stop } from "./steps.mjs";

/**
 * Asks for the owner's name and passphrase, twice and without showing it, until they will do. Where nobody sits at a terminal, the first
 * line of standard input is the passphrase and KINROW_OWNER the name ("owner").
 */
export async function askForOwner(environment) {
  if (!process.stdin.isTTY) {
    const [passphrase = ""] = (await wholeInput()).split(/\r?\n/);
    if (passphrase === "") {
      stop(
        "Nobody can sign in yet: start it in a terminal, which asks for an owner's passphrase, or send the passphrase as the first line of standard input.",
      );
    }
    const refused = await setOwner({ signInName: process.env.KINROW_OWNER || "owner", passphrase }, environment);
    if (refused) stop(refused);
    return;
  }
  console.log("\nOthers will be able to reach this registry, so it needs an owner who signs in.");
  console.log(
    "Take a passphrase of four or five words that have nothing to do with you; it is not shown as you type.\n",
  );
  const ask = asker();
  for (;;) {
    const signInName = (await ask("Name to sign in with [owner]: ")) || "owner";
    const passphrase = await ask("Passphrase: ", true);
    const again = await ask("The same once more: ", true);
    const refused =
      passphrase === again
        ? await setOwner({ signInName, passphrase }, environment)
        : "The two are not the same; write both once more";
    if (!refused) break;
    console.log(`${refused}.\n`);
  }
  ask.end();
}

/** Stores the owner; answers why not, or null. The passphrase goes by standard input: neither other users nor the history of a shell see it. */
function setOwner(owner, environment) {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, ["node_modules/tsx/dist/cli.mjs", "lib/cli/owner.ts"], {
      cwd: root,
      env: environment,
      stdio: ["pipe", "pipe", "pipe"],
    });
    let words = "";
    for (const stream of [child.stdout, child.stderr]) {
      stream.setEncoding("utf8");
      stream.on("data", (text) => {
        words += text;
      });
    }
    child.on("close", (code) => {
      if (code === 0) console.log(words.trim());
      resolve(code === 0 ? null : words.trim());
    });
    child.stdin.end(JSON.stringify(owner));
  });
}

function asker() {
  let hidden = false;
  const output = new Writable({
    write(chunk, _encoding, done) {
      if (!hidden) process.stdout.write(chunk);
      done();
    },
  });
  const lines = readline.createInterface({ input: process.stdin, output, terminal: true });
  lines.on("SIGINT", () => process.exit(130));
  const ask = (question, secret = false) =>
    new Promise((resolve) => {
      hidden = false;
      lines.question(question, (typed) => {
        if (secret) process.stdout.write("\n");
        hidden = false;
        resolve(secret ? typed : typed.trim());
      });
      hidden = secret;
    });
  ask.end = () => lines.close();
  return ask;
}

async function wholeInput() {
  let text = "";
  for await (const chunk of process.stdin) text += chunk;
  return text;
}

/** Tells where the registry is open: the address, and a code for phones that leads to the page on the certificate first. */
export async function tellAddress(port, folder) {
  const { default: qrcode } = await import("qrcode");
  const name = inAddress(nameToTell(namesOfMachine()));
  const first = `http://${name}:${port}`;
  console.log(`\nKinrow is open to others at https://${name}:${port}  (end it with Ctrl-C)`);
  console.log(`\nA device that comes for the first time begins at ${first}`);
  const authority = new X509Certificate(readFileSync(path.join(folder, "sharing", "authority.crt")));
  console.log("There it is shown how to trust this registry's certificate; then it leads on. On a phone, scan:\n");
  console.log(await qrcode.toString(first, { type: "terminal", small: true, errorCorrectionLevel: "M" }));
  console.log(`The fingerprint (SHA-256) of that certificate's authority, to compare:\n${authority.fingerprint256}`);
}
