import { rmSync } from "node:fs";
import path from "node:path";
import Sqlite from "better-sqlite3";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startBrowser, watchErrors } from "./browser";
import { inGround, seriousFindings } from "./findings";
import { newFolder, ownersPassphrase, type SharedSite, startShared } from "./shared-server";

/** The pages that are there only where a registry is opened to others. */
let browser: Browser;
let site: SharedSite;
let base = "";
let invitation = "";
let member = "";
let cookies: Awaited<ReturnType<ReturnType<Page["context"]>["cookies"]>> = [];
const folder = newFolder();

beforeAll(async () => {
  site = await startShared(folder, ownersPassphrase);
  base = `https://127.0.0.1:${site.port}`;
  browser = await startBrowser();
  const page = await browser.newPage({ ignoreHTTPSErrors: true });
  await page.goto(`${base}/sign-in`);
  await page.getByLabel("Name", { exact: true }).fill("odalind");
  await page.getByLabel("Passphrase", { exact: true }).fill(ownersPassphrase);
  await page.getByRole("button", { name: "Sign in", exact: true }).click();
  await page.waitForURL((url) => url.pathname !== "/sign-in");
  await page.goto(`${base}/members/invite`);
  await page.getByLabel("Reader").check();
  await page.getByRole("button", { name: "Make the invitation" }).click();
  invitation = new URL((await page.getByRole("link", { name: /come-in/ }).textContent()) ?? "").pathname;
  await page.goto(`${base}/members`);
  member = (await page.locator('main a[href^="/members/"]:not([href$="invite"])').first().getAttribute("href")) ?? "";
  cookies = await page.context().cookies();
  await page.close();
});

afterAll(async () => {
  await browser?.close();
  await site?.end();
  rmSync(folder, { recursive: true, force: true });
});

/** What is against each of these pages in a ground. */
async function faultsOf(ground: string, places: readonly string[], signedIn: boolean): Promise<string[]> {
  const page = await inGround(browser, ground, base, { ignoreHTTPSErrors: true });
  if (signedIn) await page.context().addCookies(cookies);
  const errors = watchErrors(page);
  const faults: string[] = [];
  for (const place of places) {
    await page.goto(base + place);
    await page.locator("main h1").first().waitFor();
    if (new URL(page.url()).pathname !== place.split("?")[0]) faults.push(`${place} led to ${page.url()}`);
    faults.push(...(await seriousFindings(page)).map((fault) => `${place}: ${fault}`));
    const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    if (ground !== "print" && over > 0) faults.push(`${place}: ${over} px wider than the screen`);
    faults.push(...errors.splice(0).map((error) => `${place}: ${error}`));
  }
  await page.context().close();
  return faults;
}

describe.each(["day", "night", "glare", "print"])("in the %s ground", (ground) => {
  it("no page before signing in has a serious fault, is wider than a phone, or goes against its policy", async () => {
    const open = ["/sign-in", "/sign-in?then=%2Flots", "/come-in", invitation, "/come-in/none", "/certificate"];
    expect(await faultsOf(ground, open, false)).toEqual([]);
  });

  it("nor has one of those about who may come in, the own way in, and safe keeping", async () => {
    const own = ["/members", member, "/members/invite", "/your-way-in", "/safe-keeping", "/stewards"];
    expect(await faultsOf(ground, own, true)).toEqual([]);
  });
});

describe("where the registry no longer answers", () => {
  /** A table is away, as in a file that was damaged while the server ran. */
  function sessionsAway<T>(look: () => Promise<T>): Promise<T> {
    const file = new Sqlite(path.join(folder, "registry.sqlite"));
    file.exec('ALTER TABLE "Session" RENAME TO "SessionAway"');
    return look().finally(() => {
      file.exec('ALTER TABLE "SessionAway" RENAME TO "Session"');
      file.close();
    });
  }

  it.each(["day", "night", "glare"])(
    "a calm page stands there in the %s ground, under its policy, and leads back",
    async (ground) => {
      const page = await inGround(browser, ground, base, { ignoreHTTPSErrors: true });
      await page.context().addCookies(cookies);
      const told: string[] = [];
      page.on("console", (message) => told.push(message.text()));
      await sessionsAway(async () => {
        const answer = await page.goto(`${base}/lots`);
        expect(answer?.status()).toBe(500);
        await page.getByRole("heading", { name: "No page could be made" }).waitFor();
        await expect.poll(() => page.locator("html").getAttribute("data-ground")).toBe(ground);
        expect(await seriousFindings(page)).toEqual([]);
        const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
        expect(over).toBeLessThanOrEqual(0);
        expect(told.filter((line) => /Content.Security.Policy/i.test(line))).toEqual([]);
      });
      await page.getByRole("button", { name: "Try once more" }).click();
      await page.getByRole("heading", { level: 1, name: "Lots" }).waitFor();
      await page.context().close();
    },
  );
});
