import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from "vitest";
import { bringFolderIn } from "./bring-in";
import { startBrowser, watchErrors } from "./browser";
import { bringScoresIn, type Ground, keepThem, leaveOutAndReload, weighAndCut } from "./choose-walk";
import { startSite, type TestSite } from "./server";
import { says } from "./steward";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

let browser: Browser;
let site: TestSite;
let ground: Ground;
let page: Page;
let errors: string[];

beforeAll(async () => {
  site = await startSite();
  browser = await startBrowser();
  const first = await browser.newPage();
  await bringFolderIn(first, site.base, "tests/reference/notebook");
  ground = await aGrowOutWithoutPlants(first);
  await first.close();
});

afterAll(async () => {
  await browser?.close();
  await site?.end();
});

beforeEach(async () => {
  page = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage();
  errors = watchErrors(page);
});

afterEach(async () => {
  await page.context().close();
  expect(errors).toEqual([]);
});

async function aGrowOutWithoutPlants(on: Page): Promise<Ground> {
  await on.goto(`${site.base}/grow-outs`);
  const links = await on
    .locator("main a[href]")
    .evaluateAll((all) => all.map((each) => each.getAttribute("href") ?? ""));
  for (const href of links.filter((each) => /^\/grow-outs\/[0-9a-f-]{36}$/.test(each))) {
    await on.goto(`${site.base}${href}/plants`);
    if ((await on.locator("[role=grid] [data-row]").count()) > 0) continue;
    const variety = await on.locator('main a[href^="/varieties/"]').first().getAttribute("href");
    return { base: site.base, growOut: href.split("/").at(-1) ?? "", variety: variety?.split("/")[2] ?? "" };
  }
  throw new Error("no grow-out without plants");
}

it("where nothing is scored there is nothing to choose by, and the page leads to where plants are scored", async () => {
  await page.goto(`${site.base}/grow-outs/${ground.growOut}/choose`);
  await says(page.locator("main"), "There is nothing to choose by yet");
  expect(await page.getByRole("link", { name: "Mark and score plants" }).getAttribute("href")).toBe(
    `/grow-outs/${ground.growOut}/plants`,
  );
});

it("a steward weighs, moves the cut, leaves one out, comes back to the same by the address, and keeps them in one entry", async () => {
  await bringScoresIn(page, ground);
  await weighAndCut(page, ground);
  await leaveOutAndReload(page);
  await keepThem(page, ground);
});

it("at phone width nothing of it goes beyond the page, and what a thumb presses is tall enough", async () => {
  await page.setViewportSize({ width: 360, height: 740 });
  await page.goto(`${site.base}/grow-outs/${ground.growOut}/choose`);
  await page.waitForLoadState("networkidle");
  expect(await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth)).toBe(false);
  const first = page.getByRole("region", { name: "The plants, ranked" }).getByRole("button").first();
  expect((await first.boundingBox())?.height ?? 0).toBeGreaterThanOrEqual(44);
});

it("what is ranked, drawn and asked has no fault that a checker of accessibility finds, in any ground", async () => {
  for (const light of ["day", "night", "glare"]) {
    await page.context().addCookies([{ name: "kinrow-ground", value: light, url: site.base }]);
    await page.goto(`${site.base}/grow-outs/${ground.growOut}/choose?keep=3`);
    await page.waitForLoadState("networkidle");
    await page.evaluate(axe);
    const found = await page.evaluate(async () => {
      const { violations } = await (
        window as never as { axe: { run(): Promise<{ violations: Finding[] }> } }
      ).axe.run();
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).join(", ")}`);
      interface Finding {
        id: string;
        nodes: { target: string[] }[];
      }
    });
    expect(found).toEqual([]);
  }
});
