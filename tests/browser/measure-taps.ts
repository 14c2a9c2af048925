// npx tsx tests/browser/measure-taps.ts: from a tap among the plants until it is safely stored, in a browser that is slowed four times. Not a test.
import { mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { startPhone } from "./browser";
import { withFieldGround } from "./field-ground";
import { Thumb, tapsOfPlant } from "./field-thumb";
import { startSite } from "./server";

const warmingUp = 20;
const measured = 200;
/** Milliseconds within which nineteen of twenty taps have to be stored. */
const most = 50;

declare global {
  interface Window {
    storedAfter: number[];
  }
}

const folder = mkdtempSync(path.join(os.tmpdir(), "kinrow-phone-"));
const site = await startSite();
const { growOutId } = await withFieldGround(site);
const phone = await startPhone(folder);
try {
  const page = phone.pages()[0] ?? (await phone.newPage());
  await page.addInitScript(() => {
    window.storedAfter = [];
    let tapped = 0;
    document.addEventListener("click", (event) => (tapped = event.timeStamp), true);
    new PerformanceObserver((list) => {
      for (const { startTime } of list.getEntriesByName("field record stored"))
        window.storedAfter.push(startTime - tapped);
    }).observe({ type: "mark" });
  });
  await page.goto(`${site.base}/field#${growOutId}`);
  await page.getByRole("button", { name: "To the plants" }).click();
  // in the field there is no signal: nothing is sent in between
  await site.kill();
  await phone.setOffline(true);
  const slowed = await phone.newCDPSession(page);
  await slowed.send("Emulation.setCPUThrottlingRate", { rate: 4 });
  await page.goto(`${site.base}/field#${growOutId}/mark`);
  const thumb = new Thumb(page);
  for (let number = 1; (await page.evaluate(() => window.storedAfter.length)) < warmingUp + measured; number += 1)
    await thumb.run(tapsOfPlant(number));
  const taps = await page.evaluate(() => window.storedAfter);
  const sorted = taps.slice(warmingUp, warmingUp + measured).sort((a, b) => a - b);
  const at = (share: number) => (sorted[Math.ceil(share * sorted.length) - 1] ?? Number.NaN).toFixed(1);
  console.log(
    `tap to stored, 4 times slowed, ${sorted.length} taps after ${warmingUp}: median ${at(0.5)} ms, p95 ${at(0.95)} ms (at most ${most}), longest ${at(1)} ms`,
  );
  if (Number(at(0.95)) > most) process.exitCode = 1;
} finally {
  await phone.close();
  await site.end();
  rmSync(folder, { recursive: true, force: true });
}
