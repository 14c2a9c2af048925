import { readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { Agent } from "node:https";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Role } from "@/lib/access/actor";
import { type Action, permissions, roleMay } from "@/lib/access/permissions";
import { routes } from "@/lib/access/routes";
import { serverActions } from "@/lib/access/server-actions";
import { type Database, openDatabase, registryLocation } from "@/lib/db";
import { prepareRegistry } from "@/lib/registry/open-registry";
import { nowhere, roles, subjectsOf, told } from "../app/session/what-is-told";
import { signedInAs, withMember, withOwner } from "../registry/accounts/with-accounts";
import { aCircle, type Circle, secrets } from "../registry/privacy/a-circle";
import { type Answer, ask, newFolder, type SharedSite, startShared } from "./shared-server";

/** The built app as it is opened to others, asked for every address and sent every form by a member of each role. */
const folder = newFolder();
const location = registryLocation({ ...process.env, KINROW_DATA: folder, KINROW_DATABASE: "" });
let site: SharedSite;
let circle: Circle;
let changes = 0;
const cookieOf = new Map<Role, string>();
const agent = new Agent({ keepAlive: true, maxSockets: 4 });

beforeAll(async () => {
  const db: Database = await prepareRegistry(location);
  circle = await aCircle(db);
  await withOwner(db);
  cookieOf.set("owner", (await signedInAs(db, "odalind")).get("cookie") ?? "");
  const memberships: readonly (readonly [Role, Record<string, string>])[] = [
    ["steward", { role: "steward", stewardId: circle.stewards.bert }],
    ["librarian", { role: "librarian", stewardId: circle.stewards.library }],
    ["helper", { role: "helper", growOuts: circle.growOuts.berts }],
    ["reader", { role: "reader" }],
  ];
  for (const [role, membership] of memberships)
    cookieOf.set(role, (await withMember(db, `somebody-${role}`, membership)).headers.get("cookie") ?? "");
  changes = await db.lastChange();
  await db.close();
  site = await startShared(folder);
});

afterAll(async () => {
  agent.destroy();
  await site?.end();
  rmSync(folder, { recursive: true, force: true });
});

const all = Object.entries(routes) as [keyof typeof routes, Action][];
const others = roles.filter((role) => role !== "owner");

function addressOf(route: string, held = false): string {
  const steps = Object.entries(subjectsOf(circle, route, held));
  return steps.reduce((place, [name, value]) => place.replace(new RegExp(`\\[(\\.\\.\\.)?${name}\\]`), value), route);
}

const ours = () => ({ origin: `https://127.0.0.1:${site.port}` });

/** Looks at an address, or sends nothing to it where it only takes something in. */
async function got(role: Role, address: string): Promise<Answer> {
  const headers = { accept: "text/html", cookie: cookieOf.get(role) ?? "" };
  const looked = await ask(site, address, { headers, agent });
  if (looked.status !== 405) return looked;
  return ask(site, address, { method: "POST", headers: { ...headers, ...ours() }, agent });
}

const whole = ({ headers, text }: Answer) => JSON.stringify(headers) + text;

describe("an address", () => {
  it.each(all)(
    "%s (to %s) gives each role what the tables say, and nothing that is hidden from it",
    async (route, action) => {
      const address = addressOf(route);
      const owners = await got("owner", address);
      expect([403, 500].includes(owners.status), `the owner got ${owners.status}`).toBe(false);
      for (const role of others) {
        const answer = await got(role, address);
        expect(told(role, whole(answer)), role).toEqual([]);
        if (roleMay(role, action)) {
          // Who is signed in already is led on from the sign-in page.
          // Of another's record it is said whose it is, before what stands under it is looked for.
          if (route !== "/sign-in" && !saysWhose(answer)) expect([role, answer.status]).toEqual([role, owners.status]);
        } else if (role === "public") expect(outside(answer)).toBe(address === "/" ? "/sign-in" : signInFrom(address));
        else expect([role, answer.status]).toEqual([role, 403]);
      }
    },
  );

  it.each(all.filter(([route]) => /^\/(lots|varieties|grow-outs)\/\[/.test(route)))(
    "%s of what is held back is answered (to %s) just as of what is not there",
    async (route, action) => {
      for (const role of others) {
        if (role === "public" || !roleMay(role, action)) continue;
        const [held, none] = [addressOf(route, true), addressOf(route).replace(/[0-9a-f-]{36}/, nowhere)];
        const [there, gone] = [await got(role, held), await got(role, none)];
        expect(told(role, whole(there)), role).toEqual([]);
        expect([role, there.status]).toEqual([role, 404]);
        expect([gone.status, alike(gone)]).toEqual([there.status, alike(there)]);
      }
    },
  );
});

/** What a page shows: without the frame around it, and without what is sent beside it. */
const within = (text: string) => /<main[^>]*>(.*?)<\/main>/s.exec(text)?.[1] ?? "";
const saysWhose = ({ status, text }: Answer) => status === 200 && within(text).includes("Not yours to write");

/** Steps of addresses that lead to records of Anna's, whom the steward that is signed in is not; nobody but its keepers writes of the open variety. */
const another = () => ({
  lots: circle.lots.annas,
  "grow-outs": circle.growOuts.annas,
  varieties: circle.varieties.open,
  stewards: circle.stewards.anna,
});

describe("the address of a form, typed in by hand", () => {
  const written = all.filter(
    ([route, action]) =>
      /^\/(lots|grow-outs|varieties|stewards)\/\[id\]\//.test(route) &&
      !roleMay("reader", action) &&
      action !== "history",
  );

  it.each(written)("%s of another's record says whose it is, and has no form", async (route) => {
    const [, first] = route.split("/") as [string, keyof ReturnType<typeof another>];
    const { text, status } = await got("steward", addressOf(route.replace("[id]", another()[first])));
    expect(status).toBe(200);
    const page = within(text);
    expect(page).toContain("Not yours to write");
    expect(page).toMatch(/is not yours to write: .*the owner/);
    expect(page).not.toContain("<form");
    expect(told("steward", text)).toEqual([]);
  });

  it("of one's own record has the form", async () => {
    for (const route of ["/lots/[id]/split", "/grow-outs/[id]/count", "/varieties/[id]/correct"]) {
      const page = within((await got("steward", addressOf(route))).text);
      expect(page, route).toContain("<form");
      expect(page, route).not.toContain("Not yours to write");
    }
  });
});

const signInFrom = (address: string) => `/sign-in?then=${encodeURIComponent(address)}`;

/** Where an answer leads who has not signed in. */
function outside({ status, headers }: Answer): string {
  if (status !== 307) return `stays, with ${status}`;
  const to = new URL(headers.location ?? "", `https://127.0.0.1:${site.port}`);
  return to.port === String(site.port) ? to.pathname + to.search : to.href;
}

/** An answer without what is anew in each: the nonce, and the numbers that were asked for. */
function alike({ headers, text }: Answer): string {
  const nonce = /'nonce-([^']+)'/.exec(String(headers["content-security-policy"]))?.[1] ?? "none";
  return text.replaceAll(nonce, "").replace(/[0-9a-f-]{36}/g, "");
}

interface Reference {
  readonly workers: Readonly<Record<string, unknown>>;
  readonly filename: string;
  readonly exportedName: string;
}

/** Each form of the built app: its mark, and a page that has it. */
function builtForms(): { file: string; name: string; mark: string; page: string }[] {
  const manifest = JSON.parse(readFileSync(".next/server/server-reference-manifest.json", "utf8")) as {
    node: Readonly<Record<string, Reference>>;
  };
  return Object.entries(manifest.node).map(([mark, { workers, filename, exportedName }]) => {
    const pages = Object.keys(workers)
      .map((worker) => worker.replace(/^app/, "").replace(/\/page$/, "") || "/")
      .filter((page) => page in routes);
    const page = pages.find((each) => !each.includes("[")) ?? pages[0] ?? "/";
    return { file: filename, name: exportedName, mark, page };
  });
}

const forms = builtForms().map((form) => ({ ...form, action: serverActions[form.file]?.[form.name] }));

/** Sends a form as a page does, with something in the place of all that it can ask for. */
function send(
  form: { mark: string; page: string },
  role: Role,
  headers: Record<string, string> = ours(),
  given = '[{"id":"x","key":"x","field":"x"},"$K1","$K1","$K1"]',
): Promise<Answer> {
  const sent = {
    "next-action": form.mark,
    "content-type": "multipart/form-data; boundary=x",
    accept: "text/x-component",
  };
  const cookie = cookieOf.get(role) ?? "";
  // As React writes arguments: something bound to the form, and the form itself (number 1) in each place where it can stand.
  const body = `--x\r\nContent-Disposition: form-data; name="0"\r\n\r\n${given}\r\n--x--\r\n`;
  return ask(site, addressOf(form.page), { method: "POST", headers: { ...sent, cookie, ...headers }, body, agent });
}

describe("a form", () => {
  it("of the build stands in the list of forms, every one", () => {
    expect(forms.length).toBe(Object.values(serverActions).flatMap((each) => Object.keys(each)).length);
    expect(forms.filter(({ action }) => action === undefined)).toEqual([]);
  });

  it.each(forms)("$file $name (to $action) that another's page sends is not looked at", async (form) => {
    const elsewhere: readonly Record<string, string>[] = [
      { origin: "https://a.example" },
      { origin: "null" },
      { origin: `http://127.0.0.1:${site.port + 1}` },
      { "sec-fetch-site": "cross-site" },
    ];
    for (const headers of elsewhere) {
      const answer = await send(form, "owner", headers);
      expect([headers, answer.status]).toEqual([headers, 403]);
      expect(answer.text).toContain("sent from another place");
    }
  });

  it.each(forms.filter(({ action, file }) => action !== "come-in" || file.startsWith("app/your-way-in")))(
    "$file $name (to $action) leads to the sign-in page where nobody is signed in",
    async (form) => {
      const answer = await send(form, "public");
      expect(answer.headers["x-action-redirect"]).toMatch(/^\/sign-in/);
      expect(told("public", whole(answer))).toEqual([]);
    },
  );

  it.each(forms.filter(({ action }) => action !== undefined && action !== "come-in"))(
    "$file $name (to $action) is refused to every role that may not",
    async (form) => {
      for (const role of others) {
        if (role === "public" || !form.action || permissions[form.action].includes(role)) continue;
        const answer = await send(form, role);
        expect([role, answer.status]).toEqual([role, 403]);
        expect(told(role, whole(answer)), role).toEqual([]);
      }
    },
  );
});

describe("after all that", () => {
  it("a form that breaks is in the log by its class and place, without what was sent", async () => {
    const form = forms.find(({ name }) => name === "storeSteward");
    if (!form) throw new Error("there is no such form any more");
    const answer = await send(form, "owner", ours(), JSON.stringify([secrets.contact, null]));
    expect(answer.status).toBe(500);
    expect(answer.text).not.toContain(secrets.contact);
    const lines = readFileSync(path.join(folder, "logs", "server.log"), "utf8")
      .trim()
      .split("\n");
    const told = lines.map((line) => JSON.parse(line) as { msg: string; route: string; fault?: { at: string[] } });
    const fault = told.filter(({ msg }) => msg === "fault").at(-1);
    expect(fault).toMatchObject({ level: "error", method: "POST", route: form.page, fault: { kind: "TypeError" } });
    expect(fault?.fault?.at.length).toBeGreaterThan(0);
  });

  it("the log knows every address by its pattern, and nobody and nothing of the circle", () => {
    const place = path.join(folder, "logs");
    const text = readdirSync(place)
      .map((file) => readFileSync(path.join(place, file), "utf8"))
      .join("");
    const lines = text
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line) as { route?: string; ms?: number });
    const known = new Set(lines.map(({ route }) => route));
    expect(all.filter(([route]) => !known.has(route)).map(([route]) => route)).toEqual([]);
    const private_ = [
      ...Object.values(secrets),
      ...["Anna Vell", "Bert Omm", "odalind", "somebody", "Vell", "127.0.0.1", "session_token", nowhere],
      ...[circle.stewards, circle.varieties, circle.lots, circle.growOuts, circle.transfers].flatMap(Object.values),
    ];
    expect(private_.filter((word) => text.includes(word))).toEqual([]);
  });

  it("nothing was written, and each file of the data folder is its owner's alone", async () => {
    agent.destroy();
    await site.end();
    const db = await openDatabase(location);
    expect(await db.lastChange()).toBe(changes);
    await db.close();
    const open = readdirSync(folder, { recursive: true, encoding: "utf8" }).flatMap((name) => {
      const found = statSync(path.join(folder, name));
      const rights = found.mode & 0o777;
      return rights === (found.isDirectory() ? 0o700 : 0o600) ? [] : [`${name} ${rights.toString(8)}`];
    });
    expect(open).toEqual([]);
  });
});
