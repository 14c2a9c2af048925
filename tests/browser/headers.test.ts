import { readdirSync } from "node:fs";
import { request } from "node:http";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startBrowser, watchErrors } from "./browser";
import { startSite, type TestSite } from "./server";

/*
 * What the headers have to say is from the standards: Content Security Policy Level 3 (W3C), the Fetch standard (Cross-Origin-Resource-Policy,
 * nosniff), the HTML standard (Cross-Origin-Opener-Policy), Referrer Policy and Permissions Policy (W3C).
 */
const always: Readonly<Record<string, string>> = {
  "cross-origin-opener-policy": "same-origin",
  "cross-origin-resource-policy": "same-origin",
  "referrer-policy": "same-origin",
  "x-content-type-options": "nosniff",
};

let site: TestSite;
let browser: Browser;

beforeAll(async () => {
  site = await startSite();
  browser = await startBrowser();
});

afterAll(async () => {
  await browser?.close();
  await site?.end();
});

/** The directives of a policy by name. */
function policyOf(headers: Headers): ReadonlyMap<string, string> {
  const written = headers.get("content-security-policy") ?? "";
  return new Map(
    written.split(";").map((each) => {
      const [name = "", ...sources] = each.trim().split(" ");
      return [name, sources.join(" ")] as const;
    }),
  );
}

const ask = (place: string, init: RequestInit = {}) => fetch(site.base + place, { redirect: "manual", ...init });
const send = (place: string, headers: Record<string, string>) => ask(place, { method: "POST", headers });
const nobody = "00000000-0000-7000-8000-000000000000";

/** Every kind of answer, with the status it has to have, and whether it may be kept. */
const kinds: readonly { kind: string; status: number; got: () => Promise<Response>; kept?: boolean }[] = [
  { kind: "a page", status: 200, got: () => ask("/varieties", { headers: { accept: "text/html" } }) },
  {
    kind: "a page for the framework",
    status: 200,
    got: () => ask("/varieties", { redirect: "follow", headers: { rsc: "1" } }),
  },
  { kind: "a page that leads on", status: 307, got: () => ask("/sign-in") },
  { kind: "a page that is not there", status: 404, got: () => ask("/nowhere") },
  { kind: "a record that is not there", status: 404, got: () => ask(`/lots/${nobody}`) },
  { kind: "a file", status: 200, got: () => ask("/lots/export") },
  { kind: "an answer to a program", status: 200, got: () => ask("/health") },
  { kind: "an answer to a script", status: 200, got: () => ask("/search/quick?q=pea") },
  { kind: "sent from elsewhere", status: 403, got: () => send("/settings", { origin: "http://a.example" }) },
  { kind: "a form that nobody has", status: 409, got: () => send("/settings", { "next-action": "0".repeat(42) }) },
  { kind: "the sign of the app", status: 200, got: () => ask("/icon.svg"), kept: true },
  { kind: "a file of the build", status: 200, got: () => ask(builtFile()), kept: true },
  { kind: "a file that was not built", status: 404, got: () => ask("/_next/static/chunks/none.js") },
];

/** One of the built scripts, as a page names it. */
function builtFile(): string {
  const name = readdirSync(".next/static/chunks").find((each) => each.endsWith(".js")) ?? "";
  return `/_next/static/chunks/${name}`;
}

describe("an answer", () => {
  it.each(kinds)("that is $kind ($status) carries what every answer does", async ({ status, got, kept }) => {
    const answer = await got();
    await answer.text();
    expect(answer.status).toBe(status);
    expect(Object.fromEntries(Object.keys(always).map((name) => [name, answer.headers.get(name)]))).toEqual(always);
    expect(answer.headers.get("permissions-policy")).toMatch(/camera=\(self\).*geolocation=\(\).*microphone=\(\)/);
    const policy = policyOf(answer.headers);
    expect(policy.get("default-src")).toBe("'none'");
    expect([policy.get("base-uri"), policy.get("frame-ancestors")]).toEqual(["'none'", "'none'"]);
    expect([...policy.values()].join(" ")).not.toMatch(/unsafe-eval|\*|https?:/);
    if (!kept) expect(answer.headers.get("cache-control")).toContain("no-store");
    for (const tells of ["x-powered-by", "server", "access-control-allow-origin"])
      expect(answer.headers.get(tells)).toBeNull();
  });

  it("under a name that is not ours is refused with the same", async () => {
    const headers = await new Promise<{ status?: number; policy?: string; kept?: string }>((resolve, reject) => {
      const url = new URL(site.base);
      const sent = request(
        { host: url.hostname, port: url.port, path: "/", headers: { host: "a.example" } },
        (answer) => {
          const policy = String(answer.headers["content-security-policy"]);
          resolve({ status: answer.statusCode, policy, kept: answer.headers["cache-control"] });
          answer.resume();
        },
      );
      sent.on("error", reject);
      sent.end();
    });
    expect(headers).toMatchObject({ status: 421, kept: "no-store" });
    expect(headers.policy).toContain("default-src 'none'");
  });

  it("runs scripts by a nonce of its own alone, which no other answer has", async () => {
    const nonces = new Set<string>();
    for (const place of ["/varieties", "/varieties", "/methods", "/nowhere"]) {
      const answer = await ask(place, { headers: { accept: "text/html" } });
      const scripts = policyOf(answer.headers).get("script-src") ?? "";
      expect(scripts).toMatch(/^'nonce-[A-Za-z0-9+/]{22}==' 'strict-dynamic'$/);
      const nonce = scripts.slice("'nonce-".length, scripts.indexOf("' "));
      nonces.add(nonce);
      const tags = (await answer.text()).match(/<script[^>]*>/g) ?? [];
      expect(tags.length).toBeGreaterThan(3);
      expect(tags.filter((tag) => !tag.includes(`nonce="${nonce}"`))).toEqual([]);
    }
    expect(nonces.size).toBe(4);
  });

  it("is not given the nonce that somebody sends along", async () => {
    const sent = { "content-security-policy": "script-src 'nonce-bWluZQ=='", accept: "text/html" };
    const answer = await ask("/varieties", { headers: sent });
    expect(await answer.text()).not.toContain("bWluZQ==");
  });

  it("sends styles, pictures, fonts and requests to this address alone", async () => {
    const policy = policyOf((await ask("/varieties")).headers);
    const told = ["style-src", "img-src", "font-src", "connect-src", "worker-src", "manifest-src", "form-action"];
    expect(Object.fromEntries(told.map((name) => [name, policy.get(name)]))).toEqual({
      "style-src": "'self'",
      "img-src": "'self' data: blob:",
      "font-src": "'self'",
      "connect-src": "'self'",
      "worker-src": "'self'",
      "manifest-src": "'self'",
      "form-action": "'self'",
    });
    expect([policy.get("script-src-attr"), policy.get("object-src")]).toEqual(["'none'", "'none'"]);
  });
});

describe("in a browser", () => {
  it("a form's own answer carries it all, and what it leads to works", async () => {
    const page = await browser.newPage();
    const errors = watchErrors(page);
    await page.goto(`${site.base}/varieties/new`);
    await page.getByLabel("Name").first().fill("Omm Round");
    await page.getByLabel("Crop").first().selectOption({ index: 1 });
    const sent = page.waitForResponse((response) => response.request().method() === "POST");
    await page.getByRole("button", { name: /^Record/ }).click();
    const answer = await sent;
    const headers = new Headers(await answer.allHeaders());
    for (const [name, value] of Object.entries(always)) expect(headers.get(name)).toBe(value);
    expect(policyOf(headers).get("script-src")).toContain("'nonce-");
    expect(headers.get("cache-control")).toContain("no-store");
    await page.waitForURL(/\/varieties\/[0-9a-f-]{36}/);
    expect(errors).toEqual([]);
    await page.close();
  });

  it("no script runs that was smuggled into a page, in whatever way", async () => {
    const page = await browser.newPage();
    const smuggled = `<script>window.ran = "inline"</script><script src="${builtFile()}?smuggled"></script>
      <img src="data:," onerror="window.ran = 'handler'"><svg onload="window.ran = 'svg'"></svg>
      <a id="way" href="javascript:window.ran='way'">x</a><base href="https://a.example/"><style>body { color: red }</style>
      <form id="away" action="https://a.example/"><button>x</button></form><object data="/icon.svg"></object>
      <iframe srcdoc="<script>parent.ran = 'frame'</script>"></iframe>`;
    await page.addInitScript(() => {
      const told: string[] = [];
      Object.assign(window, { told });
      document.addEventListener("securitypolicyviolation", (event) => told.push(event.effectiveDirective));
    });
    // Without the page's own scripts, which would put it right again.
    await page.route("**/_next/static/**/*.js", (route) => route.abort());
    const asked: string[] = [];
    page.on("response", (response) => asked.push(response.url()));
    await page.route("**/varieties", async (route) => {
      const response = await route.fetch();
      const body = (await response.text()).replace("<main", `${smuggled}<main`);
      await route.fulfill({ response, body });
    });
    await page.goto(`${site.base}/varieties`);
    for (const press of ["#way", "#away button"])
      await page.locator(press).evaluate((each) => (each as HTMLElement).click());
    await expect
      .poll(() => page.evaluate(() => [...new Set((window as unknown as { told: string[] }).told)].sort()))
      .toEqual(["base-uri", "form-action", "object-src", "script-src-attr", "script-src-elem", "style-src-elem"]);
    expect(await page.evaluate(() => (window as unknown as { ran?: string }).ran ?? "nothing")).toBe("nothing");
    expect(asked.filter((url) => url.includes("smuggled") || url.includes("a.example"))).toEqual([]);
    await page.close();
  });

  it("no page can be put into a frame", async () => {
    const page = await browser.newPage();
    await page.route("http://a.example/", (route) =>
      route.fulfill({ contentType: "text/html", body: `<iframe src="${site.base}/varieties"></iframe>` }),
    );
    await page.goto("http://a.example/");
    await expect.poll(() => page.frames().map((frame) => frame.url())).toContain("chrome-error://chromewebdata/");
    await page.close();
  });
});
