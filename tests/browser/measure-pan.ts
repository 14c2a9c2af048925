// npx tsx tests/browser/measure-pan.ts: the script of a frame while the stem chart of six hundred lots is moved, on a phone 360 px wide and at a desk. Not a test.
import type { CDPSession, Page } from "playwright-core";
import { startBrowser } from "./browser";
import { withManyLots } from "./many-lots";
import { startSite } from "./server";

/** Milliseconds of script in a frame. */
const most = 8;
const frames = 120;

interface Measured {
  readonly frames: number;
  readonly p95: number;
  readonly longest: number;
}

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly ts: number;
  /** microseconds by the clock, and of the processor: what other programs took is not the page's */
  readonly dur?: number;
  readonly tdur?: number;
  readonly tid: number;
  readonly pid: number;
}

/** Stands once in the trace where a frame is handed on to be drawn. */
const frameEnds = "BeginCommitCompositorFrame";

const script = new Set([
  "EventDispatch",
  "FireAnimationFrame",
  "TimerFire",
  "FunctionCall",
  "RunMicrotasks",
  "v8.callFunction",
]);

/** Script of the page's own thread between one frame and the next, in milliseconds. */
function scriptOfFrames(events: readonly TraceEvent[]): Measured {
  const own = events.filter(({ name }) => name === frameEnds || script.has(name));
  const counts = new Map<number, number>();
  for (const { name, tid } of own) if (name === frameEnds) counts.set(tid, (counts.get(tid) ?? 0) + 1);
  const main = [...counts].sort(([, one], [, other]) => other - one)[0]?.[0];
  const ofMain = own.filter(({ tid }) => tid === main).sort((one, other) => one.ts - other.ts);
  const starts = ofMain.filter(({ name }) => name === frameEnds).map(({ ts }) => ts);
  const sums = new Array<number>(starts.length + 1).fill(0);
  let until = 0;
  let at = 0;
  for (const { name, ts, dur = 0, tdur = dur } of ofMain) {
    while (at < starts.length && (starts[at] ?? 0) <= ts) at += 1;
    // What stands inside a longer one is counted with it.
    if (name === frameEnds || ts < until) continue;
    until = ts + dur;
    sums[at] = (sums[at] ?? 0) + tdur / 1000;
  }
  const sorted = sums.slice(1).sort((one, other) => one - other);
  return {
    frames: sorted.length,
    p95: sorted[Math.ceil(0.95 * sorted.length) - 1] ?? Number.NaN,
    longest: sorted.at(-1) ?? Number.NaN,
  };
}

async function measured(page: Page, client: CDPSession, move: (frame: number) => Promise<void>): Promise<Measured> {
  const events: TraceEvent[] = [];
  const collect = ({ value }: { value: object[] }) => events.push(...(value as TraceEvent[]));
  client.on("Tracing.dataCollected", collect);
  await page.waitForTimeout(1500);
  const done = new Promise<void>((resolve) => client.once("Tracing.tracingComplete", () => resolve()));
  await client.send("Tracing.start", {
    categories: "devtools.timeline,devtools.timeline.frame,disabled-by-default-devtools.timeline,v8",
    transferMode: "ReportEvents",
  });
  for (let frame = 0; frame < frames; frame += 1) await move(frame);
  await client.send("Tracing.end");
  await done;
  client.off("Tracing.dataCollected", collect);
  return scriptOfFrames(events);
}

const site = await startSite();
const browser = await startBrowser();
try {
  const id = await withManyLots(site);
  const rows: { readonly what: string; readonly found: Measured }[] = [];
  for (const [what, width, traced, hand] of [
    ["360 px, a thumb", 360, false, "thumb"],
    ["360 px, a thumb, one lot traced", 360, true, "thumb"],
    ["360 px, a mouse over it", 360, false, "mouse"],
    ["1440 px, a mouse over it, one lot traced", 1440, true, "mouse"],
  ] as const) {
    const context = await browser.newContext({ viewport: { width, height: 800 }, hasTouch: hand === "thumb" });
    const page = await context.newPage();
    await page.goto(`${site.base}/varieties/${id}/lineage?zoom=5`, { waitUntil: "networkidle" });
    const marks = page.locator("[data-lot]");
    if (traced) await marks.nth(400).dispatchEvent("click");
    const frame = page.locator("[data-lot]").first().locator("xpath=ancestor::div[2]");
    await frame.scrollIntoViewIfNeeded();
    const box = await frame.boundingBox();
    if (!box) throw new Error("the chart is not there");
    const client = await context.newCDPSession(page);
    const [x, y] = [box.x + box.width / 2, box.y + Math.min(200, box.height / 2)];
    if (hand === "thumb") {
      const before = await frame.evaluate((element) => element.scrollLeft);
      const touch = (type: "touchStart" | "touchMove" | "touchEnd", points: { x: number; y: number }[]) =>
        client.send("Input.dispatchTouchEvent", { type, touchPoints: points });
      const found = await measured(page, client, async (turn) => {
        const stroke = turn % 20;
        if (stroke === 0) await touch("touchStart", [{ x: x - 80, y }]);
        await touch("touchMove", [{ x: x - 80 + 8 * stroke, y }]);
        if (stroke === 19) await touch("touchEnd", []);
      });
      if ((await frame.evaluate((element) => element.scrollLeft)) === before) throw new Error("it did not move");
      rows.push({ what, found });
    } else {
      await page.mouse.move(x, y);
      const found = await measured(page, client, async (turn) => {
        await page.mouse.wheel(turn < frames / 2 ? -60 : 60, 0);
        await page.mouse.move(x + ((turn * 23) % 160) - 80, y + ((turn * 17) % 120) - 60);
      });
      rows.push({ what, found });
    }
    await context.close();
  }
  for (const { what, found } of rows) {
    console.log(
      `${what}: script of a frame p95 ${found.p95.toFixed(1)} ms, longest ${found.longest.toFixed(1)} ms (at most ${most}), ${found.frames} frames`,
    );
    if (found.p95 > most) process.exitCode = 1;
  }
} finally {
  await browser.close();
  await site.end();
}
