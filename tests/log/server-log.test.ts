import { channel } from "node:diagnostics_channel";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import http from "node:http";
import type { AddressInfo } from "node:net";
import os from "node:os";
import path from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { askedChannel, logFolder, type ServerLog, serverLog } from "@/lib/log/server-log";

let folder = "";
let log: ServerLog;
let server: http.Server;
let base = "";

beforeAll(async () => {
  folder = mkdtempSync(path.join(os.tmpdir(), "kinrow-log-"));
  log = serverLog(folder, process.cwd());
  server = http.createServer((request, response) => {
    channel(askedChannel).publish({ request, response });
    if (request.url?.includes("broken")) return response.destroy();
    response.writeHead(request.url?.startsWith("/season") ? 500 : 200).end("said");
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
});

afterAll(() => {
  log.end();
  server.close();
  rmSync(folder, { recursive: true, force: true });
});

const text = () => readFileSync(path.join(logFolder(folder), "server.log"), "utf8");
const lines = () =>
  text()
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line) as Record<string, unknown>);

it("writes the pattern, the method, the status and how long it took, and nothing else", async () => {
  const cookie = "__Host-kinrow.session_token=secret-of-a-session";
  const asked = [
    "/lots/0195f0a2-1111-7000-8000-000000000001?find=Orsina",
    "/come-in/a-code-of-an-invitation",
    "/Orsina",
  ];
  for (const address of [...asked, "/season", "/api/auth/passkey/verify-registration", "/_next/static/chunks/a.js"])
    await (await fetch(base + address, { headers: { cookie, "user-agent": "Orsina's phone" } })).text();
  await fetch(`${base}/broken`).catch(() => null);
  await expect.poll(() => lines().length).toBe(7);
  const [opened, ...answers] = lines();
  expect(opened).toMatchObject({ level: "info", msg: "opened" });
  expect(answers.map(({ route, status }) => [route, status])).toEqual([
    ["/lots/[id]", 200],
    ["/come-in/[code]", 200],
    ["none", 200],
    ["/season", 500],
    ["/api/auth/[...step]", 200],
    ["none", 200],
  ]);
  const keys = ["level", "method", "ms", "msg", "route", "status", "time"];
  expect(Object.keys(answers[0] ?? {}).sort()).toEqual(keys);
  expect(answers[3]?.level).toBe("error");
  expect(answers[5]).toMatchObject({ brokenOff: true });
  expect(text()).not.toMatch(/Orsina|0195f0a2|secret-of|a-code-of|127\.0\.0\.1/);
});

it("writes a fault without its message", () => {
  log.fault(new Error("of Orsina"), "POST", "/lots/[id]");
  expect(lines().at(-1)).toMatchObject({ msg: "fault", method: "POST", route: "/lots/[id]", fault: { kind: "Error" } });
  expect(text()).not.toContain("Orsina");
});
