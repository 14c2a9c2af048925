import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from "vitest";
import { bringFolderIn } from "./bring-in";
import { startBrowser, watchErrors } from "./browser";
import {
  addPlants,
  aGrowOutWithoutPlants,
  defineTraits,
  type Ground,
  pasteCells,
  readBack,
  storeAll,
  typeScores,
} from "./plants-grid-walk";
import { startSite, type TestSite } from "./server";

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
  ground = await aGrowOutWithoutPlants(first, site.base);
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

it("a steward scores plants with the keyboard, pastes 200 rows of four cells, and stores all of it as one entry", async () => {
  await defineTraits(page, ground);
  await addPlants(page, ground);
  await typeScores(page);
  await pasteCells(page);
  await storeAll(page);
  await readBack(page, ground);
});

it("at phone width only the grid scrolls sideways, its first column stays, and what a thumb presses is 48 px high", async () => {
  await page.setViewportSize({ width: 360, height: 740 });
  await page.goto(`${site.base}/grow-outs/${ground.growOut}/plants`);
  await page.waitForLoadState("networkidle");
  const wide = await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);
  expect(wide).toBe(false);
  const frame = page.locator("[role=grid]").locator("..");
  await frame.evaluate((element) => element.scrollTo({ left: 200 }));
  const tag = page.locator('[role=grid] [data-row="0"][data-column="0"]');
  const [tagBox, frameBox] = [await tag.boundingBox(), await frame.boundingBox()];
  expect(Math.abs((tagBox?.x ?? 0) - (frameBox?.x ?? 0))).toBeLessThan(3);
  expect(tagBox?.height ?? 0).toBeGreaterThanOrEqual(48);
  for (const button of await page.getByRole("toolbar").getByRole("button").all())
    expect((await button.boundingBox())?.height ?? 0).toBeGreaterThanOrEqual(48);
});
