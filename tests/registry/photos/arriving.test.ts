import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";
import { Readable } from "node:stream";
import { beforeEach, expect, it } from "vitest";
import { photoArrived, receiveChosen, receivePhoto } from "@/lib/registry/photos/arriving";
import { mostBytesSent } from "@/lib/registry/photos/photo-limits";
import { granted, temporaryFolder } from "@/tests/setup/registry";
import { withPlace } from "./pictures";

const hashOf = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");
const streamOf = (bytes: Uint8Array) => Readable.from([Buffer.from(bytes)]);

let place: { location: { engine: "sqlite"; url: string; folder: string; demonstration: boolean } };
beforeEach(() => {
  const folder = temporaryFolder();
  place = { location: { engine: "sqlite", url: path.join(folder, "registry.sqlite"), folder, demonstration: false } };
});

const under = (...steps: string[]) => path.join(place.location.folder, ...steps);

it("keeps a picture under its own hash and answers for the hash that the phone knows", async () => {
  const sent = await withPlace();
  expect(await photoArrived(place, hashOf(sent))).toBeNull();
  const stored = granted(await receivePhoto(place, hashOf(sent), streamOf(sent)));
  expect(stored.hash).not.toBe(hashOf(sent));
  expect(await photoArrived(place, hashOf(sent))).toEqual(stored);
  const file = under("photos", stored.hash.slice(0, 2), `${stored.hash}.jpg`);
  expect(hashOf(Uint8Array.from(readFileSync(file)))).toBe(stored.hash);
  expect(statSync(file).size).toBe(stored.bytes);
  expect(statSync(file).mode & 0o077).toBe(0);
  expect(statSync(path.dirname(file)).mode & 0o077).toBe(0);
  expect(readdirSync(under("uploads"))).toEqual([]);
});

it("changes nothing when the same comes again, and makes good what was lost or rotted", async () => {
  const sent = await withPlace();
  const stored = granted(await receivePhoto(place, hashOf(sent), streamOf(sent)));
  const file = under("photos", stored.hash.slice(0, 2), `${stored.hash}.jpg`);
  const { mtimeMs } = statSync(file);
  expect(granted(await receivePhoto(place, hashOf(sent), streamOf(sent)))).toEqual(stored);
  expect(granted(await receiveChosen(place, "a.jpg", streamOf(sent)))).toEqual(stored);
  expect(statSync(file).mtimeMs).toBe(mtimeMs);
  writeFileSync(file, "rotten");
  granted(await receiveChosen(place, "a.jpg", streamOf(sent)));
  expect(statSync(file).size).toBe(stored.bytes);
});

it("refuses another file than was told, one that is too long, one that was cut off, and leaves nothing of it", async () => {
  const sent = await withPlace();
  const codes: string[] = [];
  const tryIt = async (hash: string, body: Readable) => {
    const outcome = await receivePhoto(place, hash, body);
    codes.push(outcome.ok ? "taken" : (outcome.refusals[0]?.code ?? ""));
  };
  await tryIt(hashOf(Uint8Array.of(1)), streamOf(sent));
  await tryIt("../../etc/passwd", streamOf(sent));
  const long = Readable.from(
    (function* () {
      for (let left = mostBytesSent + 1; left > 0; left -= 65_536) yield Buffer.alloc(65_536);
    })(),
  );
  await tryIt(hashOf(sent), long);
  const cut = new Readable({ read() {} });
  cut.push(Buffer.from(sent.subarray(0, 100)));
  setImmediate(() => cut.destroy(new Error("gone")));
  await tryIt(hashOf(sent), cut);
  expect(codes).toEqual(["not-whole", "not-a-hash", "photo-too-large", "cut-off"]);
  expect(existsSync(under("photos"))).toBe(false);
  expect(readdirSync(under("uploads"))).toEqual([]);
});

it("says in a sentence where the folder cannot be written", async () => {
  const sent = await withPlace();
  mkdirSync(place.location.folder, { recursive: true });
  writeFileSync(under("photos"), "a file where the folder should be");
  const outcome = await receivePhoto(place, hashOf(sent), streamOf(sent));
  expect(outcome.ok).toBe(false);
  expect(readdirSync(under("uploads"))).toEqual([]);
});

it("keeps pictures of the demonstration apart", async () => {
  const sent = await withPlace();
  const demonstration = { location: { ...place.location, demonstration: true } };
  granted(await receiveChosen(demonstration, "a.jpg", streamOf(sent)));
  expect([existsSync(under("photos")), existsSync(under("demonstration-photos"))]).toEqual([false, true]);
});
