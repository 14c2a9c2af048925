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
import { Drawn, fuzzWanted, tell, tellKinds } from "./drawn";
import { FieldBook } from "./field-book";
import { layGround } from "./sound/ground";
import { recipeOf, sentSoundly } from "./sound/sent-soundly";
import { Here } from "./sound/sound-form";
import { debts, hashOfTables, undone, wrongAfter, wrongInFigures, wrongInRoundTrip } from "./statement";
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
  await layGround(db);
});

afterAll(async () => {
  await db.close();
  rmSync(folder, { recursive: true, force: true });
});

interface Tried {
  accepted: number;
  refused: number;
}

interface Counted {
  brokenOff: number;
  readonly byForm: Map<string, Tried>;
  readonly wrong: string[];
}

/** What a phone sent is never as if it had not come (enterHarvestOfField leaves it set aside). */
const leave = { tables: ["Change", "ChangeSet"], columns: ["revision"] };
const leaveSent = { ...leave, tables: [...leave.tables, "FieldRecord"] };

/** What they did stays done, so they are sent about what was entered for it alone: the rest of the ground stands for all that follow. */
const forGood = new Set(["forgetPerson", "erasePicture"]);
const takenBackAgain = forms.filter(({ name }) => !forGood.has(name));
const takesBack = new Set(["takeBack", "takeLinesBack"]);
/** It only looks. */
const asksOnly = new Set(["takenNumbers"]);

interface Sending {
  readonly form: (typeof forms)[number];
  readonly deed: Deed;
  readonly all: readonly unknown[];
  readonly shown: string;
  /** something that no page of ours would send: it may be broken off, and has to write nothing */
  readonly forged: boolean;
  /** filled in as it is right, with nothing spoiled */
  readonly sound: boolean;
}

/**
 * What is sent. Every other form is one that is filled in as it is right, kind by kind: in the first round of kinds and every third as it is, else with one
 * thing spoiled. The rest is filled with what the form's own refusals named, values of the registry, and odd ones.
 */
async function sending(number: number, book: FieldBook): Promise<Sending> {
  const drawn = new Drawn(seed * 100_003 + number);
  const turn = number % 2 === 0 ? number / 2 : null;
  const form = turn === null ? drawn.one(takenBackAgain) : forms[turn % forms.length];
  if (!form) throw new Error("there is no such form");
  const key = `${form.file} ${form.name}`;
  const module = (await modules[`../../../${form.file}`]?.()) as Readonly<Record<string, Deed>> | undefined;
  const deed = module?.[form.name];
  if (!deed) throw new Error(`${key} is not there`);
  if (turn === null) return { form, deed, sound: false, ...book.argumentsOf(key, takenBy(deed), drawn) };
  const sound = Math.floor(turn / forms.length) % 3 === 0;
  const here = new Here(db, drawn, number);
  const spoils = sound ? null : { ids: forGood.has(form.name) ? [""] : book.known, drawn };
  const sent = await sentSoundly(recipeOf(form.file, form.name), here, takenBy(deed), spoils);
  return { form, deed, sound, forged: false, ...sent };
}

async function oneCase(number: number, book: FieldBook, before: string, counted: Counted): Promise<string> {
  const already = await db.lastChange();
  const { form, deed, all: given, shown, forged, sound } = await sending(number, book);
  const { name } = form;
  const key = `${form.file} ${name}`;
  asked.fields = new Set();
  const last = await db.lastChange();
  // What a form wants to find may have been put there just now.
  const left = name === "enterHarvestOfField" ? leaveSent : leave;
  const stood = last === already && left === leave ? before : await hashOfTables(db, left);
  const owed = await debts(db);
  const wrong: string[] = [];
  let answer: unknown = null;
  try {
    answer = await deed(...given);
  } catch (error) {
    if (forged) counted.brokenOff += 1;
    else if (!(error instanceof Interrupt))
      wrong.push(`broke: ${error instanceof Error ? error.stack : String(error)}`);
    else if (error.status >= 500) wrong.push(`ended with ${error.status}`);
  }
  if (!sound) book.heard(key, asked.fields, answer, given);
  const wrote = (await db.lastChange()) !== last;
  const tried = counted.byForm.get(key) ?? { accepted: 0, refused: 0 };
  counted.byForm.set(key, tried);
  if (wrote || (asksOnly.has(name) && wrong.length === 0)) tried.accepted += 1;
  else tried.refused += 1;
  if (wrote) {
    wrong.push(...(await wrongAfter(db)), ...(await wrongInFigures(db)));
    wrong.push(...(await debts(db)).filter((each) => !owed.includes(each)).map((each) => `new debt: ${each}`));
    if (number % 7 === 0) wrong.push(...(await wrongInRoundTrip(db, empty)));
    const set = await db.read.changeSet.findFirstOrThrow({ orderBy: { number: "desc" } });
    const back = await undone(db, set.id);
    // A name or picture that is erased is forgotten for good, and what was taken back is not taken back again.
    if (set.kind !== "undo" && !forGood.has(name)) wrong.push(...back);
  } else if (sound && !asksOnly.has(name)) tell(`${key} was refused: ${JSON.stringify(answer)}\n${shown}`);
  const after = await hashOfTables(db, left);
  if (after !== stood && (!wrote || wrong.length > 0))
    wrong.push(wrote ? "cannot be taken back whole" : "was refused and wrote all the same");
  else if (after !== stood && !forGood.has(name) && !takesBack.has(name))
    wrong.push("is not as before after it was taken back");
  counted.wrong.push(...wrong.map((each) => `case ${number} ${key}: ${each}\n${shown}`));
  for (const each of wrong) tell(`case ${number} ${key}: ${each}\n${shown}`);
  return left === leave ? after : hashOfTables(db, leave);
}

test(`${cases} posted forms (seed ${seed}) are taken in right, or refused and write nothing`, async () => {
  const counted: Counted = { brokenOff: 0, byForm: new Map(), wrong: [] };
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
  const kinds = forms.map(({ file, name }) => `${file} ${name}`);
  const tried = kinds.map((key) => counted.byForm.get(key) ?? { accepted: 0, refused: 0 });
  const sum = (of: keyof Tried) => tried.reduce((all, each) => all + each[of], 0);
  tellKinds(counted.byForm);
  tell(
    JSON.stringify({
      forms: cases,
      kinds: kinds.length,
      accepted: sum("accepted"),
      refused: sum("refused"),
      brokenOff: counted.brokenOff,
      acceptedKinds: tried.filter((each) => each.accepted > 0).length,
      seed,
    }),
  );
  expect(counted.wrong).toEqual([]);
  // In a first round each kind is sent as it is right.
  if (cases >= 2 * kinds.length) expect(kinds.filter((_, at) => tried[at]?.accepted === 0)).toEqual([]);
}, 36_000_000);
