import { mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import type { Actor, Role } from "@/lib/access/actor";
import { permissions, roleMay } from "@/lib/access/permissions";
import { routes } from "@/lib/access/routes";
import { serverActions } from "@/lib/access/server-actions";
import type { Database } from "@/lib/db";
import { ownRegistry } from "@/lib/registry/open-registry";
import { aCircle, actor, type Circle, secrets } from "../../registry/privacy/a-circle";
import { answerGot, type Got, Interrupt, pageGot } from "./walk";
import { roles, subjectsOf, told } from "./what-is-told";

const acting: { who: Actor | null } = { who: null };

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
    usePathname: () => "/",
    useRouter: () => ({ push: () => {}, replace: () => {}, refresh: () => {} }),
    useSearchParams: () => new URLSearchParams(),
  };
});
// Who is signed in is said here; who may do what, and what is seen, is asked of the real thing.
vi.mock("@/app/_session/signed-in", () => ({
  signedIn: async () => (acting.who?.role === "public" ? null : { actor: acting.who }),
  signedInOrAsked: async () => {
    if (acting.who?.role === "public") throw new Interrupt(307, "/sign-in");
    return { actor: acting.who };
  },
}));

let folder = "";
let db: Database;
let circle: Circle;
let whoActs: Readonly<Record<Role, Actor>>;

beforeAll(async () => {
  folder = mkdtempSync(path.join(os.tmpdir(), "kinrow-walk-"));
  vi.stubEnv("KINROW_DATA", folder);
  db = await ownRegistry();
  circle = await aCircle(db);
  whoActs = {
    owner: actor("owner"),
    steward: actor("steward", circle.stewards.bert),
    librarian: actor("librarian", circle.stewards.library),
    helper: actor("helper", null, [circle.growOuts.berts]),
    reader: actor("reader"),
    public: actor("public"),
  };
});

afterAll(async () => {
  await db.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Asks of somebody who has not signed in, as the first look at every request (proxy.ts) leaves it to the page itself. */
const notByPermission = new Set(
  Object.entries(routes).flatMap(([route, action]) =>
    action === "come-in" || /^\/(members|your-way-in|safe-keeping|calculations)/.test(route) ? [route] : [],
  ),
);

const walked = Object.entries(routes).filter(([route]) => !notByPermission.has(route));

const pages = import.meta.glob("../../../app/**/{page.tsx,route.ts}");

async function ask(route: string, role: Role, held = false, search: Record<string, string> = {}): Promise<Got> {
  acting.who = whoActs[role];
  const at = `../../../app${route === "/" ? "" : route}`;
  const params = subjectsOf(circle, route, held);
  const page = pages[`${at}/page.tsx`];
  if (page) return pageGot((await page()) as Parameters<typeof pageGot>[0], params, search);
  const module = (await pages[`${at}/route.ts`]?.()) as
    | { GET?: Parameters<typeof answerGot>[0]; POST?: Parameters<typeof answerGot>[0] }
    | undefined;
  const handler = module?.GET ?? module?.POST;
  if (!handler) return { status: 405, body: "" };
  return answerGot(handler, `${route}?${new URLSearchParams(search)}`, params);
}

test.each(walked)(
  "%s (to %s): each role gets what the tables say, and nothing that is hidden from it",
  async (route, action) => {
    const owners = await ask(route, "owner");
    expect(owners.status, "the owner").not.toBe(403);
    for (const role of roles.filter((each) => each !== "owner")) {
      const { status, body } = await ask(route, role);
      if (role === "public") expect([status, body], role).toEqual([307, "/sign-in"]);
      else if (!roleMay(role, action)) expect(status, role).toBe(403);
      else expect(status, role).toBe(owners.status);
      expect(told(role, body), role).toEqual([]);
    }
  },
);

test.each(walked.filter(([route]) => route.includes("[")))(
  "%s of a variety that is held back answers (to %s) like one that is not there",
  async (route, action) => {
    for (const role of roles) {
      if (role === "owner" || role === "public" || !roleMay(role, action)) continue;
      const { status, body } = await ask(route, role, true);
      expect(told(role, body), role).toEqual([]);
      if (/^\/(lots|varieties|grow-outs)\/\[/.test(route)) expect(status, `${role} ${body.slice(0, 200)}`).toBe(404);
    }
  },
);

test("a search finds nothing that is hidden, by no word of it", async () => {
  for (const q of [secrets.held, secrets.heldLot, secrets.contact, "orsina", "quillgate"]) {
    for (const route of ["/search", "/search/quick", "/lots", "/stewards"]) {
      for (const role of ["steward", "reader"] as const) {
        const { body } = await ask(route, role, false, { q, find: q });
        // What was asked for stands in the field again, once, and in the sentence that nothing was found.
        const echoed = body.replaceAll(q, "");
        expect(told(role, echoed), `${role} asks ${route} for ${q}`).toEqual([]);
        expect(echoed.includes(circle.varieties.held), `${role} ${route} ${q}`).toBe(false);
      }
    }
  }
});

test("the owner finds what is private, so that the walk looks in the right places", async () => {
  const bodies: string[] = [];
  for (const route of ["/lots", "/varieties", "/grow-outs", "/sharing/[id]", "/sharing/given", "/lots/[id]"] as const)
    bodies.push((await ask(route, "owner")).body, (await ask(route, "owner", true)).body);
  const all = bodies.join("\n");
  for (const name of ["borrower", "borrowerInWords", "held", "heldLot", "heldGrowOut"] as const)
    expect(all.includes(secrets[name]), name).toBe(true);
});

const actions = import.meta.glob("../../../app/**/*.ts");
const sent = Object.entries(serverActions).flatMap(([file, functions]) =>
  Object.entries(functions).flatMap(([name, action]) =>
    action === "come-in" || /^app\/(members|your-way-in|_session)/.test(file) ? [] : [[file, name, action] as const],
  ),
);

test.each(sent)("the form %s %s (to %s) goes no further for who may not", async (file, name, action) => {
  const module = (await actions[`../../../${file}`]?.()) as Record<string, (...given: unknown[]) => Promise<unknown>>;
  const deed = module[name];
  expect(deed).toBeTypeOf("function");
  const written = await db.lastChange();
  for (const role of roles.filter((each) => !permissions[action].includes(each))) {
    acting.who = whoActs[role];
    const answers = new Set<string>();
    for (const bound of [[], ["x"], ["x", "y"], [{ id: "x", key: "x", field: "x" }]]) {
      const answer = await deed?.(...bound, {}, new FormData()).then(
        () => "went on",
        (error: unknown) => (error instanceof Interrupt ? String(error.status) : "broke"),
      );
      if (answer) answers.add(answer);
    }
    expect([...answers], role).toContain(role === "public" ? "307" : "403");
    expect([...answers], role).not.toContain("went on");
  }
  expect(await db.lastChange()).toBe(written);
});
