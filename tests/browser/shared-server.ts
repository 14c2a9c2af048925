import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, readFileSync } from "node:fs";
import http, { type IncomingHttpHeaders } from "node:http";
import https from "node:https";
import os from "node:os";
import path from "node:path";
import { freePort } from "./server";

/** A registry that is opened to others, as `npm start -- --share` opens it. */
export interface SharedSite {
  readonly port: number;
  readonly folder: string;
  /** what the start command said */
  said(): string;
  /** the exit code, once it has ended */
  ended: Promise<number | null>;
  end(): Promise<void>;
}

export const ownersPassphrase = "blue kettle under nine stones";

export const newFolder = () => mkdtempSync(path.join(os.tmpdir(), "kinrow-shared-"));

/** Starts it over a data folder, with the first line of standard input, under names of the tests; waits until it is open or has ended. */
export async function startShared(
  folder: string,
  passphrase = "",
  names = "127.0.0.1 127.0.0.2 patch.example",
): Promise<SharedSite> {
  const port = await freePort();
  const command: ChildProcess = spawn(process.execPath, ["scripts/start.mjs", "--share"], {
    stdio: ["pipe", "pipe", "pipe"],
    env: { ...process.env, KINROW_DATA: folder, PORT: String(port), KINROW_NAMES: names, KINROW_OWNER: "odalind" },
  });
  let said = "";
  for (const stream of [command.stdout, command.stderr] as (NodeJS.ReadableStream | null)[]) {
    stream?.setEncoding("utf8");
    stream?.on("data", (text: string) => {
      said += text;
    });
  }
  command.stdin?.end(passphrase === "" ? "" : `${passphrase}\n`);
  const ended = new Promise<number | null>((resolve) => command.once("exit", (code) => resolve(code)));
  const open = (async () => {
    while (!said.includes("is open to others")) await new Promise((resolve) => setTimeout(resolve, 50));
  })();
  await Promise.race([open, ended]);
  const end = async () => {
    command.kill("SIGTERM");
    await ended;
  };
  return { port, folder, said: () => said, ended, end };
}

export interface Answer {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly text: string;
}

/** The certificate is looked at for the address that is gone to, whatever name is made up in the request. */
const trust = (site: SharedSite) => ({
  ca: readFileSync(path.join(site.folder, "sharing", "authority.crt")),
  servername: "",
});

/** One request, told whole: to which address of this machine it goes, under which name, by TLS or in plain. */
export function ask(
  site: SharedSite,
  place: string,
  how: {
    address?: string;
    name?: string;
    plain?: boolean;
    method?: string;
    headers?: Record<string, string>;
    body?: string;
    /** keeps connections open between many requests; without one each has its own */
    agent?: https.Agent;
  } = {},
): Promise<Answer> {
  const address = how.address ?? "127.0.0.1";
  const name = how.name ?? `${address}:${site.port}`;
  const options = {
    host: address,
    port: site.port,
    path: place,
    method: how.method ?? "GET",
    headers: { host: name, ...how.headers },
    agent: how.agent ?? (false as const),
  };
  return new Promise((resolve, reject) => {
    const heard = (response: http.IncomingMessage) => {
      let text = "";
      const body: NodeJS.ReadableStream = response;
      body.setEncoding("utf8");
      body.on("data", (part: string) => {
        text += part;
      });
      body.on("end", () => resolve({ status: response.statusCode ?? 0, headers: response.headers, text }));
    };
    const request = how.plain ? http.request(options, heard) : https.request({ ...options, ...trust(site) }, heard);
    request.on("error", reject);
    request.end(how.body);
  });
}
