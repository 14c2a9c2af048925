import { mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import type { ReactNode } from "react";
import { uuidv7 } from "uuidv7";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { Offering } from "@/components/ui/offered";
import { type Actor, ownerHere } from "@/lib/access/actor";
import { closedTo } from "@/lib/access/closed-to";
import { roleMay } from "@/lib/access/permissions";
import { actionOfPath, routes } from "@/lib/access/routes";
import type { Database } from "@/lib/db";
import { perform } from "@/lib/registry/change-set/perform";
import { ownRegistry } from "@/lib/registry/open-registry";
import { pagesOfRecords } from "@/lib/registry/ownership/offered-here";
import { accepted } from "@/lib/science/outcome";
import { granted } from "@/tests/setup/registry";
import { aCircle, actor, type Circle } from "../../registry/privacy/a-circle";
import { Interrupt, pageGot } from "./walk";
import { nowhere } from "./what-is-told";

const acting: { who: Actor | null; at: string } = { who: null, at: "/" };

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
    usePathname: () => acting.at.split("?")[0],
    useRouter: () => ({ push: () => {}, replace: () => {}, refresh: () => {} }),
    useSearchParams: () => new URLSearchParams(acting.at.split("?")[1] ?? ""),
  };
});
vi.mock("@/app/_session/signed-in", () => ({
  signedIn: async () => ({ actor: acting.who }),
  signedInOrAsked: async () => ({ actor: acting.who }),
}));

let folder = "";
let db: Database;
let circle: Circle;
let testId = "";
let photoId = "";

beforeAll(async () => {
  folder = mkdtempSync(path.join(os.tmpdir(), "kinrow-offers-"));
  vi.stubEnv("KINROW_DATA", folder);
  db = await ownRegistry();
  circle = await aCircle(db);
  const owner = ownerHere();
  const operation = { action: "settings" as const, title: "A test and a picture of Anna's" };
  const made = await perform(db, owner, operation, async (change) => {
    [testId, photoId] = [uuidv7(), uuidv7()];
    const replicateId = uuidv7();
    const on = { on: "2026-11-20", onFirst: "2026-11-20", onLast: "2026-11-20" };
    await change.create("GerminationTest", { id: testId, name: "A1", nameKey: "a1", lotId: circle.lots.annas, ...on });
    await change.create("TestReplicate", { id: replicateId, testId, name: "1", sown: 25 });
    await change.create("TestCount", { id: uuidv7(), replicateId, day: 3, normal: 4 });
    const file = { hash: "0".repeat(64), width: 4, height: 3, bytes: 100 };
    await change.create("Photo", { id: photoId, lotId: circle.lots.annas, ...file });
    return accepted(null);
  });
  granted(made);
});

afterAll(async () => {
  await db.close();
  rmSync(folder, { recursive: true, force: true });
});

const modules = import.meta.glob("../../../app/**/{page,layout}.tsx");

type Layout = (props: { params: Promise<object>; children: ReactNode }) => Promise<ReactNode>;
type Page = (props: object) => Promise<ReactNode>;

async function drawnBy<T>(file: string): Promise<T> {
  const module = await modules[`../../../app${file}`]?.();
  if (!module) throw new Error(`app${file} is not there`);
  return (module as { default: T }).default;
}

/** What a page offers somebody that a reader could not do: addresses, with the record that they name as [id] and others by what they are. */
async function offered(who: Actor, route: string, id: string): Promise<string[]> {
  Object.assign(acting, { who, at: route.replace("[id]", id) });
  const top = route.split("/").slice(0, 3).join("/");
  const Page = await drawnBy<Page>(`${route}/page.tsx`);
  const Layout = modules[`../../../app${top}/layout.tsx`] ? await drawnBy<Layout>(`${top}/layout.tsx`) : null;
  const params = Promise.resolve({ id });
  const given = { params, searchParams: Promise.resolve({}) };
  const drawn = async () => (
    <Offering closed={closedTo(who.role)}>
      {Layout ? await Layout({ params, children: await Page(given) }) : await Page(given)}
    </Offering>
  );
  const { status, body } = await pageGot({ default: drawn }, { id });
  expect(status, `${who.role} ${route}`).toBe(200);
  const ways = [...body.matchAll(/ href="([^"#]+)/g)].map((found) => (found[1] ?? "").replaceAll("&amp;", "&"));
  const writing = ways.filter((way) => {
    const action = actionOfPath(way);
    return action !== null && !roleMay("reader", action) && action !== "history";
  });
  const named = Object.entries({ annas: circle.lots.annas, berts: circle.lots.berts, shared: circle.varieties.shared });
  const shown = (way: string) =>
    named.reduce((text, [name, of]) => text.replaceAll(of, of === id ? "[id]" : name), way).replaceAll(id, "[id]");
  const deeds = [/aria-label="[^"]*Correct it"/, /came up later|Count it again/, /Write the answer down/].filter(
    (sign) => sign.test(body),
  );
  return [...new Set([...writing.map(shown), ...deeds.map(String)])].sort();
}

const ofRecords = Object.entries(routes).flatMap(([route, action]) => {
  const page = pagesOfRecords.find((each) => route === each || route.startsWith(`${each}/`));
  const alone = page !== undefined && !route.slice(page.length).includes("[");
  return alone && action === "read" && modules[`../../../app${route}/page.tsx`] ? [[route, page] as const] : [];
});

const idOf = (page: string): string =>
  ({
    "/lots/[id]": circle.lots.annas,
    "/grow-outs/[id]": circle.growOuts.annas,
    "/varieties/[id]": circle.varieties.open,
    "/tests/[id]": testId,
    "/pictures/[id]": photoId,
  })[page] ?? "";

/** What is one's own wherever one stands: a lot, a grow-out, a strain, a word as a holder; and traits of a variety that one keeps, too. */
const ownAnywhere =
  /^\/(lots\/new|grow-outs\/new|type-in\/|varieties\/\[id\]\/add\/(strain|word)\b|varieties\/shared\/traits\/new)/;

test.each(ofRecords)("%s of another's record offers nothing that would be refused", async (route, page) => {
  const id = idOf(page);
  expect(await offered(actor("reader"), route, id), "a reader").toEqual([]);
  const bert = actor("steward", circle.stewards.bert);
  expect(
    (await offered(bert, route, id)).filter((way) => !ownAnywhere.test(way)),
    "a steward",
  ).toEqual([]);
  const helper = actor("helper", null, [circle.growOuts.berts]);
  expect(await offered(helper, route, id), "a helper").toEqual([]);
});

test("whose the record is finds everything there", async () => {
  const anna = actor("steward", circle.stewards.anna);
  const lot = await offered(anna, "/lots/[id]", circle.lots.annas);
  for (const way of ["/lots/[id]/give", "/lots/[id]/split", "/tests/new?lot=[id]", "/lots/[id]/correct"])
    expect(lot).toContain(way);
  expect(lot.some((way) => way.startsWith("/pictures/new?"))).toBe(true);
  const growOut = await offered(anna, "/grow-outs/[id]", circle.growOuts.annas);
  for (const way of ["harvest", "rogue", "neighbours/new"]) expect(growOut).toContain(`/grow-outs/[id]/${way}`);
  const helper = actor("helper", null, [circle.growOuts.annas]);
  const inField = await offered(helper, "/grow-outs/[id]", circle.growOuts.annas);
  expect(inField).toContain("/grow-outs/[id]/rogue");
  expect(inField).not.toContain("/grow-outs/[id]/harvest");
  const ofTest = await offered(anna, "/tests/[id]", testId);
  expect(ofTest).toEqual(expect.arrayContaining(["/came up later|Count it again/", '/aria-label="[^"]*Correct it"/']));
});

test("who keeps a variety writes of it, and of own lots alone; a library's desk of what is the library's", async () => {
  const bert = await offered(actor("steward", circle.stewards.bert), "/varieties/[id]", circle.varieties.shared);
  expect(bert).toContain("/varieties/[id]/correct");
  expect(bert).toContain("/varieties/[id]/add/name");
  expect(bert).toContain("/lots/berts/give");
  expect(bert.filter((way) => way.includes("annas"))).toEqual([]);
  const librarian = actor("librarian", circle.stewards.library);
  expect(await offered(librarian, "/lots/[id]", circle.lots.librarys)).toContain("/lots/[id]/give");
  const others = await offered(librarian, "/lots/[id]", circle.lots.annas);
  expect(others.filter((way) => way.includes("[id]"))).toEqual([]);
});

test("the season leads a hand to no jar of another's", async () => {
  const bert = await offered(actor("steward", circle.stewards.bert), "/season", "none");
  expect(bert.filter((way) => way.includes("annas"))).toEqual([]);
  expect(bert.some((way) => way.includes("berts"))).toBe(true);
});

test("a hand-over is put right by the giver's desk, and answered there", async () => {
  const library = actor("librarian", circle.stewards.library);
  const own = await offered(library, "/sharing/[id]", circle.transfers.lent);
  expect(own).toEqual(expect.arrayContaining(["/sharing/[id]/correct", "/Write the answer down/"]));
  const bert = actor("steward", circle.stewards.bert);
  expect(await offered(bert, "/sharing/[id]", circle.transfers.lent)).toEqual([]);
});

/** A page that is asked for by its address: within its layout, which may stand something in its place. */
async function asked(who: Actor, route: string, params: Record<string, string>, search = ""): Promise<string> {
  const at = Object.entries(params).reduce((path, [step, value]) => path.replace(`[${step}]`, value), route);
  Object.assign(acting, { who, at: `${at}?${search}` });
  const Page = await drawnBy<Page>(`${route}/page.tsx`);
  const top = pagesOfRecords.find((each) => route === each || route.startsWith(`${each}/`));
  const Layout = top ? await drawnBy<Layout>(`${top}/layout.tsx`) : null;
  const given = {
    params: Promise.resolve(params),
    searchParams: Promise.resolve(Object.fromEntries(new URLSearchParams(search))),
  };
  const drawn = async () => (
    <Offering closed={closedTo(who.role)}>
      {Layout ? await Layout({ params: given.params, children: <Page {...given} /> }) : <Page {...given} />}
    </Offering>
  );
  return (await pageGot({ default: drawn }, params)).body;
}

const writtenOf = Object.entries(routes).flatMap(([route, action]) => {
  const page = pagesOfRecords.find((each) => route.startsWith(`${each}/`));
  const read = roleMay("reader", action) || action === "history";
  return page && !read && modules[`../../../app${route}/page.tsx`] ? [[route, page, action] as const] : [];
});

test.each(writtenOf)(
  "%s of another's record says whose it is in the place of its form",
  async (route, page, action) => {
    const id =
      page === "/stewards/[id]" ? circle.stewards.anna : page === "/sharing/[id]" ? circle.transfers.lent : idOf(page);
    const steps = [...route.matchAll(/\[(\w+)\]/g)].map((found) => [found[1] ?? "", nowhere]);
    const bert = actor("steward", circle.stewards.bert);
    // Anybody adds a strain of their own and their word as a holder.
    for (const what of route.endsWith("[what]") ? ["name", "same", "trait", "story"] : [""]) {
      const body = await asked(bert, route, { ...Object.fromEntries(steps), id, ...(what === "" ? {} : { what }) });
      expect(body).toContain("Not yours to write");
      expect(body).toMatch(/is not yours to write: .* the owner/);
      expect(body).not.toContain("<form");
      expect(roleMay("steward", action), action).toBe(true);
    }
  },
);

test("a form that takes its record from behind the question mark says whose it is, too, and one's own is there", async () => {
  const bert = actor("steward", circle.stewards.bert);
  const { lots } = circle;
  const forms: readonly (readonly [string, (id: string) => string])[] = [
    ["/tests/new", (id) => `lot=${id}`],
    ["/pictures/new", (id) => `of=lot&id=${id}`],
    ["/lots/blend", (id) => `lots=${id}`],
  ];
  expect(await asked(bert, "/lots/blend", {}, "lots=OMM-1,VELL-1")).toContain("Lot VELL-1 is not yours to write");
  for (const [route, search] of forms) {
    expect(await asked(bert, route, {}, search(lots.annas)), route).toContain(
      "Lot VELL-1 is not yours to write: Anna Vell or the owner may.",
    );
    expect(await asked(bert, route, {}, search(lots.berts)), route).not.toContain("Not yours to write");
  }
  expect(await asked(bert, "/sharing/take-in", {}, `answers=${circle.transfers.lent}`)).toContain("Not yours to write");
  for (const route of ["/lots/[id]/split", "/lots/[id]/correct", "/lots/[id]/weigh"])
    expect(await asked(bert, route, { id: lots.berts }), route).not.toContain("Not yours to write");
  const strain = await asked(bert, "/varieties/[id]/add/[what]", { id: circle.varieties.open, what: "strain" });
  expect(strain).not.toContain("Not yours to write");
});
