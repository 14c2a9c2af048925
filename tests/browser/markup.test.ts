import { mkdtempSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { routeOfPath } from "@/lib/access/routes";
import { columnNames, openDatabase, registryLocation, tableNames } from "@/lib/db";
import { prepareRegistry } from "@/lib/registry/open-registry";
import { loadScenario } from "@/seed-scenario/load-scenario";
import { startBrowser, watchErrors } from "./browser";
import { startSite, type TestSite } from "./server";

/** What somebody could write into any field so that it runs in another's browser. Each name is its own, so that what ran tells where it was let through. */
const payload = `<img src=x onerror="window.ran='img'">"><script>window.ran='script'</script><svg onload=window.ran='svg'>'-window.ran-'</script></title></textarea><a href="javascript:window.ran=1">`;
const link = "javascript:window.ran='link'";

/** Columns in which people write words. Ids, days, numbers and chosen words are held by the shapes and checks. */
const words =
  /^(name|note|notes|words|reason|place|contact|address|story|typeDescription|aim|cautions|rights|donorNumber|number|origin|statusReason|yearWords|difference|teller|about|source|sources|evidence|conditions|other|toWords|what|told|caption|title|actor|commonName|latinName|family|trait|allowed|offType|soil|windExposure|building|treatmentSubstance|isolationReasons|thinnedBy|keptFrom|answer|sentence|unit|wording|tag|cell|text)$/;

let site: TestSite;
let browser: Browser;
let written = 0;
const folder = mkdtempSync(path.join(os.tmpdir(), "kinrow-markup-"));

beforeAll(async () => {
  const location = registryLocation({ ...process.env, KINROW_DATA: folder, KINROW_DATABASE: "" });
  const db = await prepareRegistry(location);
  await loadScenario(db, ownerHere());
  await db.close();
  const plain = await openDatabase(location);
  for (const table of tableNames) {
    for (const column of columnNames(table).filter((each) => words.test(each))) {
      const what = column === "source" || column === "sources" || column === "contact" ? link : payload;
      // What the table's own checks refuse can hold no markup either.
      written += await plain.write
        .$executeRawUnsafe(
          `UPDATE "${table}" SET "${column}" = "${column}" || ? WHERE typeof("${column}") = 'text'`,
          what,
        )
        .catch(() => 0);
    }
  }
  await plain.close();
  site = await startSite({}, folder);
  browser = await startBrowser();
});

afterAll(async () => {
  await browser?.close();
  await site?.end();
});

it("what people wrote is shown as they wrote it, and is markup on no page", { timeout: 900_000 }, async () => {
  expect(written).toBeGreaterThan(1000);
  const page = await browser.newPage();
  const errors = watchErrors(page);
  await page
    .context()
    .addInitScript(() =>
      document.addEventListener("securitypolicyviolation", (event) =>
        console.error(
          `the policy forbids ${event.effectiveDirective} ${event.blockedURI} ${event.sample} (${event.sourceFile}:${event.lineNumber}:${event.columnNumber})`,
        ),
      ),
    );
  const seen = new Map<string, string>();
  const waiting = ["/season", "/varieties", "/lots", "/grow-outs", "/tests", "/sharing", "/sharing/given", "/stewards"];
  waiting.push("/history", "/crops", "/settings", "/take-out", "/search?q=onerror", "/methods/tables", "/lots/new");
  const faults: string[] = [];
  let shown = 0;
  for (let place = waiting.shift(); place !== undefined; place = waiting.shift()) {
    const route = routeOfPath(place) ?? "none";
    if (seen.has(route) || /csv|export|\/take-out\/folder|\/pictures\//.test(place)) continue;
    seen.set(route, place);
    const answer = await page.goto(site.base + place);
    if (answer?.status() !== 200) faults.push(`${place}: ${answer?.status()}`);
    const html = (await answer?.text()) ?? "";
    if (/<img src=x|<svg onload=|<script>window|href="javascript:/.test(html))
      faults.push(`${place}: markup in the page`);
    const found = await page.evaluate(() => ({
      ran: (window as unknown as { ran?: string }).ran ?? null,
      markup: document.querySelectorAll("[onerror], [onload], a[href^='javascript:' i], img[src='x']").length,
      shown: document.body.innerText.includes("onerror=") || document.body.innerText.includes("javascript:window"),
      links: [...document.querySelectorAll("main a[href^='/']")].map((each) => each.getAttribute("href") ?? ""),
    }));
    if (found.ran !== null || found.markup > 0) faults.push(`${place}: ${JSON.stringify({ ...found, links: 0 })}`);
    if (found.shown) shown += 1;
    waiting.push(...found.links.map((each) => each.split("#")[0] ?? each));
    faults.push(...errors.splice(0).map((error) => `${place}: ${error}`));
  }
  await page.close();
  expect(faults).toEqual([]);
  expect(seen.size).toBeGreaterThan(60);
  expect(shown).toBeGreaterThan(40);
});
