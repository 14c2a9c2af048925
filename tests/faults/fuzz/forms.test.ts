import { mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { ownRegistry } from "@/lib/registry/open-registry";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { Interrupt } from "../../app/session/walk";
import { small } from "../../exchange/notebook-folder/small-notebook";
import { base, csv, fillEveryTable } from "../../registry/notebook/further/fill-every-table";
import { Drawn, fuzzWanted, tell } from "./drawn";
import { FieldBook } from "./field-book";
import { hashOfTables, undone, wrongAfter, wrongInRoundTrip } from "./statement";
import { type Deed, formsOfRecords, takenBy } from "./which-forms";

/** What the action that runs now asked of its form: names of fields, as they are read. */
const asked: { fields: Set<string> } = { fields: new Set() };

const listening = vi.hoisted(() => ({
  to: (texts: Record<string, string>, heard: (name: string) => void) =>
    new Proxy(texts, {
      get: (target, name) => {
        if (typeof name === "string") heard(name);
        return Reflect.get(target, name);
      },
    }),
}));

vi.mock("server-only", () => ({}));
vi.mock("next/cache", () => ({ revalidatePath: () => {} }));
vi.mock("next/headers", () => ({
  cookies: async () => ({ get: () => undefined, set: () => {}, delete: () => {} }),
  headers: async () => new Headers(),
}));
vi.mock("next/navigation", () => {
  const stop = (status: number, location: string | null = null) => {
    throw new Interrupt(status, location);
  };
  return {
    forbidden: () => stop(403),
    notFound: () => stop(404),
    redirect: (to: string) => stop(307, to),
    permanentRedirect: (to: string) => stop(308, to),
  };
});
vi.mock("@/app/_session/signed-in", () => ({
  signedIn: async () => null,
  signedInOrAsked: async () => null,
}));
vi.mock("@/app/lots/_form/form-answer", async (original) => {
  const real = await original<typeof import("@/app/lots/_form/form-answer")>();
  return { ...real, textsOf: (form: FormData) => listening.to(real.textsOf(form), (name) => asked.fields.add(name)) };
});
vi.mock("@/lib/schemas/varieties/form-texts", async (original) => {
  const real = await original<typeof import("@/lib/schemas/varieties/form-texts")>();
  return {
    ...real,
    textsOfForm: (form: FormData) => listening.to(real.textsOfForm(form), (name) => asked.fields.add(name)),
  };
});

const { cases: all, seed } = fuzzWanted();
const cases = Math.floor((all * 13) / 20);
const owner = ownerHere();
const modules = import.meta.glob("../../../app/**/*.ts");

const named = process.env.KINROW_FUZZ_FORM;
const forms = formsOfRecords.filter(({ name }) => named === undefined || name === named);

let folder = "";
let db: Database;
let empty: Database;

beforeAll(async () => {
  folder = mkdtempSync(path.join(os.tmpdir(), "kinrow-forms-"));
  vi.stubEnv("KINROW_DATA", folder);
  db = await ownRegistry();
  empty = await emptyRegistry();
  granted(await importFolder(db, owner, base));
  await fillEveryTable(db);
  granted(await importFolder(db, owner, csv(small)));
});

afterAll(async () => {
  await db.close();
  rmSync(folder, { recursive: true, force: true });
});

interface Counted {
  accepted: number;
  refused: number;
  brokenOff: number;
  readonly byForm: Map<string, number>;
  readonly wrong: string[];
}

const leave = { tables: ["Change", "ChangeSet"], columns: ["revision"] };

const forGood = new Set(["forgetPerson", "erasePicture"]);

/** What is sent: values that the form's own refusals named, values of the registry, and odd ones. */
async function oneCase(number: number, book: FieldBook, before: string, counted: Counted): Promise<string> {
  const drawn = new Drawn(seed * 100_003 + number);
  const { file, name } = drawn.one(forms);
  const key = `${file} ${name}`;
  const module = (await modules[`../../../${file}`]?.()) as Readonly<Record<string, Deed>> | undefined;
  const deed = module?.[name];
  if (!deed) throw new Error(`${key} is not there`);
  asked.fields = new Set();
  const given = book.argumentsOf(key, takenBy(deed), drawn);
  const last = await db.lastChange();
  const wrong: string[] = [];
  let answer: unknown = null;
  try {
    answer = await deed(...given.all);
  } catch (error) {
    // What no page sends may be broken off: it has to write nothing.
    if (given.forged) counted.brokenOff += 1;
    else if (!(error instanceof Interrupt))
      wrong.push(`broke: ${error instanceof Error ? error.stack : String(error)}`);
    else if (error.status >= 500) wrong.push(`ended with ${error.status}`);
  }
  book.heard(key, asked.fields, answer, given.all);
  const wrote = (await db.lastChange()) !== last;
  if (wrote) {
    counted.accepted += 1;
    counted.byForm.set(key, (counted.byForm.get(key) ?? 0) + 1);
    wrong.push(...(await wrongAfter(db)));
    if (drawn.chance(0.2)) wrong.push(...(await wrongInRoundTrip(db, empty)));
    const set = await db.read.changeSet.findFirstOrThrow({ orderBy: { number: "desc" } });
    const back = await undone(db, set.id);
    // A name or picture that is erased is forgotten for good, and what was taken back is not taken back again.
    if (set.kind !== "undo" && !forGood.has(name)) wrong.push(...back);
  } else counted.refused += 1;
  const after = await hashOfTables(db, leave);
  if (after !== before && (!wrote || wrong.length > 0))
    wrong.push(wrote ? "cannot be taken back whole" : "was refused and wrote all the same");
  else if (after !== before && !forGood.has(name) && name !== "takeBack" && name !== "takeLinesBack")
    wrong.push("is not as before after it was taken back");
  counted.wrong.push(...wrong.map((each) => `case ${number} ${key}: ${each}\n${given.shown}`));
  for (const each of wrong) tell(`case ${number} ${key}: ${each}\n${given.shown}`);
  return after;
}

test(`${cases} posted forms (seed ${seed}) are taken in right, or refused and write nothing`, async () => {
  const counted: Counted = { accepted: 0, refused: 0, brokenOff: 0, byForm: new Map(), wrong: [] };
  const book = new FieldBook();
  const learnt = process.env.KINROW_FUZZ_BOOK;
  if (learnt) book.recall(learnt);
  await book.learnRecords(db);
  let before = await hashOfTables(db, leave);
  for (let number = 0; number < cases; number += 1) {
    const now = await oneCase(number, book, before, counted);
    if (now !== before) {
      before = now;
      await book.learnRecords(db);
    }
    if (counted.wrong.length > 60) break;
    if (number % 1000 === 999) tell(`${number + 1} forms, ${counted.wrong.length} wrong`);
  }
  if (learnt) book.leave(learnt);
  tell(
    JSON.stringify({
      forms: cases,
      kinds: forms.length,
      accepted: counted.accepted,
      refused: counted.refused,
      brokenOff: counted.brokenOff,
      acceptedKinds: counted.byForm.size,
      seed,
    }),
  );
  tell(
    `never accepted: ${forms
      .map(({ file, name }) => `${file} ${name}`)
      .filter((key) => !counted.byForm.has(key))
      .join(", ")}`,
  );
  expect(counted.wrong).toEqual([]);
  expect(counted.accepted).toBeGreaterThan(cases / 50);
}, 36_000_000);
