import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import os from "node:os";
import path from "node:path";
import { gzipSync } from "node:zlib";
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { sameTapWithin } from "@/lib/field/tap-filter";
import { startPhone, watchErrors } from "./browser";
import { countsOf, inRegistry, withFieldGround } from "./field-ground";
import { Thumb, tapsOfPlant } from "./field-thumb";
import { startSite, type TestSite } from "./server";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
/** The first page of the field may load so much script, gzipped, in bytes. */
const mostScript = 170_000;

let site: TestSite;
let growOutId: string;
const folders: string[] = [];
const phones: BrowserContext[] = [];

beforeAll(async () => {
  site = await startSite();
  ({ growOutId } = await withFieldGround(site));
});

afterAll(async () => {
  for (const phone of phones) await phone.close();
  await site?.end();
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

async function newPhone(folder = mkdtempSync(path.join(os.tmpdir(), "kinrow-phone-"))) {
  if (!folders.includes(folder)) folders.push(folder);
  const phone = await startPhone(folder);
  phones.push(phone);
  const page = phone.pages()[0] ?? (await phone.newPage());
  return { phone, page, folder };
}

const inField = (what = "") => `${site.base}/field#${growOutId}${what === "" ? "" : `/${what}`}`;

/** Takes the grow-out along from its page at the desk, until it is ready with no signal. */
async function takeAlong(page: Page): Promise<void> {
  await page.goto(`${site.base}/grow-outs/${growOutId}`);
  await page.getByRole("link", { name: "Take to the field" }).click();
  await page.getByText("Ready with no signal.", { exact: false }).waitFor();
  await page.getByRole("button", { name: "To the plants" }).click();
  await page.getByRole("link", { name: /^Mark a plant/ }).waitFor();
  // no thumb is faster; what comes sooner is held to be water
  await page.waitForTimeout(sameTapWithin);
}

const status = (page: Page) => page.locator("header").getByRole("link", { name: /registry|recorded here/ });

/** One of the passes: at which stage, and how many were pulled as weak. */
async function walkPass(page: Page, thumb: Thumb, stage: string, weak: number): Promise<void> {
  await page.goto(inField("pass"));
  await thumb.tap(thumb.button(stage));
  await thumb.tap(thumb.button("before pollen shed"));
  // not looked is not none found: how many were looked at belongs to it
  await thumb.tap(thumb.button(/^Plants looked at/));
  for (const figure of ["9", "6", "So many"]) await thumb.tap(thumb.button(figure));
  for (let each = 0; each < weak; each += 1) await thumb.tap(thumb.button("One more pulled: weak"));
  await thumb.tap(thumb.button(weak === 0 ? "Walked, found none" : `Record the pass: ${weak} pulled`));
  await page.getByRole("link", { name: /^Mark a plant/ }).waitFor();
}

describe("a day among the plants with no signal", () => {
  it("is in the registry once, whatever happened to the phone, the server and the answers", {
    timeout: 1_200_000,
  }, async () => {
    const { phone, page, folder } = await newPhone();
    await takeAlong(page);
    await site.kill();
    await phone.setOffline(true);
    await page.goto(`${site.base}/field`);

    // from the opening of the field to the first stored mark: three taps
    const thumb = new Thumb(page);
    await thumb.tap(page.getByRole("link", { name: /^Larkhouse Flint/ }));
    await thumb.tap(page.getByRole("link", { name: /^Mark a plant/ }));
    const [first = "", ...rest] = tapsOfPlant(1);
    await thumb.tap(thumb.asked(first));
    await status(page).filter({ hasText: "1 not yet in the registry, since" }).waitFor();
    expect(thumb.taps).toBe(3);

    await thumb.run(rest);
    const before = thumb.taps;
    for (let number = 2; number <= 40; number += 1) await thumb.run(tapsOfPlant(number));
    expect((thumb.taps - before) / 39).toBeLessThanOrEqual(6);
    await status(page).filter({ hasText: "200 not yet" }).waitFor();

    // what rings in between leads back to the same plant
    await page.reload();
    await page.getByRole("heading", { name: "next tag 41" }).waitFor();
    for (let number = 41; number <= 60; number += 1) {
      await page.goto(inField("mark"));
      await thumb.tap(thumb.asked("Keep"));
      await page.getByRole("heading", { name: `tag ${number}`, exact: true }).waitFor();
    }
    await walkPass(page, thumb, "seedling", 0);
    await walkPass(page, thumb, "leaf", 3);
    await walkPass(page, thumb, "before flower", 1);

    await page.goto(inField("harvest"));
    for (const tag of [1, 2, 3]) await thumb.tap(thumb.button(`${tag}: taken in`));
    await thumb.tap(thumb.button("5: lost"));
    await thumb.tap(thumb.button("eaten"));
    await thumb.tap(thumb.button("This harvest is done"));
    await thumb.tap(thumb.button("equal seeds"));
    // 60 marks, 160 scores, 3 passes, 4 plants taken in or lost, and the harvest
    const all = /^228 not yet in the registry/;
    await status(page).getByText(all).waitFor();
    await page.reload();
    await status(page).getByText(all).waitFor();
    await phone.close();

    const { phone: again, page: later } = await newPhone(folder);
    await again.setOffline(true);
    await later.goto(`${site.base}/field`);
    await status(later).getByText(all).waitFor();
    await later.getByRole("link", { name: /60 plants marked/ }).waitFor();

    // the registry comes back; it takes the first heap in, and its answer is lost on the way
    await site.restart();
    await later.evaluate(() => {
      const honest = window.fetch;
      window.fetch = async (...asked) => {
        const answer: Response = await Reflect.apply(honest, window, asked);
        if (asked[0] !== "/field/records") return answer;
        document.title = `${answer.status}, and its answer is lost`;
        throw new TypeError("Failed to fetch");
      };
    });
    await again.setOffline(false);
    await expect.poll(() => later.title(), { timeout: 300_000 }).toBe("200, and its answer is lost");
    await later.goto(`${site.base}/field#phone`);
    await later.reload();
    await later.getByRole("heading", { name: "All is in the registry" }).waitFor({ timeout: 300_000 });
    await site.kill();
    const counts = await inRegistry(site, (db) => countsOf(db, growOutId));
    await site.restart();
    expect(counts).toMatchObject({ plants: 60, marks: 60, scores: 160, passes: 3, harvests: 1, records: 228 });
    await again.close();
  });
});

describe("a choice among the plants with no signal", () => {
  it("ranks them on the phone, and its marks go in like any other", async () => {
    const { phone, page } = await newPhone();
    await takeAlong(page);
    await phone.setOffline(true);
    const errors = watchErrors(page);
    await page.goto(inField("choose"));
    // nobody wrote in which cell a plant stands
    await page.getByText("Of no plant it is written in which cell it stands").waitFor();
    await page.getByLabel(/^Compare plants with their neighbours/).uncheck();
    await page.getByRole("spinbutton", { name: "How many to keep, as a number" }).fill("9");
    const list = page.getByRole("region", { name: "The plants, ranked" });
    await expect.poll(() => list.locator('tr[data-standing="kept"]').count()).toBeGreaterThan(0);
    const kept = await list.locator('tr[data-standing="kept"]').getByRole("rowheader").allInnerTexts();
    // 40 plants are scored 1 to 9 in turn: four got 9 and four 8, and those of 7 share the last place, so none of them is kept
    expect(kept.length).toBe(8);
    const thumb = new Thumb(page);
    await thumb.tap(thumb.button("Keep these"));
    await thumb.tap(page.getByRole("dialog").getByRole("button", { name: "Write the marks" }));
    const stored = page.getByText(/^Stored: \d+ marks? on this phone/);
    await stored.waitFor();
    const marks = Number(/\d+/.exec((await stored.textContent()) ?? "")?.[0]);
    await status(page)
      .filter({ hasText: `${marks} not yet in the registry` })
      .waitFor();
    await phone.setOffline(false);
    await page.goto(`${site.base}/field#phone`);
    await page.getByRole("heading", { name: "All is in the registry" }).waitFor({ timeout: 300_000 });
    await site.kill();
    const keeps = await inRegistry(site, async (db) => {
      const all = await db.read.mark.findMany({ where: { plant: { growOutId } } });
      const replaced = new Set(all.map((mark) => mark.replacesId));
      return all.flatMap(({ id, intent, tag }) => (replaced.has(id) || intent !== "keep" ? [] : [tag]));
    });
    await site.restart();
    expect(keeps.filter((tag) => kept.includes(tag ?? "")).length).toBe(kept.length);
    await phone.close();
    expect(errors.filter((error) => !error.includes("Failed to load resource"))).toEqual([]);
  });
});

describe("the field page", () => {
  it("loads no more script at first than a slow phone bears", async () => {
    const { phone, page } = await newPhone();
    const sizes = new Map<string, Promise<number>>();
    page.on("response", (response) => {
      if (response.request().resourceType() !== "script" || response.url().endsWith("/sw.js")) return;
      sizes.set(
        response.url(),
        response.body().then((body) => gzipSync(new Uint8Array(body), { level: 9 }).length),
      );
    });
    await page.goto(`${site.base}/field`, { waitUntil: "networkidle" });
    await page.getByRole("heading", { name: "On this phone" }).waitFor();
    const script = (await Promise.all(sizes.values())).reduce((sum, size) => sum + size, 0);
    await phone.close();
    console.log(`first field page: ${(script / 1000).toFixed(1)} kB of script, gzipped, in ${sizes.size} files`);
    expect(script).toBeLessThanOrEqual(mostScript);
    expect(script).toBeGreaterThan(10_000);
  });

  it("takes a mark back for a minute, by an event, and the tag is free again", async () => {
    const { phone, page } = await newPhone();
    await takeAlong(page);
    const errors = watchErrors(page);
    const thumb = new Thumb(page);
    await page.goto(inField("mark"));
    const heading = await page.getByRole("heading", { name: /^next tag / }).textContent();
    await thumb.tap(thumb.asked("Pull"));
    await thumb.tap(page.getByRole("button", { name: /^Take back: .*pull$/ }));
    await page.getByRole("heading", { name: heading ?? "" }).waitFor();
    await page.goto(`${site.base}/field#phone`);
    await page.getByRole("heading", { name: "All is in the registry" }).waitFor({ timeout: 300_000 });
    await phone.close();
    expect(errors).toEqual([]);
  });

  it("holds back a tap that lands twice", async () => {
    const { phone, page } = await newPhone();
    await takeAlong(page);
    await page.goto(inField("mark"));
    const thumb = new Thumb(page);
    await thumb.tap(thumb.asked("Keep"));
    const seven = await thumb.asked("7").boundingBox();
    await page.waitForTimeout(300);
    // the second lands on what has come under the thumb meanwhile
    await page.mouse.click((seven?.x ?? 0) + 20, (seven?.y ?? 0) + 20);
    await page.mouse.click((seven?.x ?? 0) + 20, (seven?.y ?? 0) + 20);
    await page
      .getByRole("button", { name: /^vigour/ })
      .getByText("7")
      .waitFor();
    expect(await page.getByRole("button", { name: /not looked$/ }).count()).toBe(3);
    await phone.close();
  });
});

const screens = ["", "mark", "plants", "pass", "count", "flowering", "harvest", "choose", "type"];

describe.each(["day", "night", "glare"])("in the %s ground", (ground) => {
  it("no screen of the field has a serious fault, is wider than a small phone, or has a target under 48 px", async () => {
    const { phone, page } = await newPhone();
    await phone.addCookies([{ name: "kinrow-ground", value: ground, url: site.base }]);
    await page.setViewportSize({ width: 320, height: 640 });
    await takeAlong(page);
    const faults: string[] = [];
    const errors = watchErrors(page);
    for (const place of [`${site.base}/field#`, `${site.base}/field#phone`, ...screens.map(inField)]) {
      await page.goto(place);
      await page.getByRole("heading", { level: 1 }).waitFor();
      const found = await faultsOf(page);
      faults.push(...found.map((fault) => `${place.split("#")[1]}: ${fault}`));
    }
    // figures are typed on keys of the page, which are as wide as it
    await page.goto(inField("count"));
    await page.getByRole("button", { name: "After thinning" }).click();
    await page.getByRole("button", { name: "Record the count" }).waitFor();
    faults.push(...(await faultsOf(page)).map((fault) => `count, figures: ${fault}`));
    await phone.close();
    expect([...faults, ...errors]).toEqual([]);
  });
});

interface Finding {
  readonly id: string;
  readonly impact: string | null;
  readonly nodes: { readonly target: string[] }[];
}

async function faultsOf(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  const findings = await page.evaluate(async () => {
    const run = (window as unknown as { axe: { run(options: object): Promise<{ violations: Finding[] }> } }).axe.run;
    return (await run({ resultTypes: ["violations"] })).violations;
  });
  const serious = findings
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .map(
      ({ id, nodes }) =>
        `${id}: ${nodes
          .slice(0, 3)
          .map((node) => node.target.join(" "))
          .join(", ")}`,
    );
  const small = await page.evaluate(() =>
    [
      ...document.querySelectorAll(
        "button, a[href], input:not([type=checkbox]):not([type=radio]):not([type=file]), textarea",
      ),
    ].flatMap((each) => {
      const { width, height } = each.getBoundingClientRect();
      return width > 0 && each.checkVisibility() && (width < 47.5 || height < 47.5)
        ? [`${each.textContent?.trim().slice(0, 20)} is ${Math.round(width)} by ${Math.round(height)}`]
        : [];
    }),
  );
  const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  return [...serious, ...small, ...(over > 0 ? [`${over} px wider than the screen`] : [])];
}
