import { existsSync, mkdirSync, readdirSync, symlinkSync } from "node:fs";
import path from "node:path";
import { Readable } from "node:stream";
import { expect, it } from "vitest";
import { forgetUpload, mostFiles, receiveUpload, uploadedFiles } from "@/lib/exchange/bring-in/uploads";
import { temporaryFolder } from "@/tests/setup/registry";

const border = "--b";
const headers = (more: Record<string, string> = {}) =>
  new Headers({ "content-type": "multipart/form-data; boundary=b", ...more });
const part = (name: string, text: string) =>
  `${border}\r\nContent-Disposition: form-data; name="files"; filename="${name}"\r\n\r\n${text}\r\n`;
const end = `${border}--\r\n`;

const left = (folder: string) =>
  existsSync(path.join(folder, "uploads")) ? readdirSync(path.join(folder, "uploads")) : [];

async function codeOf(folder: string, body: string | Readable, more: Record<string, string> = {}, waits?: number) {
  const outcome = await receiveUpload(
    folder,
    headers(more),
    typeof body === "string" ? Readable.from([Buffer.from(body)]) : body,
    waits,
  );
  return outcome.ok ? null : outcome.refusals[0]?.code;
}

it("files of a form come in under their own names, without the folders before them", async () => {
  const folder = temporaryFolder();
  const body =
    part("lots.csv", "lot\n") + part("a\\\\b\\\\ledger.csv", "date\n") + part("../../varieties.csv", "variety\n") + end;
  const id = await receiveUpload(folder, headers(), Readable.from([Buffer.from(body)]));
  if (!id.ok) throw new Error(id.refusals[0]?.sentence);
  const files = await uploadedFiles(folder, id.value);
  expect(files?.ok ? [...files.value].map(([name, bytes]) => [name, new TextDecoder().decode(bytes)]) : files).toEqual([
    ["lots.csv", "lot\n"],
    ["ledger.csv", "date\n"],
    ["varieties.csv", "variety\n"],
  ]);
  await forgetUpload(folder, id.value);
  expect(left(folder)).toEqual([]);
  expect(await uploadedFiles(folder, id.value)).toBeNull();
});

it("an upload that is not what it should be is refused by name, and nothing of it is kept", async () => {
  const folder = temporaryFolder();
  const many = Array.from({ length: mostFiles + 1 }, (_none, place) => part(`${place}.csv`, "x")).join("") + end;
  const one = part("lots.csv", "lot\n");
  expect({
    twice: await codeOf(folder, one + part("x/lots.csv", "lot\n") + end),
    many: await codeOf(folder, many),
    long: await codeOf(folder, part("n".repeat(300), "x") + end),
    nul: await codeOf(folder, part("lots.csv\0.jpg", "x") + end),
    up: await codeOf(folder, part("..", "x") + end),
    none: await codeOf(folder, part("", "") + end),
    cut: await codeOf(folder, one.slice(0, -3)),
    garbage: await codeOf(folder, "\0\0\0"),
    noBorder: (await receiveUpload(folder, new Headers({ "content-type": "multipart/form-data" }), Readable.from([])))
      .ok,
    noForm: (await receiveUpload(folder, new Headers(), Readable.from([]))).ok,
  }).toEqual({
    ...{ twice: "file-twice", many: "too-many", long: "file-name", nul: "file-name", up: "nothing-sent" },
    ...{ none: "nothing-sent", cut: "cut-off", garbage: "cut-off", noBorder: false, noForm: false },
  });
  expect(left(folder)).toEqual([]);
});

it("a line that breaks, or says nothing for too long, is given up", async () => {
  const folder = temporaryFolder();
  const broken = Readable.from(
    (function* () {
      yield Buffer.from(part("lots.csv", "lot\n"));
      throw new Error("the line broke");
    })(),
  );
  expect(await codeOf(folder, broken)).toBe("cut-off");
  const silent = new Readable({ read() {} });
  silent.push(Buffer.from(part("lots.csv", "lot\n")));
  expect(await codeOf(folder, silent, {}, 40)).toBe("cut-off");
  expect(silent.destroyed).toBe(true);
  expect(left(folder)).toEqual([]);
});

it("a form that came whole and whose end is spoilt is given up, too", async () => {
  const folder = temporaryFolder();
  // The head of the second part is broken, so that it never begins.
  const spoilt = `${part("lots.csv", "lot\n")}${border}\r\nContent-Disposition: form-data; name="files"; filename="a.csv"\r\n`;
  for (const body of [spoilt, `${part("lots.csv", "lot\n")}${border}-x\r\n`, `${border}\r\n`, `${border}x${end}`])
    expect(await codeOf(folder, body, {}, 40)).toMatch(/cut-off|nothing-sent/);
  expect(left(folder)).toEqual([]);
});

it("more than 64 MiB is refused: by the length that it states, and by what comes", async () => {
  const folder = temporaryFolder();
  expect(await codeOf(folder, "", { "content-length": String(70 * 1024 * 1024) })).toBe("too-large");
  const piece = Buffer.alloc(1024 * 1024, "x");
  const stream = Readable.from(
    (function* () {
      yield Buffer.from(part("lots.csv", "").slice(0, -2));
      for (let count = 0; count < 66; count += 1) yield piece;
      yield Buffer.from(`\r\n${end}`);
    })(),
  );
  expect(await codeOf(folder, stream)).toBe("too-large");
  expect(left(folder)).toEqual([]);
});

it("an earlier one that is cleared away at the same moment stands in nobody's way", async () => {
  const folder = temporaryFolder();
  mkdirSync(path.join(folder, "uploads"));
  // listed, and not there when it is looked at
  symlinkSync("nowhere", path.join(folder, "uploads", "vanished"));
  expect(await codeOf(folder, part("lots.csv", "lot\n") + end)).toBeNull();
});
