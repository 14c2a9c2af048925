import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

interface Finding {
  readonly id: string;
  readonly impact: string | null;
  readonly nodes: { readonly target: string[] }[];
}

/** What a page has against it that bars somebody from using it, once its script has had the time to name what can be moved. */
export async function seriousFindings(page: Page): Promise<string[]> {
  let found = await findingsNow(page);
  for (let look = 0; look < 10 && found.length > 0; look += 1) {
    await page.waitForTimeout(500);
    found = await findingsNow(page);
  }
  return found;
}

async function findingsNow(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  const findings = await page.evaluate(async () => {
    const run = (window as unknown as { axe: { run(options: object): Promise<{ violations: Finding[] }> } }).axe.run;
    return (await run({ resultTypes: ["violations"] })).violations;
  });
  return findings
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .map(
      ({ id, nodes }) =>
        `${id}: ${nodes
          .slice(0, 3)
          .map((node) => node.target.join(" "))
          .join(", ")}`,
    );
}

export const grounds = ["day", "night", "glare", "print"] as const;

/** Shows an open page in another of the grounds, as the choice kept for this device does at the next page; print is a medium. */
export async function changeGround(page: Page, ground: (typeof grounds)[number]): Promise<void> {
  await page.emulateMedia({ media: ground === "print" ? "print" : "screen" });
  await page.evaluate(
    (chosen) => {
      document.documentElement.dataset.ground = chosen;
    },
    ground === "print" ? "day" : ground,
  );
}

/** A context in one of the grounds; print is a medium, not a choice. What a page's own policy forbids it is told as an error. */
export async function inGround(
  browser: Browser,
  ground: string,
  base: string,
  options: BrowserContextOptions = {},
): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 }, ...options });
  await context.addInitScript(() =>
    document.addEventListener("securitypolicyviolation", (event) =>
      console.error(
        `the policy forbids ${event.effectiveDirective} ${event.blockedURI} ${event.sample} (${event.sourceFile}:${event.lineNumber}:${event.columnNumber})`,
      ),
    ),
  );
  await context.addCookies([{ name: "kinrow-ground", value: ground === "print" ? "day" : ground, url: base }]);
  const page = await context.newPage();
  if (ground === "print") await page.emulateMedia({ media: "print" });
  return page;
}
