import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import net from "node:net";
import os from "node:os";
import path from "node:path";

/** A server of the built app over a data folder of its own. */
export interface TestSite {
  readonly base: string;
  readonly folder: string;
  /** ends the process at once, as a power cut does */
  kill(): Promise<void>;
  /** starts it again over the same folder */
  restart(): Promise<void>;
  end(): Promise<void>;
}

/** Starts one over an empty folder, or over one that was filled; the folder goes with it. */
export async function startSite(
  environment: Record<string, string> = {},
  folder = mkdtempSync(path.join(os.tmpdir(), "kinrow-site-")),
): Promise<TestSite> {
  const port = await freePort();
  const base = `http://127.0.0.1:${port}`;
  let server = await serve(port, folder, environment);
  const kill = () =>
    new Promise<void>((resolve) => {
      if (server.exitCode !== null || server.signalCode !== null) return resolve();
      server.once("exit", () => resolve());
      server.kill("SIGKILL");
    });
  return {
    base,
    folder,
    kill,
    restart: async () => {
      server = await serve(port, folder, environment);
    },
    end: async () => {
      await kill();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** By the same script as `npm start` (scripts/serve.mjs), which tells when its door is open and ends with the tests. */
async function serve(port: number, folder: string, environment: Record<string, string>): Promise<ChildProcess> {
  const server = spawn(process.execPath, ["scripts/serve.mjs"], {
    stdio: ["ignore", "ignore", "ignore", "ipc"],
    env: {
      ...process.env,
      NODE_ENV: "production",
      NEXT_TELEMETRY_DISABLED: "1",
      PORT: String(port),
      KINROW_SHARED: "no",
      KINROW_DATA: folder,
      ...environment,
    },
  });
  const open = await new Promise<boolean>((resolve) => {
    server.on("message", (told: { kind: string; status?: number }) => {
      if (told.kind === "ready" && told.status !== 200) resolve(false);
      if (told.kind === "open") resolve(true);
    });
    server.once("exit", () => resolve(false));
  });
  if (open) return server;
  server.kill("SIGKILL");
  throw new Error("the built app did not answer; build it first (npm test does)");
}

/** A port of this machine that nobody has. */
export function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = net.createServer();
    probe.once("error", reject);
    probe.listen(0, "127.0.0.1", () => {
      const { port } = probe.address() as net.AddressInfo;
      probe.close(() => resolve(port));
    });
  });
}
