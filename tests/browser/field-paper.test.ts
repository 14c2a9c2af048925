import path from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from "vitest";
import { readTagCode } from "@/lib/schemas/field/tag-code";
import { bringFolderIn } from "./bring-in";
import { startBrowser, watchErrors } from "./browser";
import { boxesOf, filmOf, firstTags, layOut, pictureOf, printed, scanned, typeSheetIn } from "./field-paper-walk";
import { addPlants, aGrowOutWithoutPlants, defineTraits, type Ground } from "./plants-grid-walk";
import { startSite, type TestSite } from "./server";
import { control, open, press } from "./steward";

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
  await defineTraits(first, ground);
  await addPlants(first, ground);
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

// A4 is 210 by 297 mm (ISO 216), Letter 8.5 by 11 inches of 25.4 mm; narrow-ruled paper has 6.35 mm between its lines.
for (const [paper, width, height] of [
  ["A4", 210, 297],
  ["Letter", 215.9, 279.4],
] as const) {
  it(`a field sheet of 60 plants is two pages of ${paper} with a head on each, and boxes that can be written in`, async () => {
    const sheets = await layOut(page, ground, 60, paper);
    expect(await sheets.count()).toBe(2);
    const out = await printed(page);
    expect(out.pages).toBe(2);
    expect(Math.abs(out.width - width)).toBeLessThan(0.5);
    expect(Math.abs(out.height - height)).toBeLessThan(0.5);
    const boxes = await boxesOf(page);
    expect(boxes.map((each) => each.heads)).toEqual([1, 1]);
    expect(boxes.reduce((sum, each) => sum + each.rows, 0)).toBe(60);
    for (const each of boxes) {
      expect(each.lowest).toBeGreaterThan(6.35);
      expect(each.narrowest).toBeGreaterThan(10);
    }
  });
}

it("the code in the head of a page leads back to its rows, in the order in which they lie", async () => {
  const sheets = await layOut(page, ground, 60, "A4");
  const second = await scanned(sheets.nth(1).getByRole("img", { name: /^Leads back/ }));
  const rows = (await boxesOf(page)).map((each) => each.rows);
  await page.goto(second);
  await page.waitForURL(/\/plants\?sheet=/);
  // Plants 1 to 12 are on record; the numbered rows go on from 13.
  const from = 13 + (rows[0] ?? 0);
  expect(await firstTags(page, 3)).toEqual([from, from + 1, from + 2].map(String));
  await page.getByText(`${rows[1]} rows stand first`).waitFor();
});

it("a sheet that came home is typed in with the day of the field, and a plant that was not there is added", async () => {
  await typeSheetIn(page, ground);
});

it("rows that are none are refused, with what would be right", async () => {
  await page.goto(`${site.base}/grow-outs/${ground.growOut}/plants?sheet=9:3`);
  await page.getByText(/"9:3" is no row of a sheet; write tags with full stops/).waitFor();
});

it("plant tags are printed with codes that say the tag, the next free ones first", async () => {
  await open(page, `${site.base}/grow-outs/${ground.growOut}/tags`);
  await control(page, "How many").fill("25");
  await press(page, "Lay them out");
  await page.waitForURL(/many=25/);
  const codes = page.getByRole("img", { name: /^Code of tag / });
  expect(await codes.count()).toBe(25);
  expect((await printed(page)).pages).toBe(2);
  const name = await codes.first().getAttribute("aria-label");
  const read = readTagCode(await scanned(codes.first()));
  expect(read.ok && `Code of tag ${read.value.tag}`).toBe(name);
});

it("a sheet’s code is read by the camera, and another code is refused from a photo", async () => {
  const sheets = await layOut(page, ground, 20, "A4");
  const address = await scanned(sheets.first().getByRole("img", { name: /^Leads back/ }));
  const film = path.join(site.folder, "camera.y4m");
  await filmOf(address, film);
  const watching = await startBrowser([
    "--use-fake-ui-for-media-stream",
    "--use-fake-device-for-media-stream",
    `--use-file-for-fake-video-capture=${film}`,
  ]);
  try {
    const desk = await (await watching.newContext({ viewport: { width: 390, height: 844 } })).newPage();
    await open(desk, `${site.base}/grow-outs/${ground.growOut}/plants`);
    await desk.getByText("A field sheet came home").click();
    const photo = desk.getByLabel("A photo of the sheet’s code");
    await photo.setInputFiles({
      ...{ name: "tag.png", mimeType: "image/png" },
      buffer: await pictureOf("KINROW:T22233123", 600),
    });
    await desk.getByText("is no code of a field sheet").waitFor();
    await press(desk, "Scan the sheet’s code");
    await desk.waitForURL(/\/plants\?sheet=/);
    await desk.getByText("20 rows stand first").waitFor();
  } finally {
    await watching.close();
  }
});
