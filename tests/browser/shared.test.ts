import { X509Certificate } from "node:crypto";
import { readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import net from "node:net";
import path from "node:path";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { isOpenRoute } from "@/lib/access/open-routes";
import { projectFiles } from "../architecture/source-files";
import { startBrowser } from "./browser";
import { fieldGroundIn, inRegistry } from "./field-ground";
import { recordWhileSignedOut } from "./field-over-https";
import { ask, newFolder, ownersPassphrase, type SharedSite, startShared } from "./shared-server";

let browser: Browser;
let site: SharedSite;
const folders: string[] = [];
const page = { accept: "text/html" };

beforeAll(async () => {
  folders.push(newFolder());
  site = await startShared(folders[0] ?? "", ownersPassphrase);
  // a worker of a page is fetched apart from it, and trusts nothing that was not installed
  browser = await startBrowser(["--ignore-certificate-errors"]);
});

afterAll(async () => {
  await browser?.close();
  await site?.end();
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

/** A browser of somebody; it takes the certificate as if it had been trusted. */
async function somebody(): Promise<BrowserContext> {
  return browser.newContext({ ignoreHTTPSErrors: true, baseURL: `https://127.0.0.1:${site.port}` });
}

async function signIn(at: Page, name: string, passphrase: string): Promise<void> {
  await at.getByLabel("Name", { exact: true }).fill(name);
  await at.getByLabel("Passphrase", { exact: true }).fill(passphrase);
  await at.getByRole("button", { name: "Sign in", exact: true }).click();
}

async function owner(): Promise<{ context: BrowserContext; at: Page }> {
  const context = await somebody();
  const at = await context.newPage();
  await at.goto("/sign-in");
  await signIn(at, "odalind", ownersPassphrase);
  await at.waitForURL((url) => url.pathname !== "/sign-in");
  return { context, at };
}

/** Makes an account by an invitation. */
async function comeIn(at: Page, link: string, name: string, signInName: string): Promise<void> {
  await at.goto(link);
  await at.getByLabel("Your name").fill(name);
  await at.getByLabel("Name to sign in with").fill(signInName);
  await at.getByLabel("Passphrase", { exact: true }).fill("a cart of wet slates");
  await at.getByLabel("The same once more").fill("a cart of wet slates");
  await at.getByRole("button", { name: "Make my account" }).click();
  await at.waitForURL((url) => !url.pathname.startsWith("/come-in"));
}

/** Every page and route of the app, with something in the place of each part that varies. */
function everyPlace(kind: "page.tsx" | "route.ts"): string[] {
  return projectFiles(/^app\//)
    .filter((file) => path.basename(file) === kind)
    .map((file) =>
      `/${path
        .dirname(file)
        .slice("app".length + 1)
        .replace(/^\.$/, "")}`.replace(/\[[^\]]+\]/g, "x1"),
    );
}

describe("a registry without an owner", () => {
  it("is not opened: the start ends with what to do, and nothing listens", async () => {
    const folder = newFolder();
    folders.push(folder);
    const refused = await startShared(folder);
    expect(await refused.ended).toBe(1);
    expect(refused.said()).toContain("Nobody can sign in yet");
    const reached = await new Promise((resolve) => {
      const socket = net.connect(refused.port, "127.0.0.1", () => resolve(true));
      socket.on("error", () => resolve(false));
    });
    expect(reached).toBe(false);
    const short = await startShared(folder, "short");
    expect(await short.ended).toBe(1);
    expect(short.said()).toContain("take 12 or more");
  });
});

describe("the certificate", () => {
  const place = () => path.join(site.folder, "sharing");
  const read = (name: string) => new X509Certificate(readFileSync(path.join(place(), name), "utf8"));

  it("is the machine's own for every name of it, under an authority of its own, and only the owner reads the files", async () => {
    // What signs the cookies is made when it is first needed.
    await ask(site, "/lots", { headers: { cookie: "__Host-kinrow.session_token=made.up" } });
    expect(site.said()).toContain(`https://127.0.0.1:${site.port}`);
    expect(site.said()).toContain(read("authority.crt").fingerprint256);
    expect(statSync(place()).mode & 0o777).toBe(0o700);
    expect(readdirSync(place()).sort()).toEqual([
      "authority.crt",
      "authority.key",
      "secret",
      "server.crt",
      "server.key",
    ]);
    for (const file of readdirSync(place())) expect(statSync(path.join(place(), file)).mode & 0o777).toBe(0o600);
    const [authority, server] = [read("authority.crt"), read("server.crt")];
    expect([authority.ca, server.ca]).toEqual([true, false]);
    expect(server.checkIssued(authority) && server.verify(authority.publicKey)).toBe(true);
    expect([server.checkHost("patch.example"), server.checkIP("127.0.0.2")]).toEqual(["patch.example", "127.0.0.2"]);
    const days = (Date.parse(server.validTo) - Date.parse(server.validFrom)) / 86_400_000;
    expect(days).toBeLessThanOrEqual(398);
  });

  it("is explained and handed out by plain HTTP, which answers nothing else", async () => {
    const first = await ask(site, "/", { plain: true });
    expect([first.status, first.headers.location]).toEqual([307, "/certificate"]);
    const told = await ask(site, "/certificate", { plain: true, headers: page });
    expect(told.status).toBe(200);
    expect(told.text).toContain(read("authority.crt").fingerprint256);
    const file = await ask(site, "/certificate/authority", { plain: true });
    expect(file.headers["content-type"]).toBe("application/x-x509-ca-cert");
    for (const shut of ["/sign-in", "/lots", "/api/auth/passkey/generate-authenticate-options"]) {
      const answer = await ask(site, shut, { plain: true });
      expect([answer.status, answer.headers.location, answer.headers["set-cookie"]]).toEqual([
        307,
        "/certificate",
        undefined,
      ]);
    }
  });
});

describe("who has not signed in", () => {
  it("is led to the sign-in page by every page, and refused by every route, under each address", async () => {
    const shut = everyPlace("page.tsx").filter((place) => !isOpenRoute(place));
    expect(shut.length).toBeGreaterThan(40);
    for (const [at, place] of shut.entries()) {
      const answer = await ask(site, place, { address: at % 2 ? "127.0.0.1" : "127.0.0.2", headers: page });
      const back = place === "/" ? "/sign-in" : `/sign-in?then=${encodeURIComponent(place)}`;
      expect([place, answer.status]).toEqual([place, 307]);
      expect(answer.headers.location?.endsWith(back)).toBe(true);
    }
    const routes = everyPlace("route.ts").filter((place) => !isOpenRoute(place));
    expect(routes.length).toBeGreaterThan(10);
    for (const place of routes) {
      for (const method of ["GET", "POST"]) {
        const answer = await ask(site, place, { method });
        expect([place, answer.status]).toEqual([place, 401]);
        expect(answer.text).toContain("not signed in");
      }
    }
  });

  it("is not believed a made-up name, a cookie or a header that says otherwise", async () => {
    for (const name of ["other.example", `other.example:${site.port}`, "127.0.0.1.other.example"])
      expect((await ask(site, "/sign-in", { name })).status).toBe(421);
    const tricks: Record<string, string>[] = [
      {
        cookie:
          "__Host-kinrow.session_token=made.up; __Secure-kinrow.session_token=made.up; kinrow.session_token=made.up",
      },
      { "x-forwarded-host": "localhost", "x-kinrow-path": "/ready" },
      { "x-middleware-subrequest": "proxy:proxy:proxy:proxy:proxy", "x-middleware-subrequest-id": "1" },
      { rsc: "1", "next-router-state-tree": "%5B%22%22%5D" },
    ];
    for (const headers of tricks) {
      const answer = await ask(site, "/stewards", { headers: { ...page, ...headers } });
      expect([Object.keys(headers)[0], answer.status]).toEqual([Object.keys(headers)[0], 307]);
    }
    const action = await ask(site, "/lots", { method: "POST", headers: { "next-action": "0".repeat(42) }, body: "[]" });
    expect(action.status).toBeGreaterThanOrEqual(400);
    expect((await ask(site, "/sign-in", { address: "127.0.0.2", headers: page })).status).toBe(200);
  });

  it("is told one sentence for a wrong name and a wrong passphrase", async () => {
    const context = await somebody();
    const at = await context.newPage();
    await at.goto("/lots");
    expect(new URL(at.url()).searchParams.get("then")).toBe("/lots");
    for (const name of ["nobody", "odalind"]) {
      await signIn(at, name, "a cart of wet slates");
      await expect.poll(() => at.getByLabel("Passphrase", { exact: true }).inputValue(), { timeout: 20_000 }).toBe("");
      await at.getByText("The name or the passphrase is not right").waitFor();
    }
    await signIn(at, "odalind", ownersPassphrase);
    await at.waitForURL((url) => url.pathname === "/lots");
    const cookie = (await context.cookies()).find((each) => each.name.includes("session_token"));
    expect(cookie).toMatchObject({ httpOnly: true, secure: true, sameSite: "Lax", path: "/" });
    expect(cookie?.name).toBe("__Host-kinrow.session_token");
    await context.close();
  });
});

describe("who is signed in", () => {
  it("is out at once when another device ends it, loses nothing that was typed, and comes back to it", async () => {
    const [first, second] = [await owner(), await owner()];
    await second.at.goto("/stewards/new");
    await second.at.getByLabel("Name").fill("Aldis Thornwick");
    await second.at.getByLabel(/^Note/).fill("keeps the peas of the lower row");
    await first.at.goto("/your-way-in");
    await first.at.getByRole("button", { name: "Sign it out" }).first().click();
    await first.at.getByRole("dialog").getByRole("button", { name: "Sign it out" }).click();
    await first.at.getByRole("dialog").waitFor({ state: "hidden" });
    await first.at.reload();
    const cookies = (await second.context.cookies()).map((each) => `${each.name}=${each.value}`).join("; ");
    await expect
      .poll(async () => (await ask(site, "/lots", { headers: { ...page, cookie: cookies } })).status)
      .toBe(307);
    await second.at.getByRole("button", { name: "Record the steward" }).click();
    await second.at.waitForURL((url) => url.pathname === "/sign-in");
    await signIn(second.at, "odalind", ownersPassphrase);
    await second.at.waitForURL((url) => url.pathname === "/stewards/new");
    await second.at.getByText("You were signed out while you wrote").waitFor();
    expect(await second.at.getByLabel("Name").inputValue()).toBe("Aldis Thornwick");
    await second.at.getByRole("button", { name: "Record the steward" }).click();
    await second.at.waitForURL((url) => url.pathname === "/stewards");
    await second.at.getByText("Aldis Thornwick").first().waitFor();
    for (const { context } of [first, second]) await context.close();
  });

  it("lets somebody in by a link that works once", async () => {
    const { context, at } = await owner();
    await at.goto("/members/invite");
    await at.getByLabel("Reader").check();
    await at.getByRole("button", { name: "Make the invitation" }).click();
    await at.getByRole("img", { name: "The link as a code to scan" }).waitFor();
    const link = (await at.getByRole("link", { name: /come-in/ }).textContent()) ?? "";
    const guest = await somebody();
    const seat = await guest.newPage();
    await comeIn(seat, link, "Perrin Vale", "perrin");
    await seat.goto("/your-way-in");
    await seat.getByText("You may look at what is kept here.").waitFor();
    await seat.goto("/members");
    expect(await seat.locator("main").getByText("Perrin Vale").count()).toBe(0);
    await at.goto(link);
    await at.getByText("was used already").waitFor();
    await at.goto("/members");
    await at.getByRole("link", { name: "Perrin Vale" }).waitFor();
    for (const each of [context, guest]) await each.close();
  });

  it("takes a grow-out to the field, and loses nothing of it where the sign-in runs out among the plants", async () => {
    const { growOutId } = await inRegistry(site, fieldGroundIn);
    const { context, at } = await owner();
    await at.goto("/members/invite");
    await at.getByLabel("Helper").check();
    await at.getByRole("checkbox", { name: "Mill field" }).check();
    await at.getByRole("button", { name: "Make the invitation" }).click();
    const link = (await at.getByRole("link", { name: /come-in/ }).textContent()) ?? "";
    const helper = await somebody();
    const seat = await helper.newPage();
    await comeIn(seat, link, "Teasel Marsh", "teasel");
    await recordWhileSignedOut(site, helper, seat, growOutId, (page) => signIn(page, "teasel", "a cart of wet slates"));
    for (const each of [context, helper]) await each.close();
  });

  it("adds a passkey where the address is a name, and comes in by it", async () => {
    const context = await browser.newContext({ ignoreHTTPSErrors: true, baseURL: `https://localhost:${site.port}` });
    const at = await context.newPage();
    const devtools = await context.newCDPSession(at);
    await devtools.send("WebAuthn.enable");
    const options = { protocol: "ctap2" as const, transport: "internal" as const, hasResidentKey: true };
    const lock = { ...options, hasUserVerification: true, isUserVerified: true, automaticPresenceSimulation: true };
    await devtools.send("WebAuthn.addVirtualAuthenticator", { options: lock });
    await at.goto("/sign-in");
    await signIn(at, "odalind", ownersPassphrase);
    await at.waitForURL((url) => url.pathname !== "/sign-in");
    await at.goto("/your-way-in");
    await at.getByLabel(/A word for it/).fill("the desk");
    await at.getByRole("button", { name: "Add a passkey" }).click();
    await at.getByText("the desk", { exact: true }).waitFor();
    await at.getByRole("button", { name: "Sign out here" }).click();
    await at.waitForURL((url) => url.pathname === "/sign-in");
    await at.getByRole("button", { name: "Sign in with a passkey" }).click();
    await at.waitForURL((url) => url.pathname !== "/sign-in");
    await context.close();
    const numbers = await owner();
    await numbers.at.goto("/your-way-in");
    await numbers.at.getByText("passkeys belong to a name").waitFor();
    await numbers.context.close();
  });
});

describe("the next start", () => {
  it("asks for nothing, keeps who is signed in and the authority, and has a certificate for the names of the day", async () => {
    const { context, at } = await owner();
    const files = () =>
      ["authority.crt", "server.crt"].map((name) => readFileSync(path.join(site.folder, "sharing", name), "utf8"));
    const before = files();
    await site.end();
    site = await startShared(site.folder, "", "127.0.0.1 other-patch.example");
    const after = files();
    expect([after[0] === before[0], after[1] === before[1]]).toEqual([true, false]);
    expect(new X509Certificate(after[1] ?? "").checkHost("other-patch.example")).toBe("other-patch.example");
    await at.goto(`https://127.0.0.1:${site.port}/lots`);
    expect(new URL(at.url()).pathname).toBe("/lots");
    await context.close();
  });
});
