import type { Page } from "playwright-core";

/** Gives one gram of a lot to a new steward through its form, asked twice, as a person would. Answers the path of the hand-over's page. */
export async function handOver(page: Page, base: string, lotPath: string, to: string): Promise<string> {
  await page.goto(`${base}${lotPath}/give`);
  // what is typed before the page has woken is not asked about
  await page.waitForFunction(() =>
    Object.keys(document.querySelector("#field-amount") ?? {}).some((key) => key.startsWith("__react")),
  );
  await page.locator("input[name=kind][value=gift]").check();
  await page.locator("#field-newHolder").fill(to);
  await page.locator("#field-amount").fill("1");
  for (const box of await page.locator('#field-told input[type="checkbox"]').all()) await box.check();
  const reason = page.locator("#field-override");
  if (await reason.isVisible()) await reason.fill("a second keeper before the winter");
  await page.getByRole("button", { name: "Hand it over" }).click();
  await page.getByRole("button", { name: "It is handed over" }).click();
  await page.waitForURL(/\/sharing\/[0-9a-f-]{36}$/);
  return new URL(page.url()).pathname;
}
