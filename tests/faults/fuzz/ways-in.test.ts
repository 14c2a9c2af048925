import { randomBytes, scryptSync } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import type { Database } from "@/lib/db";
import { receiveUpload } from "@/lib/exchange/bring-in/uploads";
import { signIn } from "@/lib/registry/accounts/sign-in";
import { ownRegistry } from "@/lib/registry/open-registry";
import { Interrupt } from "../../app/session/walk";
import { small } from "../../exchange/notebook-folder/small-notebook";
import { browser, withMember, withOwner, words } from "../../registry/accounts/with-accounts";
import { csv } from "../../registry/notebook/further/fill-every-table";
import { aCircle, type Circle } from "../../registry/privacy/a-circle";
import { Drawn, fuzzWanted, tell, tellKinds } from "./drawn";
import { mangled } from "./mangled-folder";
import { accounts, type Code, type Person, wrongWaysIn } from "./people";
import { postedFiles } from "./posted";
import { type Known, type Sent, sentByPeople } from "./sent-by-people";
import { hashOfTables, undone, wrongAfter } from "./statement";
import { type Deed, type Form, formsOfPeople, takenBy } from "./which-forms";

/** The request of now, as the server would have taken it in; and what it was answered with. */
const request: { headers: Headers; cookie: string; set: [string, string][]; deleted: number; backups: number } = {
  headers: new Headers(),
  cookie: "",
  set: [],
  deleted: 0,
  backups: 0,
};

vi.mock("server-only", () => ({}));
vi.mock("next/cache", () => ({ revalidatePath: () => {} }));
vi.mock("next/headers", () => ({
  headers: async () => request.headers,
  cookies: async () => ({
    get: (name: string) =>
      name === "kinrow-demonstration" && request.cookie !== "" ? { value: request.cookie } : undefined,
    set: (name: string, value: string) => request.set.push([name, value]),
    delete: () => {
      request.deleted += 1;
    },
  }),
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
// The same hash at a small cost: thousands are made here, and what they cost is tried elsewhere.
vi.mock("@/lib/registry/accounts/passphrase", async (original) => ({
  ...(await original<typeof import("@/lib/registry/accounts/passphrase")>()),
  hashPassphrase: async (passphrase: string) => {
    const salt = new Uint8Array(randomBytes(16));
    const key = scryptSync(passphrase.normalize("NFKC"), salt, 32, { N: 16, r: 8, p: 2 });
    return ["scrypt", 16, 8, 2, Buffer.from(salt).toString("base64url"), key.toString("base64url")].join(":");
  },
}));
// A program of its own, and a circle that takes long to fill: that they are asked for is enough.
vi.mock("@/lib/registry/safe-keeping/run-backup", () => ({
  runBackup: async () => {
    request.backups += 1;
    return { made: true };
  },
}));
vi.mock("@/seed-scenario/load-scenario", () => ({ loadScenario: async () => {} }));

const { cases: all, seed } = fuzzWanted();
const cases = Math.ceil(all / 20);
const modules = import.meta.glob("../../../app/**/*.ts");
const site = { origin: "https://patch.example:4707", from: "203.0.113.1" };
/** Tries are counted, and who may come in is held beside the history. */
const leave = { tables: ["Change", "ChangeSet", "RateLimit"], columns: ["revision"] };

let folder = "";
let db: Database;
let circle: Circle;
const people: Person[] = [];
const codes: Code[] = [];
const secrets = new Set<string>();

const cookieOf = (headers: Headers) => headers.get("cookie") ?? "";

async function userIdOf(username: string): Promise<string> {
  return (await db.read.user.findUniqueOrThrow({ where: { username } })).id;
}

beforeAll(async () => {
  folder = mkdtempSync(path.join(os.tmpdir(), "kinrow-ways-in-"));
  vi.stubEnv("KINROW_DATA", folder);
  vi.stubEnv("KINROW_SHARED", "yes");
  vi.stubEnv("KINROW_ADDRESS", "patch.example:4707");
  db = await ownRegistry();
  circle = await aCircle(db);
  await withOwner(db);
  people.push({ userId: await userIdOf("odalind"), passphrase: words, cookie: "" });
  const memberships: readonly Record<string, string>[] = [
    { role: "owner" },
    { role: "steward", stewardId: circle.stewards.bert },
    { role: "librarian", stewardId: circle.stewards.library },
    { role: "helper", growOuts: circle.growOuts.berts },
    { role: "reader" },
  ];
  for (const [place, membership] of memberships.entries()) {
    const { headers, member } = await withMember(db, `first-${place}`, membership);
    people.push({ userId: member.userId, passphrase: words, cookie: cookieOf(headers) });
    await db.write.passkey.create({
      data: {
        id: `passkey-${place}`,
        publicKey: "x",
        userId: member.userId,
        credentialID: `c${place}`,
        counter: 0,
        deviceType: "x",
        backedUp: false,
      },
    });
  }
});

afterAll(async () => {
  vi.unstubAllEnvs();
  await db.close();
  rmSync(folder, { recursive: true, force: true });
});

interface Stand {
  readonly hash: string;
  readonly sessions: ReadonlyMap<string, string>;
  readonly passkeys: ReadonlyMap<string, string>;
}

async function stand(): Promise<Stand> {
  const owners = (rows: readonly { id: string; userId: string }[]) => new Map(rows.map((row) => [row.id, row.userId]));
  const [hash, sessions, passkeys] = [
    await hashOfTables(db, leave),
    await db.read.session.findMany({ select: { id: true, userId: true } }),
    await db.read.passkey.findMany({ select: { id: true, userId: true } }),
  ];
  return { hash, sessions: owners(sessions), passkeys: owners(passkeys) };
}

/** Whose browser it is, by the session that its cookie names and the tables have; nobody where there is none. */
async function roleOf(person: Person | null): Promise<{ role: string; userId: string } | null> {
  const token = /session_token=([^;]+)/.exec(person?.cookie ?? "")?.[1];
  if (!token) return null;
  const [found] = await db.read.$queryRawUnsafe<{ role: string; userId: string }[]>(
    `SELECT m."role", m."userId" FROM "Session" s JOIN "Member" m ON m."userId" = s."userId" WHERE s."token" = ? AND m."endedAt" IS NULL`,
    decodeURIComponent(token).split(".")[0],
  );
  return found ?? null;
}

/** What is wrong with what a form did, by who sent it and what they knew. */
async function wrongDone(
  form: Form,
  who: Awaited<ReturnType<typeof roleOf>>,
  sent: Sent,
  before: Stand,
  open: readonly OpenCode[],
): Promise<string[]> {
  const wrong: string[] = [];
  const after = await stand();
  const mayNot = form.action !== "come-in" && who?.role !== "owner";
  if (mayNot && (after.hash !== before.hash || request.backups > 0))
    wrong.push(`${who?.role ?? "nobody"} did what only an owner may`);
  for (const kind of ["sessions", "passkeys"] as const)
    for (const [id, userId] of before[kind]) {
      if (after[kind].has(id) || userId === who?.userId || who?.role === "owner") continue;
      const renewed =
        form.name === "makePassphrase" &&
        [...after.sessions].some(([each, of]) => of === userId && !before.sessions.has(each));
      if (!renewed && form.name !== "signInHere") wrong.push(`took another's ${kind} away`);
    }
  for (const [id, userId] of after.sessions) {
    if (before.sessions.has(id)) continue;
    const person = people.find((each) => each.userId === userId);
    const code = open.find((each) => each.code === sent.code);
    if (form.name === "signInHere") {
      if (person?.passphrase.normalize("NFKC") !== sent.typed.normalize("NFKC"))
        wrong.push("came in by another passphrase");
    } else if (form.name === "newPassphrase") {
      if (who?.userId !== userId || sent.form.get("now") !== person?.passphrase)
        wrong.push("changed a passphrase without the old one");
    } else if (form.name === "makeAccount") {
      if (person || !code || code.forUserId !== null) wrong.push("made an account without an invitation");
    } else if (form.name === "makePassphrase") {
      if (code?.forUserId !== userId) wrong.push("set a passphrase without a way to it");
    } else wrong.push("signed somebody in");
    keep(userId, sent.typed);
  }
  return wrong;
}

/** From now on this is what they sign in with, and what their browser has. */
function keep(userId: string, passphrase: string): void {
  const cookie = request.set.map(([name, value]) => `${name}=${encodeURIComponent(value)}`).join("; ");
  const known = people.find((each) => each.userId === userId);
  if (known) Object.assign(known, { passphrase, cookie });
  else people.push({ userId, passphrase, cookie });
}

interface OpenCode extends Code {
  readonly forUserId: string | null;
}

async function openCodes(): Promise<OpenCode[]> {
  const rows = await db.read.invitation.findMany({ where: { usedAt: null, withdrawnAt: null } });
  return codes.flatMap((code) => {
    const row = rows.find((each) => each.id === code.invitationId);
    return row ? [{ ...code, forUserId: row.forUserId }] : [];
  });
}

/** Somebody comes in with what they chose, where their way in was not ended, and not where it was. */
async function signsIn(person: Person): Promise<string[]> {
  const row = (await accounts(db)).find((each) => each.id === person.userId);
  if (!row) return ["an account is gone"];
  await db.write.rateLimit.deleteMany({});
  const came = await signIn(db, site, new Headers(), { signInName: row.username, passphrase: person.passphrase });
  if (came.ok) person.cookie = cookieOf(browser(came.value));
  if (came.ok === (row.endedAt === null)) return [];
  return [`${row.username} ${came.ok ? "comes in after the end" : `does not come in: ${came.refusals[0]?.sentence}`}`];
}

async function everybodySignsIn(): Promise<string[]> {
  const wrong = (await accounts(db)).filter((row) => !people.some((each) => each.userId === row.id));
  const each: string[] = [];
  for (const person of people) each.push(...(await signsIn(person)));
  return [...wrong.map((row) => `${row.username} came from nowhere`), ...each];
}

interface Counted {
  did: number;
  nothing: number;
  brokenOff: number;
  readonly byForm: Map<string, { accepted: number; refused: number }>;
  readonly wrong: string[];
}

async function known(drawn: Drawn, form: Form, person: Person | null): Promise<Known> {
  const rows = await accounts(db);
  const [members, invitations, sessions, passkeys] = [
    await db.read.member.findMany({
      where: form.name === "openWayIn" && drawn.chance(0.8) ? { endedAt: { not: null } } : {},
      select: { id: true },
    }),
    await db.read.invitation.findMany({ where: { usedAt: null, withdrawnAt: null }, select: { id: true } }),
    await db.read.session.findMany({ select: { id: true } }),
    await db.read.passkey.findMany({
      where: person && drawn.chance(0.8) ? { userId: person.userId } : {},
      select: { id: true },
    }),
  ];
  // A code that was used or taken back is tried, too.
  const open = await openCodes();
  const opens = open.filter(({ forUserId }) => (forUserId === null) === (form.name === "makeAccount"));
  const fitting = /Invitation/.test(form.name)
    ? invitations
    : /Device/.test(form.name)
      ? sessions
      : /asskey/.test(form.name)
        ? passkeys
        : members;
  const ids = (drawn.chance(0.9) && fitting.length > 0 ? fitting : [...members, ...invitations, ...sessions]).map(
    ({ id }) => id,
  );
  let upload = "none";
  if (form.name === "bringIn") {
    const notebook = drawn.chance(0.5) ? csv(small) : mangled(csv(small), drawn);
    const { headers, body } = postedFiles(notebook, drawn);
    const received = await receiveUpload(folder, headers, body);
    if (received.ok) upload = received.value;
  }
  const names = people.map((each) => rows.find((row) => row.id === each.userId)?.username ?? "");
  return {
    people,
    names,
    codes: opens.length > 0 && drawn.chance(0.7) ? opens : codes,
    ids,
    stewards: Object.values(circle.stewards),
    growOuts: Object.values(circle.growOuts),
    upload,
  };
}

function heard(answer: unknown): void {
  const shown = (answer as { shown?: { link?: string; code?: string } | null } | null)?.shown;
  const code = shown?.link?.split("/").at(-1);
  if (code && shown?.code) {
    secrets.add(code);
    secrets.add(shown.code);
  }
}

async function oneCase(number: number, counted: Counted): Promise<void> {
  const drawn = new Drawn(seed * 100_003 + 7_000_000 + number);
  // Every other one is of the next kind, so that each comes in its turn.
  const form = number % 2 === 0 ? formsOfPeople[(number / 2) % formsOfPeople.length] : drawn.one(formsOfPeople);
  if (!form) throw new Error("there is no such form");
  const key = `${form.file} ${form.name}`;
  const module = (await modules[`../../../${form.file}`]?.()) as Readonly<Record<string, Deed>>;
  const deed = module[form.name];
  if (!deed) throw new Error(`${key} is not there`);
  const wrong: string[] = [];
  const ownersDeed = form.action !== "come-in" && drawn.chance(0.6);
  const person = ownersDeed ? (people[drawn.whole(2)] ?? null) : drawn.chance(0.15) ? null : drawn.one(people);
  if (person && drawn.chance(0.8) && (await roleOf(person)) === null) wrong.push(...(await signsIn(person)));
  const cookie = drawn.chance(0.04) ? (person?.cookie ?? "").replace(/[a-m]/, "n") : (person?.cookie ?? "");
  const from = drawn.chance(0.1) ? "192.0.2.9" : `2001:db8::${number.toString(16)}`;
  request.headers = new Headers({ cookie, "x-forwarded-host": "patch.example:4707", "x-forwarded-for": from });
  request.cookie = drawn.chance(0.03) ? "yes" : "";
  request.set = [];
  request.deleted = 0;
  request.backups = 0;
  const sent = sentByPeople(
    { name: form.name, takes: takenBy(deed) },
    person,
    await known(drawn, form, person),
    number,
    drawn,
  );
  if (sent.typed.startsWith("a heap")) secrets.add(sent.typed);
  const [before, open, who, last] = [await stand(), await openCodes(), await roleOf(person), await db.lastChange()];
  let answer: unknown = null;
  try {
    answer = await deed(...sent.all);
  } catch (error) {
    if (sent.forged) counted.brokenOff += 1;
    else if (!(error instanceof Interrupt))
      wrong.push(`broke: ${error instanceof Error ? error.stack : String(error)}`);
    else if (error.status >= 500) wrong.push(`ended with ${error.status}`);
  }
  heard(answer);
  const told = JSON.stringify({ ...(answer as object), shown: null });
  if ([...secrets].some((secret) => told.includes(secret))) wrong.push("answered with a secret");
  wrong.push(...(await wrongDone(form, cookie === person?.cookie ? who : null, sent, before, open)));
  const wrote = (await db.lastChange()) !== last;
  if (wrote) {
    const set = await db.read.changeSet.findFirstOrThrow({ orderBy: { number: "desc" } });
    await newCode(answer);
    wrong.push(...(await wrongAfter(db)));
    if (form.name === "bringIn") {
      wrong.push(...(await undone(db, set.id)));
      if ((await stand()).hash !== before.hash) wrong.push("is not as before after it was taken back");
    }
  }
  const did =
    wrote ||
    request.set.length > 0 ||
    request.deleted > 0 ||
    request.backups > 0 ||
    (await stand()).hash !== before.hash;
  const tried = counted.byForm.get(key) ?? { accepted: 0, refused: 0 };
  tried[did ? "accepted" : "refused"] += 1;
  counted.byForm.set(key, tried);
  if (did) counted.did += 1;
  else counted.nothing += 1;
  if (did || number % 20 === 19) wrong.push(...(await wrongWaysIn(db, [...secrets])));
  if (number % 40 === 39) wrong.push(...(await everybodySignsIn()));
  for (const each of wrong) {
    const line = `case ${number} ${key} by ${who?.role ?? "nobody"}: ${each}\n${JSON.stringify([...sent.form.entries()]).slice(0, 900)}`;
    counted.wrong.push(line);
    tell(line);
  }
}

/** The invitation that a code was told for is the newest. */
async function newCode(answer: unknown): Promise<void> {
  const code = (answer as { shown?: { link?: string } | null } | null)?.shown?.link?.split("/").at(-1);
  if (!code) return;
  const newest = await db.read.invitation.findFirstOrThrow({ orderBy: { id: "desc" } });
  codes.push({ code, invitationId: newest.id });
}

test(`${cases} forms about who may come in (seed ${seed}) do what their sender may, and tell no secret`, async () => {
  const counted: Counted = { did: 0, nothing: 0, brokenOff: 0, byForm: new Map(), wrong: [] };
  counted.wrong.push(...(await everybodySignsIn()));
  for (let number = 0; number < cases; number += 1) {
    await oneCase(number, counted);
    if (counted.wrong.length > 30) break;
  }
  counted.wrong.push(...(await everybodySignsIn()));
  const { did, nothing, brokenOff, byForm } = counted;
  tellKinds(byForm);
  const doneKinds = [...byForm.values()].filter((each) => each.accepted > 0).length;
  tell(JSON.stringify({ waysIn: cases, kinds: formsOfPeople.length, did, nothing, brokenOff, doneKinds, seed }));
  expect(counted.wrong).toEqual([]);
  expect(did).toBeGreaterThan(cases / 20);
}, 36_000_000);
