import { createHash } from "node:crypto";
import { rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { beforeEach, expect, test, vi } from "vitest";
import { POST as fromPhone } from "@/app/field/photos/route";
import { GET } from "@/app/photos/[hash]/route";
import { POST as fromDesk } from "@/app/pictures/upload/route";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { photoArrived } from "@/lib/registry/photos/arriving";
import { pathOfPhoto } from "@/lib/registry/photos/photo-place";
import { seenBy } from "@/lib/registry/privacy/seen-by";
import { verifyRegistry } from "@/lib/registry/safe-keeping/verify/verify-registry";
import { halves, withPlace } from "@/tests/registry/photos/pictures";
import { aCircle, actor, type Circle } from "@/tests/registry/privacy/a-circle";
import { emptyRegistry } from "@/tests/setup/registry";

const here: { db: Database | null; who: Actor } = { db: null, who: actor("owner") };
vi.mock("server-only", () => ({}));
vi.mock("next/cache", () => ({ revalidatePath: () => {} }));
vi.mock("@/app/_session/current", () => ({
  current: async () => ({ db: seenBy(here.db as Database, here.who), actor: here.who }),
}));

let db: Database;
let circle: Circle;

beforeEach(async () => {
  db = await emptyRegistry();
  circle = await aCircle(db);
  here.db = db;
  here.who = actor("owner");
});

const hashOf = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");
const asked = (hash: string, headers: Record<string, string> = {}) =>
  GET(new Request(`http://localhost/photos/${hash}`, { headers }), { params: Promise.resolve({ hash }) });

async function sent(of: string, id: string, files: Readonly<Record<string, Uint8Array>>, texts = {}) {
  const form = new FormData();
  for (const [name, value] of Object.entries({ of, id, ...texts })) form.set(name, String(value));
  for (const [name, bytes] of Object.entries(files)) form.append("photos", new File([new Uint8Array(bytes)], name));
  const response = await fromDesk(new Request("http://localhost/pictures/upload", { method: "POST", body: form }));
  return { status: response.status, to: response.headers.get("location") ?? "" };
}

test("a picture that is sent at the desk stands on its record's page and is given out without its place", async () => {
  const { to, status } = await sent("lot", circle.lots.berts, { "a.jpg": await withPlace() }, { caption: "The jar" });
  expect([status, to]).toEqual([303, `/lots/${circle.lots.berts}#pictures`]);
  const { hash } = await db.read.photo.findFirstOrThrow({ where: { caption: "The jar" } });
  const response = await asked(hash);
  const bytes = new Uint8Array(await response.arrayBuffer());
  expect(response.status).toBe(200);
  expect(hashOf(bytes)).toBe(hash);
  expect(Buffer.from(bytes).toString("latin1")).not.toMatch(/Exif|house|Cameramaker/);
  expect(response.headers.get("content-type")).toBe("image/jpeg");
  expect(response.headers.get("x-content-type-options")).toBe("nosniff");
  expect(response.headers.get("cache-control")).toBe("private, no-cache");
  expect(response.headers.get("content-disposition")).toMatch(/^inline/);
  expect((await asked(hash, { "if-none-match": `"${hash}"` })).status).toBe(304);
});

test("of several pictures the good ones are stored, and the others told with why beside what was typed", async () => {
  const svg = new TextEncoder().encode("<svg xmlns='http://www.w3.org/2000/svg'/>");
  const good = Uint8Array.from(await halves(20, 20).png().toBuffer());
  const { to } = await sent("lot", circle.lots.berts, { "a.png": good, "b.jpg": svg }, { caption: "The jar" });
  const back = new URL(to, "http://localhost");
  expect(back.pathname).toBe("/pictures/new");
  expect(back.searchParams.get("stored")).toBe("1 picture");
  expect(back.searchParams.get("caption")).toBe("The jar");
  expect(back.searchParams.getAll("refused")).toEqual([expect.stringContaining('"b.jpg" is a drawing')]);
  expect(await db.read.photo.count()).toBe(1);
  const nothing = await sent("lot", circle.lots.berts, {}, { caption: "The jar" });
  expect(new URL(nothing.to, "http://localhost").searchParams.getAll("refused")).toHaveLength(1);
});

test("a picture of a variety that is held back is not there for others, just like one that never was", async () => {
  await sent("variety", circle.varieties.held, { "a.jpg": await withPlace() });
  const { hash } = await db.read.photo.findFirstOrThrow();
  expect((await asked(hash)).status).toBe(200);
  here.who = actor("steward", circle.stewards.anna);
  expect((await asked(hash)).status).toBe(200);
  const answers: unknown[][] = [];
  for (const who of [actor("steward", circle.stewards.bert), actor("reader"), actor("librarian")]) {
    here.who = who;
    for (const each of [hash, "0".repeat(64), "..%2f..%2fregistry.sqlite"]) {
      const response = await asked(each, { "if-none-match": `"${hash}"` });
      answers.push([response.status, await response.text(), [...response.headers]]);
    }
  }
  expect(new Set(answers.map((each) => JSON.stringify(each))).size).toBe(1);
  expect(answers[0]?.slice(0, 2)).toEqual([404, "There is no such picture here.\n"]);
});

test("a file that is gone or rotten is told in words, and verifying names it", async () => {
  await sent("lot", circle.lots.berts, { "a.jpg": await withPlace() });
  const { hash } = await db.read.photo.findFirstOrThrow();
  const file = path.join(db.location.folder, "photos", pathOfPhoto(hash));
  expect((await verifyRegistry(db, path.join(db.location.folder, "photos"))).findings).toEqual([]);
  writeFileSync(file, "rotten");
  expect([(await asked(hash)).status, await (await asked(hash)).text()]).toEqual([
    404,
    "The file of this picture is not what was stored.\n",
  ]);
  rmSync(file);
  expect(await (await asked(hash)).text()).toBe("The file of this picture is not in its place.\n");
  const { findings } = await verifyRegistry(db, path.join(db.location.folder, "photos"));
  expect(findings.map((each) => each.sentence)).toEqual([expect.stringContaining(hash)]);
});

test("a phone's picture is stored once however often it is sent, and what is remembered of it is no fault", async () => {
  here.who = actor("helper", null, [circle.growOuts.annas]);
  const bytes = await withPlace();
  const post = async (sha256: string, body: Uint8Array) => {
    const address = `http://localhost/field/photos?sha256=${sha256}`;
    const response = await fromPhone(new Request(address, { method: "POST", body: new Uint8Array(body) }));
    const answer = (await response.json()) as Record<string, unknown>;
    return { ...answer, status: response.status };
  };
  const first: Record<string, unknown> = await post(hashOf(bytes), bytes);
  expect(first).toMatchObject({ status: 200, sent: hashOf(bytes), width: 60, height: 40 });
  expect(await post(hashOf(bytes), bytes)).toEqual(first);
  expect(await photoArrived(db, hashOf(bytes))).toMatchObject({ hash: first.hash });
  expect((await post("0".repeat(64), bytes)).status).toBe(400);
  const letter = new TextEncoder().encode("Dear all");
  expect(await post(hashOf(letter), letter)).toMatchObject({
    status: 422,
    refused: expect.stringContaining("no picture"),
  });
  const { findings } = await verifyRegistry(db, path.join(db.location.folder, "photos"));
  expect(findings.map((each) => each.sentence)).toEqual(["1 files under photos belong to no record any more."]);
});
