import { existsSync, readdirSync } from "node:fs";
import net from "node:net";
import path from "node:path";
import Sqlite from "better-sqlite3";
import { afterAll, beforeAll, expect, test } from "vitest";
import { Drawn } from "../faults/fuzz/drawn";
import { oddWord } from "../faults/fuzz/odd-words";
import { startSite, type TestSite } from "./server";

let site: TestSite;

beforeAll(async () => {
  site = await startSite();
});
afterAll(async () => {
  await site.end();
});

const uploads = () => path.join(site.folder, "uploads");
const keptUploads = () => (existsSync(uploads()) ? readdirSync(uploads()) : []);

async function sent(place: string, body: Uint8Array, headers: Record<string, string>) {
  const answer = await fetch(site.base + place, {
    method: "POST",
    redirect: "manual",
    headers: { accept: "application/json", ...headers },
    body: new Blob([Uint8Array.from(body)]),
  });
  return { status: answer.status, text: await answer.text() };
}

const asForm = { "content-type": "multipart/form-data; boundary=b" };
const part = (name: string, bytes: number) =>
  new TextEncoder().encode(
    `--b\r\nContent-Disposition: form-data; name="files"; filename="${name}"\r\n\r\n${"x".repeat(bytes)}\r\n--b--\r\n`,
  );

const changeSets = () => {
  const db = new Sqlite(path.join(site.folder, "registry.sqlite"), { readonly: true });
  const row = db.prepare('SELECT COUNT(*) AS n FROM "ChangeSet"').get() as { n: number };
  db.close();
  return row.n;
};

test("an upload of 40 MB comes through whole, one of 70 MB is refused in a sentence", async () => {
  const large = await sent("/bring-in/upload", part("lots.csv", 40 * 1024 * 1024), asForm);
  expect(large.status).toBe(200);
  expect(Object.keys(JSON.parse(large.text))).toEqual(["upload"]);
  const over = await sent("/bring-in/upload", part("lots.csv", 70 * 1024 * 1024), asForm);
  expect(over.text).toContain("is over 64 MB");
});

test("garbage in place of files, of forms and of calculations is refused; no answer tells of the inside, and nothing is written", async () => {
  const before = changeSets();
  const kept = keptUploads().length;
  const drawn = new Drawn(20_261_127);
  const strange: string[] = [];
  for (let number = 0; number < 60; number += 1) {
    const body: Uint8Array = drawn.chance(0.5)
      ? drawn.bytes(3000)
      : new TextEncoder().encode(`--b\r\n${oddWord(drawn)}\r\n\r\n${oddWord(drawn)}`);
    const place = drawn.one([
      "/bring-in/upload",
      "/calculations",
      "/",
      "/lots/new",
      "/settings",
      "/pictures/upload",
      "/field/records",
    ]);
    const action: Record<string, string> =
      place === "/bring-in/upload"
        ? {}
        : {
            "next-action": drawn.one([
              "0",
              "x".repeat(40),
              "a".repeat(42),
              oddWord(drawn).replace(/[^\x21-\x7e]/g, "-") || "-",
            ]),
          };
    const type: Record<string, string> = drawn.one<Record<string, string>>([
      asForm,
      { "content-type": "application/json" },
      { "content-type": "text/plain" },
      {},
    ]);
    const { status, text } = await sent(place, body, { ...action, ...type });
    if (status >= 500 && place === "/bring-in/upload") strange.push(`${number} ${place} ${status}`);
    if (/node_modules|\bat .*\.js:\d+|registry\.sqlite/.test(text))
      strange.push(`${number} ${place} tells of the inside`);
    const upload = place === "/bring-in/upload" ? (JSON.parse(text) as { upload?: string }).upload : undefined;
    if (upload) strange.push(`${number} was taken`);
  }
  expect(strange).toEqual([]);
  expect(changeSets()).toBe(before);
  expect(keptUploads().length).toBe(kept);
  expect((await fetch(`${site.base}/ready`)).status).toBe(200);
});

test("a line that breaks in the middle of an upload leaves nothing, and the server goes on", async () => {
  const kept = keptUploads().length;
  const { port } = new URL(site.base);
  for (let number = 0; number < 5; number += 1)
    await new Promise<void>((resolve) => {
      const socket = net.connect(Number(port), "127.0.0.1", () => {
        socket.write(
          `POST /bring-in/upload HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nContent-Type: multipart/form-data; boundary=b\r\nContent-Length: 100000\r\n\r\n--b\r\nContent-Disposition: form-data; name="files"; filename="lots.csv"\r\n\r\nlot`,
          () => setTimeout(() => socket.destroy(), 100),
        );
      });
      socket.on("close", () => resolve());
      socket.on("error", () => {});
    });
  await expect.poll(() => keptUploads().length, { timeout: 20_000 }).toBe(kept);
  expect((await fetch(`${site.base}/ready`)).status).toBe(200);
});
