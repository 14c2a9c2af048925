import assert from "node:assert/strict";
import path from "node:path";
import { pathToFileURL } from "node:url";
import type { Locator, Page } from "playwright-core";

/*
 * What a steward does at a page, by what stands on it: labels, roles and words. Nothing here knows a class, an id or a field's inner name.
 */

/** The environment of a server whose clock begins at this moment. */
export function clockAt(moment: string): Record<string, string> {
  const clock = pathToFileURL(path.resolve("tests/browser/fixed-clock.mjs")).href;
  return { TEST_CLOCK: moment, NODE_OPTIONS: `--import ${clock}` };
}

/** Goes to a page and waits until it listens: what is typed before that is kept, but asks nothing. */
export async function open(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await awake(page);
}

/** Waits until every control of the page has its handlers. */
export async function awake(page: Page): Promise<void> {
  await page.locator("main h1").first().waitFor();
  await page.waitForFunction(() =>
    [...document.querySelectorAll("main :is(input:not([type=hidden]), select, textarea, button)")].every((control) =>
      Object.keys(control).some((key) => key.startsWith("__react")),
    ),
  );
}

/** A control by the words of its label; "(if known)" behind them is no part of its name. */
export function control(scope: Page | Locator, label: string): Locator {
  return scope.getByLabel(new RegExp(`^\\s*${escaped(label)}(\\s*\\(if known\\))?\\s*$`));
}

/** Types into fields and chooses in lists, by their labels in order. */
export async function fill(scope: Page | Locator, texts: Readonly<Record<string, string>>): Promise<void> {
  for (const [label, text] of Object.entries(texts)) {
    const field = control(scope, label);
    await field.waitFor();
    const list = await field.evaluate((element) => element instanceof HTMLSelectElement);
    if (list) await field.selectOption({ label: text });
    else await field.fill(text);
  }
}

/** Chooses one of a few that are all in sight, by its own words (a note may stand below them). */
export async function pick(scope: Page | Locator, legend: string, words: string): Promise<void> {
  const choices = group(scope, legend);
  const own = choices.page().getByText(words, { exact: true });
  await choices.locator("label").filter({ has: own }).getByRole("radio").check();
}

/** The fields under one name. */
export function group(scope: Page | Locator, legend: string): Locator {
  return scope.getByRole("group", { name: legend, exact: true });
}

/** A part of a page by its heading. */
export function section(page: Page, title: string): Locator {
  return page.getByRole("region", { name: title, exact: true });
}

/** What the page says of itself as one types, by its name where there are several. */
export function status(page: Page, name?: string): Locator {
  return page.getByRole("status", name === undefined ? {} : { name, exact: true });
}

/** Presses a button. */
export async function press(page: Page, button: string): Promise<void> {
  await page.getByRole("button", { name: button, exact: true }).click();
}

/** Presses a button that leads to another page, and waits for it. */
export async function sendTo(page: Page, button: string, address: RegExp): Promise<string> {
  await press(page, button);
  await page.waitForURL((url) => address.test(url.pathname));
  await awake(page);
  return new URL(page.url()).pathname;
}

/** Follows a link by its words. */
export async function follow(page: Page, words: string | RegExp, scope: Page | Locator = page): Promise<string> {
  const link = scope.getByRole("link", { name: words, exact: typeof words === "string" }).first();
  const href = await link.getAttribute("href");
  assert.ok(href, `a link ${words}`);
  await link.click();
  await page.waitForURL((url) => url.pathname === new URL(href, page.url()).pathname);
  await awake(page);
  return new URL(page.url()).pathname;
}

/** Presses the button of an act, reads what is asked, and says yes. Answers the words of the question. */
export async function askedTwice(page: Page, button: string, yes: string): Promise<string> {
  await press(page, button);
  const dialog = page.getByRole("dialog");
  await dialog.waitFor();
  const words = await wordsOf(dialog);
  await dialog.getByRole("button", { name: yes, exact: true }).click();
  return words;
}

/** The words of a part of the page, every kind of blank as one plain blank. */
export async function wordsOf(scope: Locator): Promise<string> {
  return plain(await scope.innerText());
}

/** Words as they are compared: every kind of blank as one plain blank. */
export function plain(words: string): string {
  return words.replace(/\s+/g, " ").trim();
}

/** Waits until a part of the page has these words, and tells what stands there where it has not. */
export async function says(scope: Locator, words: string): Promise<void> {
  const sought = plain(words);
  const found = async () => (await scope.allInnerTexts()).some((text) => plain(text).includes(sought));
  for (let attempt = 0; attempt < 1600; attempt += 1) {
    if (await found()) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  assert.fail(`“${sought}” does not stand in: ${plain((await scope.allInnerTexts()).join(" | "))}`);
}

function escaped(words: string): string {
  return words.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
}
