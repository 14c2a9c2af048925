// npm run pictures, npm run pictures -- NAME ...: the readme's pictures, or those named, taken of the built app over the demonstration. Not a test.
import { mkdirSync } from "node:fs";
import type { Page } from "playwright-core";
import { sameTapWithin } from "@/lib/field/tap-filter";
import { startBrowser } from "./browser";
import { startSite } from "./server";

const folder = "seed-scenario/pictures";
mkdirSync(folder, { recursive: true });

const site = await startSite();
const browser = await startBrowser();

/** Opens a record from its list by its name. */
async function open(page: Page, list: string, name: string): Promise<void> {
  await page.goto(`${site.base}${list}?filter=${encodeURIComponent(name)}`);
  await page.getByRole("link", { name, exact: true }).first().click();
  await page.waitForURL(new RegExp(`${list}/[0-9a-f-]{36}`));
}

/** Takes a grow-out along, and stands among its plants. */
async function toTheField(page: Page, name: string): Promise<void> {
  await open(page, "/grow-outs", name);
  await page.goto(`${site.base}/field#${page.url().split("/").at(-1)}`);
  await page.getByText("Ready with no signal.", { exact: false }).waitFor();
  await page.getByRole("button", { name: "To the plants" }).click();
  await page.getByRole("link", { name: /^Mark a plant/ }).waitFor();
  // what is tapped sooner is held to be water
  await page.waitForTimeout(sameTapWithin);
}

const asked = process.argv.slice(2);

const typed = [
  "1994, from my aunt's jar, about 40 plants, kept from 12, came up badly",
  "1995 nothing sown, the hens",
  "1996: from the 1994 seed, 60 plants, pulled 5 before pollen, same from each, got 300 g",
  "gave 50 g to Osk, 18 of 20 came up",
];

const pictures: readonly {
  name: string;
  width: number;
  height: number;
  ground: string;
  go: (page: Page) => Promise<unknown>;
}[] = [
  { name: "season", width: 1200, height: 800, ground: "day", go: (page) => page.goto(`${site.base}/season`) },
  { name: "lot", width: 1200, height: 1000, ground: "day", go: (page) => open(page, "/lots", "Thimble 36") },
  {
    name: "variety",
    width: 1200,
    height: 1100,
    ground: "day",
    go: (page) => open(page, "/varieties", "Thimblewright"),
  },
  {
    name: "stem-chart",
    width: 1200,
    height: 1000,
    ground: "day",
    go: async (page) => {
      await open(page, "/lots", "Night 35");
      await page.getByRole("link", { name: "trace it on the stem chart" }).click();
      await page.waitForURL(/\/lineage\?lot=/);
    },
  },
  { name: "lot-phone", width: 390, height: 844, ground: "glare", go: (page) => open(page, "/lots", "Night 30") },
  {
    name: "grow-out",
    width: 1200,
    height: 1250,
    ground: "day",
    go: (page) => open(page, "/grow-outs", "Night 2026 mill field"),
  },
  {
    name: "harvest",
    width: 1200,
    height: 900,
    ground: "day",
    go: async (page) => {
      await open(page, "/grow-outs", "Anvil 2014 weir garden");
      await page.locator("#harvested").evaluate((section) => section.scrollIntoView());
    },
  },
  {
    name: "neighbours",
    width: 1200,
    height: 1100,
    ground: "day",
    go: async (page) => {
      await open(page, "/grow-outs", "Night 2021 barn acre");
      await page.goto(`${page.url()}/neighbours`);
    },
  },
  {
    name: "choose",
    width: 1200,
    height: 1300,
    ground: "day",
    go: async (page) => {
      await open(page, "/grow-outs", "Night 2026 mill field");
      await page.goto(`${page.url()}/choose?keep=30`);
    },
  },
  {
    name: "field-phone",
    width: 390,
    height: 844,
    ground: "glare",
    go: async (page) => {
      await toTheField(page, "Night 2026 mill field");
      await page.getByRole("link", { name: /^Mark a plant/ }).click();
      await page.getByRole("button", { name: "Keep", exact: true }).click();
      await page.getByRole("heading", { name: /^tag / }).waitFor();
    },
  },
  {
    name: "choose-phone",
    width: 390,
    height: 844,
    ground: "day",
    go: async (page) => {
      await toTheField(page, "Night 2026 mill field");
      await page.getByRole("link", { name: /^Choose what to keep/ }).click();
      const cut = page.getByRole("heading", { name: "How many" });
      await cut.evaluate((heading) => window.scrollTo(0, heading.getBoundingClientRect().top + window.scrollY - 110));
    },
  },
  { name: "sharing-night", width: 1200, height: 900, ground: "night", go: (page) => page.goto(`${site.base}/sharing`) },
  {
    name: "type-in",
    width: 1200,
    height: 1000,
    ground: "day",
    go: async (page) => {
      await page.goto(`${site.base}/type-in`);
      await page.getByLabel("Variety").fill("Larder Flint");
      await page
        .getByRole("combobox", { name: "Crop" })
        .or(page.getByLabel("Crop"))
        .first()
        .fill("Maize, field and flour");
      for (const [place, line] of typed.entries()) {
        await page.getByRole("textbox", { name: new RegExp(`^Line ${place + 1}\\b`) }).fill(line);
        if (place < typed.length - 1) await page.keyboard.press("Enter");
      }
    },
  },
];

try {
  for (const { name, width, height, ground, go } of pictures) {
    if (asked.length > 0 && !asked.includes(name)) continue;
    const context = await browser.newContext({ viewport: { width, height } });
    await context.addCookies([{ name: "kinrow-ground", value: ground, url: site.base }]);
    const page = await context.newPage();
    await page.goto(site.base);
    const start = page.getByRole("button", { name: /demonstration/i });
    if (await start.count()) await start.click();
    else await context.addCookies([{ name: "kinrow-demonstration", value: "yes", url: site.base }]);
    await page.waitForLoadState("networkidle");
    await go(page);
    await page.waitForLoadState("networkidle");
    if (name !== "harvest" && name !== "choose-phone") await page.evaluate(() => window.scrollTo(0, 0));
    await page.waitForTimeout(600);
    await page.screenshot({ path: `${folder}/${name}.png` });
    console.log(`${folder}/${name}.png`);
    await context.close();
  }
} finally {
  await browser.close();
  await site.end();
}
