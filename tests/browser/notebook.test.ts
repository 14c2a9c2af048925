import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from "vitest";
import { bringFolderIn, chooseFolder } from "./bring-in";
import { startBrowser, watchErrors } from "./browser";
import { startSite, type TestSite } from "./server";

interface Expected {
  readonly lot: string;
  readonly variety: string;
  readonly holder: string;
  readonly gramsOnHand: number | null;
  readonly diversityRetained: number | null;
  readonly lastTest: { readonly germination: number; readonly low: number; readonly high: number } | null;
}

const expected = JSON.parse(readFileSync("tests/reference/notebook/expected.json", "utf8")) as Expected[];
const lot = (name: string) => expected.find((each) => each.lot === name) as Expected;
/** Text with every kind of blank as one plain blank. */
const plain = (text: string) => text.replace(/\s+/g, " ");
const percent = (share: number) => `${Math.round(share * 100)}`;

let browser: Browser;
let site: TestSite;
let page: Page;
let errors: string[];

beforeAll(async () => {
  site = await startSite();
  browser = await startBrowser();
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

it("an empty registry offers three ways in", async () => {
  await page.goto(site.base);
  const main = page.locator("main");
  await main.getByRole("link", { name: /bring/i }).first().waitFor();
  expect(await main.getByRole("link", { name: /type/i }).count()).toBeGreaterThan(0);
  expect(await main.getByRole("button", { name: /demonstration/i }).count()).toBe(1);
});

it("a folder with faults is refused with each fault's place, and nothing is written", async () => {
  await chooseFolder(page, site.base, "tests/reference/notebook-faulty");
  await page.getByRole("heading", { name: "24 faults" }).waitFor();
  const rows = await page.locator("main table").first().locator("tbody tr").allInnerTexts();
  const places = readFileSync("tests/reference/notebook-faulty/expected-faults.txt", "utf8").trim().split("\n");
  const found = rows.map((row) => row.trim().split(/\s+/).slice(0, 2).join(":"));
  expect(found.sort()).toEqual(places.sort());
  await page.goto(`${site.base}/lots`);
  expect(await page.locator("main tbody tr").count()).toBe(0);
});

it("a steward brings the notebook in and reads its numbers on the pages", async () => {
  await bringFolderIn(page, site.base, "tests/reference/notebook");
  await page.goto(`${site.base}/lots?filter=${encodeURIComponent("Dubi 33")}`);
  const row = page.locator("main tbody tr", { hasText: "Dubi 33" });
  const { gramsOnHand, lastTest, diversityRetained, holder } = lot("Dubi 33");
  const text = plain(await row.innerText());
  expect(text).toContain(holder);
  expect(text).toContain(`${gramsOnHand} g`);
  expect(text).toContain(`${percent(lastTest?.germination ?? 0)} %`);
  expect(text).toContain(`${percent(diversityRetained ?? 0)} %`);
  await row.getByRole("link", { name: "Dubi 33" }).click();
  await page.waitForURL(/\/lots\/[0-9a-f-]{36}/);
  const whole = plain(await page.locator("main").innerText());
  expect(whole).toContain(`${percent(lastTest?.low ?? 0)}–${percent(lastTest?.high ?? 0)} %`);
  expect(whole).toContain(`${percent(diversityRetained ?? 0)} % of the diversity`);
  expect(whole).toContain(`${gramsOnHand} g`);
});

it("a lot whose sizes nobody counted says unknown, or from what to what, not a number", async () => {
  const unknown = expected.find((each) => each.diversityRetained === null) as Expected;
  await page.goto(`${site.base}/lots?filter=${encodeURIComponent(unknown.lot)}`);
  await page.getByRole("link", { name: unknown.lot, exact: true }).first().click();
  await page.waitForURL(/\/lots\/[0-9a-f-]{36}/);
  expect((await page.locator("main").innerText()).toLowerCase()).toMatch(/unknown|\d+–\d+\s%/);
});

it("the same folder again changes nothing and says so", async () => {
  await chooseFolder(page, site.base, "tests/reference/notebook");
  await page.getByRole("heading", { name: "Nothing new" }).waitFor();
  expect(await page.getByRole("button", { name: /^Bring .* in$/ }).count()).toBe(0);
});

it("what was brought in outlives a kill of the server", async () => {
  await site.kill();
  await site.restart();
  await page.goto(`${site.base}/lots?filter=${encodeURIComponent("Dubi 33")}`);
  await page.locator("main tbody tr", { hasText: "Dubi 33" }).waitFor();
});

it("what was brought in is taken back by one action of the history, and everything is gone", async () => {
  await page.goto(`${site.base}/history`);
  await page
    .getByRole("link", { name: /Brought in/ })
    .first()
    .click();
  await page
    .getByRole("button", { name: /take .*back/i })
    .first()
    .click();
  const dialog = page.getByRole("dialog");
  await dialog.getByRole("button", { name: /take .*back/i }).click();
  await page.waitForLoadState("networkidle");
  await page.goto(`${site.base}/lots`);
  expect(await page.locator("main tbody tr").count()).toBe(0);
});

it("the demonstration is apart from the steward's records: a line says so on every page, and one action ends it", async () => {
  const line = page.getByRole("complementary", { name: "Demonstration" });
  await page.goto(site.base);
  await page.getByRole("button", { name: /demonstration/i }).click();
  await page.waitForURL(/\/season/);
  for (const place of ["/season", "/lots", "/varieties", "/tests"]) {
    await page.goto(site.base + place);
    await line.waitFor();
  }
  await page.goto(`${site.base}/lots`);
  expect(await page.locator("main tbody tr").count()).toBeGreaterThan(50);
  await line.getByRole("button", { name: "End it, and remove it" }).click();
  await page.waitForURL(`${site.base}/`);
  expect(await line.count()).toBe(0);
  await page.goto(`${site.base}/lots`);
  expect(await page.locator("main tbody tr").count()).toBe(0);
  expect(existsSync(path.join(site.folder, "demonstration.sqlite"))).toBe(false);
});
