import { mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { Readable } from "node:stream";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { routes } from "@/lib/access/routes";
import type { Database } from "@/lib/db";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { receiveUpload } from "@/lib/exchange/bring-in/uploads";
import { ownRegistry } from "@/lib/registry/open-registry";
import { granted } from "@/tests/setup/registry";
import { small } from "../exchange/notebook-folder/small-notebook";
import { rowsOf } from "../faults/fuzz/mangled-folder";
import { Interrupt } from "./session/walk";

vi.mock("server-only", () => ({}));
vi.mock("next/headers", () => ({
  cookies: async () => ({ get: () => undefined, set: () => {}, delete: () => {} }),
  headers: async () => new Headers(),
}));
vi.mock("next/navigation", () => ({
  forbidden: () => {
    throw new Interrupt(403);
  },
  notFound: () => {
    throw new Interrupt(404);
  },
}));
vi.mock("@/app/_session/signed-in", () => ({ signedIn: async () => null, signedInOrAsked: async () => null }));

/** The small notebook, in which every name begins as a formula does (OWASP, CSV injection: = + - @, tab and carriage return). */
const formulas = Object.entries({
  ...{ "Orla Fennwick": "=Orla", "The Seed Shelf": "@Shelf", "Hollow Kale": "+Kale", "Bent Pea": "-Pea" },
  ...{ "Marsh Spinach": "=1+1", "Low Barrow": "=HYPERLINK(1)" },
}).reduce(
  (texts, [name, formula]) =>
    Object.fromEntries(Object.entries(texts).map(([file, text]) => [file, text.replaceAll(name, formula)])),
  Object.fromEntries(
    Object.entries(small).map(([file, text]) => [file, text.replaceAll(/\b(?=(?:Kale|Pea|Spinach) \d)/g, "@")]),
  ) as Record<string, string>,
);

let folder = "";
let db: Database;
const handlers = import.meta.glob("../../app/**/route.ts");
const tables = Object.keys(routes).filter((route) => /csv$|\/export$|\/faults$/.test(route));

beforeAll(async () => {
  folder = mkdtempSync(path.join(os.tmpdir(), "kinrow-csv-"));
  vi.stubEnv("KINROW_DATA", folder);
  db = await ownRegistry();
  const files = new Map(Object.entries(formulas).map(([name, text]) => [name, new TextEncoder().encode(text)]));
  granted(await importFolder(db, ownerHere(), files));
});

afterAll(async () => {
  await db.close();
  rmSync(folder, { recursive: true, force: true });
});

/** The changing steps of an address: the record of which most is told. */
async function paramsOf(route: string): Promise<Record<string, string>> {
  const faulty =
    '--b\r\nContent-Disposition: form-data; name="files"; filename="lots.csv"\r\n\r\nlot,variety,kind\n=1+1,=nobody,founder\n\r\n--b--\r\n';
  const upload = await receiveUpload(
    folder,
    new Headers({ "content-type": "multipart/form-data; boundary=b" }),
    Readable.from([Buffer.from(faulty)]),
  );
  const first = route.split("/")[1];
  const id =
    first === "lots"
      ? (await db.read.lot.findFirstOrThrow({ where: { number: "@Pea 3" } })).id
      : first === "grow-outs"
        ? (await db.read.growOut.findFirstOrThrow({ where: { name: "K" } })).id
        : (await db.read.variety.findFirstOrThrow({ where: { name: "-Pea" } })).id;
  return { id, upload: granted(upload), table: "pollen-models" };
}

test("every address that gives a table is here", () => {
  expect(tables.length).toBeGreaterThan(18);
});

test.each(tables)("%s marks what a spreadsheet would run, and leaves numbers as they are", async (route) => {
  const module = (await handlers[`../../app${route}/route.ts`]?.()) as {
    GET: (request: Request, context: { params: Promise<object> }) => Promise<Response>;
  };
  const founder = await db.read.lot.findFirstOrThrow({ where: { number: "@Pea 1" } });
  const address = `http://localhost${route}?lot=${founder.id}`;
  // an address that has none does not wait for them, and the registry must not end under its hand
  const params = await paramsOf(route);
  const response = await module.GET(new Request(address), { params: Promise.resolve(params) });
  expect(response.headers.get("content-type")).toContain("text/csv");
  const cells = rowsOf(await response.text()).flat();
  expect(cells.length).toBeGreaterThan(0);
  const run = cells.filter(
    (cell) => /^[=+@\t\r\uff1d\uff0b\uff0d\uff20]/.test(cell) || (cell.startsWith("-") && !/^-\d+(\.\d+)?$/.test(cell)),
  );
  expect(run).toEqual([]);
  const broken = cells.filter((cell) => /^'-?\d+(\.\d+)?$/.test(cell));
  expect(broken).toEqual([]);
});
