import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { boundedFile } from "@/lib/log/bounded-file";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(path.join(os.tmpdir(), "kinrow-log-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const rights = (place: string) => statSync(place).mode & 0o777;

it("is read by its owner alone, and so is its folder", () => {
  const place = path.join(folder, "logs");
  boundedFile(place, "server").write("one\n");
  expect([rights(place), rights(path.join(place, "server.log"))]).toEqual([0o700, 0o600]);
  expect(readFileSync(path.join(place, "server.log"), "utf8")).toBe("one\n");
});

it("goes on where it stood, and takes from others the right to read what was there", () => {
  const file = path.join(folder, "server.log");
  writeFileSync(file, "before\n", { mode: 0o644 });
  boundedFile(folder, "server").write("after\n");
  expect([readFileSync(file, "utf8"), rights(file)]).toEqual(["before\nafter\n", 0o600]);
});

it("is put aside when it is full, and only so many are kept", () => {
  const log = boundedFile(folder, "server", 20, 2);
  for (let line = 0; line < 12; line += 1) log.write(`line ${line}\n`);
  const files = readdirSync(folder).sort();
  expect(files).toEqual(["server.1.log", "server.2.log", "server.log"]);
  for (const file of files) {
    expect(statSync(path.join(folder, file)).size).toBeLessThanOrEqual(20);
    expect(rights(path.join(folder, file))).toBe(0o600);
  }
  // Two lines of seven or eight bytes go into twenty: the last six of twelve are left, in their order.
  const oldestFirst = ["server.2.log", "server.1.log", "server.log"].map((file) => path.join(folder, file));
  expect(oldestFirst.map((file) => readFileSync(file, "utf8")).join("")).toBe(
    [6, 7, 8, 9, 10, 11].map((line) => `line ${line}\n`).join(""),
  );
});

it("stops nothing where it cannot be written", () => {
  const taken = path.join(folder, "taken");
  writeFileSync(taken, "a file stands where the folder should");
  const log = boundedFile(taken, "server");
  expect(() => log.write("one\n")).not.toThrow();
  rmSync(taken);
  mkdirSync(taken);
  log.write("two\n");
  expect(readFileSync(path.join(taken, "server.log"), "utf8")).toBe("two\n");
});
