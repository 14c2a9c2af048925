import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { bringFolderIn } from "./bring-in";
import { startBrowser, watchErrors } from "./browser";
import { changeGround, grounds, inGround, seriousFindings } from "./findings";
import { fromTwoPhones } from "./from-two-phones";
import { handOver } from "./hand-over";
import { putPicture } from "./put-picture";
import { startSite, type TestSite } from "./server";

let browser: Browser;
let site: TestSite;
let empty: TestSite;
const pages = new Map<string, string>();

beforeAll(async () => {
  site = await startSite();
  empty = await startSite();
  browser = await startBrowser();
  const page = await browser.newPage();
  await bringFolderIn(page, site.base, "tests/reference/notebook");
  const linkTo = async (from: string, pattern: RegExp) => {
    await page.goto(site.base + from);
    const links = await page
      .locator("main a[href]")
      .evaluateAll((all) => all.map((each) => each.getAttribute("href") ?? ""));
    const found = links.find((href) => pattern.test(href) && !/\/(csv|export)\b|\/new$/.test(href));
    if (!found) throw new Error(`no link like ${pattern} on ${from}`);
    return found;
  };
  const named: [string, string][] = [
    ["season", "/season"],
    ["varieties", "/varieties"],
    ["a variety", await linkTo("/varieties", /^\/varieties\/[0-9a-f-]{36}$/)],
    ["lots", "/lots"],
    ["a lot", await linkTo("/lots", /^\/lots\/[0-9a-f-]{36}$/)],
    ["a new lot", "/lots/new"],
    ["germination tests", "/tests"],
    ["a germination test", await linkTo("/tests", /^\/tests\/[0-9a-f-]{36}$/)],
    ["a new test", "/tests/new"],
    ["grow-outs", "/grow-outs"],
    ["a grow-out", await linkTo("/grow-outs", /^\/grow-outs\/[0-9a-f-]{36}$/)],
    ["a new variety", "/varieties/new"],
    ["a new steward", "/stewards/new"],
    ["a crop", await linkTo("/crops", /^\/crops\/[^/]+$/)],
    ["typing a notebook in", "/type-in"],
    ["bringing files in", "/bring-in"],
    ["taking files out", "/take-out"],
    ["search", "/search?q=fold"],
    ["history", "/history"],
    ["an entry of the history", await linkTo("/history", /^\/history\/.+/)],
    ["settings", "/settings"],
    ["safe keeping", "/safe-keeping"],
    ["crops", "/crops"],
    ["methods", "/methods"],
    ["a method", "/methods/germination-test"],
    ["published tables", "/methods/tables"],
    ["a published table", "/methods/tables/pollen-models"],
    ["an own value in a table", "/methods/tables/pollen-models/own/maize-2dt/a"],
    ["stewards", "/stewards"],
    ["a steward", await linkTo("/stewards", /^\/stewards\/[0-9a-f-]{36}\/correct$/)],
    ["a page that is not there", "/nowhere"],
  ];
  for (const [name, place] of named) pages.set(name, place);
  const variety = pages.get("a variety")?.split("/").at(-1);
  pages.set("planning a grow-out", "/grow-outs/new");
  pages.set("a plan", `/grow-outs/new?variety=${variety}`);
  for (const step of ["sow", "correct", "plot", "end", "harvest", "count", "rogue", "flowering", "foreign-pollen"])
    pages.set(`a grow-out, ${step}`, `${pages.get("a grow-out")}/${step}`);
  for (const step of ["", "/new", "/looked", "/methods/new", "/claim"])
    pages.set(`neighbours of a grow-out${step}`, `${pages.get("a grow-out")}/neighbours${step}`);
  for (const step of ["plants", "plants?sheet=1:4.A*90:92", "plants/add", "choose", "sheet", "tags", "tags?kind=loop"])
    pages.set(`a grow-out, ${step}`, `${pages.get("a grow-out")}/${step}`);
  for (const step of ["", "/new", "/years"])
    pages.set(`traits of a variety${step}`, `/varieties/${variety}/traits${step}`);
  for (const step of ["", `?lot=${pages.get("a lot")?.split("/").at(-1)}&way=forward`])
    pages.set(`lineage of a variety${step === "" ? "" : ", followed"}`, `/varieties/${variety}/lineage${step}`);
  for (const step of [
    "diversity",
    "grown-otherwise",
    "grown-otherwise?plants=40&seedParents=12&every=2",
    "restore",
    "biography",
  ])
    pages.set(`a variety, ${step}`, `/varieties/${variety}/${step}`);
  const fromField = await fromTwoPhones(page, site.base, pages.get("a grow-out")?.split("/").at(-1) ?? "");
  pages.set("what came home from the field", fromField.home);
  pages.set("a record from the field", fromField.record ?? "");
  pages.set("one plant or two", fromField.same ?? "");
  pages.set("a phone's file", "/field/file");
  pages.set("blending lots", `/lots/blend?variety=${variety}`);
  pages.set("splitting a lot", `${pages.get("a lot")}/split`);
  for (const step of ["dry", "dry/moisture"]) pages.set(`a lot, ${step}`, `${pages.get("a lot")}/${step}`);
  const lot = pages.get("a lot") ?? "";
  const handedOver = await handOver(page, site.base, lot, "Perrin Vale");
  pages.set("sharing", "/sharing");
  pages.set("every hand-over", "/sharing/given");
  pages.set("taking seed in", "/sharing/take-in");
  pages.set("who holds a variety", `/sharing/holders/${variety}`);
  pages.set("giving from a lot", `${lot}/give`);
  pages.set("how a lot stands", `${lot}/status`);
  pages.set("what is told of a lot", `${lot}/claims/new`);
  pages.set("one lot or two", `${lot}/same`);
  for (const step of ["", "/new"]) pages.set(`kinship of founders${step}`, `/varieties/${variety}/kinship${step}`);
  for (const [part, name] of [
    ["", "a hand-over"],
    ["/slip", "a slip"],
    ["/correct", "putting a hand-over right"],
  ])
    pages.set(name ?? "", `${handedOver}${part}`);
  pages.set("adding pictures", `/pictures/new?of=lot&id=${lot.split("/").at(-1)}&refused=A+reason.`);
  pages.set("a picture", await putPicture(page, site.base, lot, "The jar on the sill"));
  await page.close();
});

afterAll(async () => {
  await browser?.close();
  await site?.end();
  await empty?.end();
});

/** What only leads on, and would be printed all the same. */
function leadingOnPaper(page: Page): Promise<string[]> {
  return page
    .locator(".not-on-paper")
    .evaluateAll((all) =>
      all
        .filter((each) => getComputedStyle(each).display !== "none")
        .map((each) => each.textContent?.slice(0, 40) ?? ""),
    );
}

describe("in the day, night and glare grounds, and on paper", () => {
  it("the first page of an empty registry has no serious fault", async () => {
    const page = await inGround(browser, "day", empty.base);
    await page.goto(empty.base);
    // with records it would lead on to the season; on paper its buttons are left out
    expect(page.url()).toBe(`${empty.base}/`);
    await page.locator("main h1").waitFor();
    const faults: string[] = [];
    for (const ground of grounds) {
      await changeGround(page, ground);
      faults.push(...(await seriousFindings(page)).map((fault) => `${ground}: ${fault}`));
    }
    await page.context().close();
    expect(faults).toEqual([]);
  });

  it("no page has a serious fault, and none is wider than a phone", { timeout: 1_200_000 }, async () => {
    const page = await inGround(browser, "day", site.base);
    const faults: string[] = [];
    const errors = watchErrors(page);
    for (const [name, place] of pages) {
      await page.goto(site.base + place);
      for (const ground of grounds) {
        await changeGround(page, ground);
        const found = await seriousFindings(page);
        const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
        if (ground !== "print" && over > 0) found.push(`${over} px wider than the screen`);
        if (ground === "print") found.push(...(await leadingOnPaper(page)).map((words) => `on paper: ${words}`));
        faults.push(...found.map((fault) => `${name}, ${ground}: ${fault}`));
      }
      // that a page is not there is said as an error, too
      const thrown = errors.splice(0).filter((error) => name !== "a page that is not there" || !/404/.test(error));
      faults.push(...thrown.map((error) => `${name}: ${error}`));
    }
    await page.context().close();
    expect(faults).toEqual([]);
  });
});
