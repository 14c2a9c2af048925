import { runInNewContext } from "node:vm";
import { describe, expect, it } from "vitest";
import { fieldDocument, nonceOf } from "@/app/field/_components/field-document";
import { fieldWorker } from "@/app/sw.js/field-worker";

const origin = "https://registry.example";

/** What a build of the field gives out: the document, its list, its files. */
function build(...names: string[]): Record<string, string> {
  const files = { script: names[0] ?? "", style: "field.css", parts: [], all: [...names, "field.css"] };
  return {
    "/field": fieldDocument(files, null),
    "/field/files/list": JSON.stringify(files),
    ...Object.fromEntries(files.all.map((name) => [`/field/files/${name}`, `of ${name}`])),
  };
}

type Handler = (event: object) => void;

/** The worker in a browser of paper: one cache, and a network that a test can change or cut. */
function browser() {
  const kept = new Map<string, Response>();
  const handlers = new Map<string, Handler>();
  const told: unknown[] = [];
  const site = { pages: {} as Record<string, string> | null };
  const place = (asked: string | { url: string }) => {
    const url = new URL(typeof asked === "string" ? asked : asked.url, origin);
    return url.pathname + url.search;
  };
  const fetched = async (asked: string | { url: string }) => {
    const text = site.pages?.[place(asked)];
    if (site.pages === null) throw new TypeError("Failed to fetch");
    const html = place(asked) === "/field";
    const headers = { "content-type": html ? "text/html; charset=utf-8" : "text/plain" };
    return text === undefined ? new Response("", { status: 404 }) : new Response(text, { headers });
  };
  const match = async (asked: string | { url: string }) => kept.get(place(asked))?.clone();
  const cache = {
    match,
    put: async (asked: string, response: Response) => void kept.set(place(asked), response),
    add: async (asked: string) => {
      const response = await fetched(asked);
      if (!response.ok) throw new TypeError("not added");
      kept.set(place(asked), response);
    },
    keys: async () => [...kept.keys()].map((key) => ({ url: origin + key })),
    delete: async (asked: { url: string }) => kept.delete(place(asked)),
  };
  const self = {
    location: { origin },
    addEventListener: (name: string, handler: Handler) => handlers.set(name, handler),
    clients: { claim: async () => {}, matchAll: async () => [{ postMessage: (said: unknown) => told.push(said) }] },
  };
  runInNewContext(fieldWorker, { self, caches: { open: async () => cache, match }, fetch: fetched, URL, Response });
  const run = async (name: string, event: object = {}) => {
    const waits: Promise<unknown>[] = [];
    let answer: Promise<Response> | null = null;
    handlers.get(name)?.({
      ...event,
      waitUntil: (work: Promise<unknown>) => waits.push(work),
      respondWith: (given: Promise<Response>) => {
        answer = given;
      },
    });
    const settled = await Promise.allSettled(waits);
    const response = await (answer as Promise<Response> | null);
    return { failed: settled.some((each) => each.status === "rejected"), text: (await response?.text()) ?? null };
  };
  const get = (asked: string, mode = "no-cors") =>
    run("fetch", { request: { method: "GET", url: origin + asked, mode } });
  return { site, kept, told, run, get };
}

describe("the worker of the field", () => {
  it("keeps the document with all its files, and gives them with no signal", async () => {
    const { site, run, get } = browser();
    site.pages = build("a.js", "later.js");
    expect((await run("install")).failed).toBe(false);
    site.pages = null;
    expect((await get("/field", "navigate")).text).toContain("/field/files/a.js");
    expect((await get("/field/files/later.js")).text).toBe("of later.js");
  });

  it("is not installed where a file does not come", async () => {
    const { site, run } = browser();
    site.pages = build("a.js");
    delete site.pages["/field/files/a.js"];
    expect((await run("install")).failed).toBe(true);
  });

  it("takes a newer document only whole, tells the pages, and keeps the files of the one before", async () => {
    const { site, told, run, get } = browser();
    site.pages = build("a.js");
    await run("install");
    const newer = build("b.js", "part.js");
    site.pages = { ...newer };
    delete site.pages["/field/files/part.js"];
    await get("/field", "navigate");
    expect((await get("/field", "navigate")).text).toContain("/field/files/a.js");
    site.pages = newer;
    await get("/field", "navigate");
    expect(told).toEqual(["newer field page"]);
    site.pages = null;
    expect((await get("/field", "navigate")).text).toContain("/field/files/b.js");
    expect((await get("/field/files/a.js")).text).toBe("of a.js");
  });

  it("lets the files of an old build go when three newer ones are here", async () => {
    const { site, run, get, kept } = browser();
    for (const name of ["a.js", "b.js", "c.js", "d.js"]) {
      site.pages = build(name);
      await (name === "a.js" ? run("install") : get("/field", "navigate"));
    }
    expect([...kept.keys()].filter((key) => key.endsWith(".js")).sort()).toEqual(
      ["b", "c", "d"].map((name) => `/field/files/${name}.js`),
    );
  });

  it("does not mix the document of one build with the list of another", async () => {
    const { site, run, get } = browser();
    site.pages = build("a.js");
    await run("install");
    site.pages = { ...build("b.js"), "/field": build("a.js")["/field"] ?? "" };
    await get("/field", "navigate");
    site.pages = null;
    expect((await get("/field", "navigate")).text).toContain("/field/files/a.js");
  });

  it("leaves the desk and all that is sent alone", async () => {
    const { site, run, get } = browser();
    site.pages = build("a.js");
    await run("install");
    expect((await get("/lots", "navigate")).text).toBeNull();
    expect((await run("fetch", { request: { method: "POST", url: `${origin}/field/records` } })).text).toBeNull();
    expect((await get("/field/pack/1")).text).toBeNull();
  });
});

describe("the document of the field", () => {
  it("carries the nonce of its answer's policy, and nothing that is no nonce", () => {
    const files = { script: "a.js", style: "a.css", parts: [], all: [] };
    expect(fieldDocument(files, nonceOf("script-src 'nonce-aGVsbG8='"))).toContain(
      'src="/field/files/a.js" nonce="aGVsbG8="',
    );
    expect(fieldDocument(files, nonceOf("script-src 'self'"))).not.toContain("nonce");
    expect(nonceOf(`script-src 'nonce-"><script>'`)).toBeNull();
    expect(nonceOf(null)).toBeNull();
  });
});
