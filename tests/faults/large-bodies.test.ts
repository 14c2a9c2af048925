import http from "node:http";
import type { AddressInfo } from "node:net";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

interface Script {
  largeBodies(): (request: http.IncomingMessage, response: http.ServerResponse) => boolean;
}

const mebibyte = 1024 * 1024;
let server: http.Server;
let port = 0;
const held: http.ServerResponse[] = [];

beforeAll(async () => {
  const { largeBodies } = (await import(pathToFileURL(path.resolve("scripts/large-bodies.mjs")).href)) as Script;
  const mayComeIn = largeBodies();
  server = http.createServer((request, response) => {
    if (!mayComeIn(request, response)) return;
    if (request.method !== "GET" && request.url === "/held") held.push(response);
    else response.end("in");
    request.resume();
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", () => resolve()));
  port = (server.address() as AddressInfo).port;
});
afterAll(() => server.close());

/** Begins to send; answers the status that came back. */
function send(url: string, headers: http.OutgoingHttpHeaders, method = "POST"): Promise<number> {
  return new Promise((resolve, reject) => {
    const request = http.request({ port, host: "127.0.0.1", path: url, method, headers, agent: false }, (response) => {
      response.resume();
      resolve(response.statusCode ?? 0);
    });
    request.on("error", reject);
    if (method === "GET") request.end();
    else request.write("x");
  });
}

describe("large bodies that are sent", () => {
  it("come in four at a time; the fifth is told to wait, and small ones and looks pass all the same", async () => {
    const four = Array.from({ length: 4 }, (_, i) =>
      send("/held", i < 2 ? { "content-length": 60 * mebibyte } : { "transfer-encoding": "chunked" }),
    );
    await expect.poll(() => held.length).toBe(4);
    expect(await send("/quick", { "content-length": 2 * mebibyte })).toBe(503);
    expect(await send("/quick", { "transfer-encoding": "chunked" })).toBe(503);
    expect(await send("/quick", { "content-length": 1 })).toBe(200);
    expect(await send("/quick", {}, "GET")).toBe(200);
    for (const response of held.splice(0)) response.end("in");
    expect(await Promise.all(four)).toEqual([200, 200, 200, 200]);
    await expect.poll(() => send("/quick", { "content-length": 2 * mebibyte })).toBe(200);
  });
});
