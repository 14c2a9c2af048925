import assert from "node:assert/strict";
import type { Page } from "playwright-core";

/** What the walk needs: where the app is, and a grow-out with no plants. */
export interface Ground {
  readonly base: string;
  readonly growOut: string;
  readonly variety: string;
}

/** A grow-out of the registry that has no plants yet. */
export async function aGrowOutWithoutPlants(on: Page, base: string): Promise<Ground> {
  await on.goto(`${base}/grow-outs`);
  const links = await on
    .locator("main a[href]")
    .evaluateAll((all) => all.map((each) => each.getAttribute("href") ?? ""));
  for (const href of links.filter((each) => /^\/grow-outs\/[0-9a-f-]{36}$/.test(each))) {
    await on.goto(`${base}${href}/plants`);
    if ((await on.locator("[role=grid] [data-row]").count()) > 0) continue;
    const variety = await on.locator('main a[href^="/varieties/"]').first().getAttribute("href");
    return { base, growOut: href.split("/").at(-1) ?? "", variety: variety?.split("/")[2] ?? "" };
  }
  throw new Error("no grow-out without plants");
}

const cell = (page: Page, row: number, column: number) =>
  page.locator(`[role=grid] [data-row="${row}"][data-column="${column}"]`);
const textOf = async (page: Page, row: number, column: number) =>
  (await cell(page, row, column).locator("span").first().innerText()).trim();

/** The column of a trait or field, by its name. */
async function columnNamed(page: Page, name: string): Promise<number> {
  const names = await page.getByRole("columnheader").allInnerTexts();
  const found = names.findIndex((each) => each.trim() === name);
  assert.ok(found >= 0, `a column ${name} among ${names.join(", ")}`);
  return found;
}

/** Defines a scale with words, a yes or no, and a measure for the variety. */
export async function defineTraits(page: Page, { base, variety }: Ground): Promise<void> {
  const define = async (name: string, kind: RegExp, fill: () => Promise<void>) => {
    await page.goto(`${base}/varieties/${variety}/traits/new`);
    await page.waitForLoadState("networkidle");
    await page.getByLabel("What is looked at").fill(name);
    await page.getByRole("radio", { name: kind }).check();
    await fill();
    await page.getByRole("button", { name: "Define the trait" }).click();
    await page.waitForURL(/\/traits$/);
    await page.getByRole("link", { name, exact: true }).first().waitFor();
  };
  await define("vigour", /^Scored on a scale/, async () => {
    await page.getByLabel("What the steps mean").fill("1 = weak\n9 = strong");
    await page.getByLabel("Which end is good").selectOption("higher");
  });
  await define("silk red", /^Yes, no or not looked/, async () => {});
  await define("height", /^Measured/, async () => {
    await page.getByLabel("Unit").fill("cm");
  });
}

/** Adds plants 1 to 12, four in a cell. */
export async function addPlants(page: Page, { base, growOut }: Ground): Promise<void> {
  await page.goto(`${base}/grow-outs/${growOut}/plants/add`);
  await page.waitForLoadState("networkidle");
  await page.getByLabel("From").fill("1");
  await page.getByLabel("To", { exact: false }).first().fill("12");
  await page.getByLabel("Cell", { exact: false }).first().fill("A");
  await page.getByLabel("Plants in a cell").fill("4");
  await page.getByLabel("When").fill("2024-07");
  await page.getByRole("button", { name: "Add the plants" }).click();
  await page.waitForURL(/\/plants$/);
  await cell(page, 11, 0).waitFor();
}

/** Types with the keyboard alone: over, with F2, Escape, fill down, undo, a step that the scale has not. */
export async function typeScores(page: Page): Promise<void> {
  await page.getByLabel("Seen on").fill("2024-08-20");
  const vigour = await columnNamed(page, "vigour");
  const silk = await columnNamed(page, "silk red");
  await cell(page, 0, vigour).click();
  await page.keyboard.type("7");
  await page.keyboard.press("Enter");
  await page.keyboard.type("strong");
  await page.keyboard.press("Enter");
  assert.equal(await textOf(page, 0, vigour), "7");
  assert.equal(await textOf(page, 1, vigour), "9");
  await page.keyboard.type("12");
  await page.keyboard.press("Tab");
  assert.equal(await cell(page, 2, vigour).getAttribute("aria-invalid"), "true");
  await page.getByText("is no step of 1 to 9").first().waitFor();
  await cell(page, 2, vigour).click();
  await page.keyboard.press("F2");
  await page.keyboard.press("Backspace");
  await page.keyboard.press("Backspace");
  await page.keyboard.type("4");
  await page.keyboard.press("Enter");
  assert.equal(await textOf(page, 2, vigour), "4");
  await page.keyboard.type("8");
  await page.keyboard.press("Escape");
  assert.equal(await textOf(page, 3, vigour), "");
  await cell(page, 2, vigour).click();
  await page.keyboard.press("Shift+ArrowDown");
  await page.keyboard.press("Shift+ArrowDown");
  await page.keyboard.press("Control+d");
  assert.deepEqual([await textOf(page, 3, vigour), await textOf(page, 4, vigour)], ["4", "4"]);
  await page.keyboard.press("Control+z");
  assert.equal(await textOf(page, 3, vigour), "");
  await page.keyboard.press("Control+y");
  assert.equal(await textOf(page, 3, vigour), "4");
  await cell(page, 0, silk).click();
  for (const answer of ["y", "n", "-"]) {
    await page.keyboard.type(answer);
    await page.keyboard.press("ArrowDown");
  }
  assert.deepEqual(
    [await textOf(page, 0, silk), await textOf(page, 1, silk), await textOf(page, 2, silk)],
    ["yes", "no", "not looked"],
  );
}

/** Pastes 200 rows of four cells as a spreadsheet puts them on the clipboard, with one cell in quotes and one that is refused. */
export async function pasteCells(page: Page): Promise<void> {
  const lines = ["tag\tintent\theight, cm\twords"];
  for (let tag = 1; tag <= 200; tag += 1) {
    const words = tag === 3 ? '"stood the gale\nwith ""two"" ears"' : "";
    lines.push(
      [String(tag), tag <= 20 ? "keep" : "watch", tag === 5 ? "tall" : `${150 + (tag % 40)},5`, words].join("\t"),
    );
  }
  await cell(page, 0, 0).click();
  await page.evaluate((text) => {
    const data = new DataTransfer();
    data.setData("text/plain", text);
    document.activeElement?.dispatchEvent(
      new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }),
    );
  }, lines.join("\r\n"));
  const dialog = page.getByRole("dialog");
  await dialog.getByText("188 plants would be added").waitFor();
  await dialog.getByText(/refused: "tall" is no number of cm/).waitFor();
  await dialog.getByRole("button", { name: /^Put [\d,]+ cells in$/ }).click();
  const height = await columnNamed(page, "height, cm");
  assert.equal(await textOf(page, 0, height), "151.5");
  assert.equal(await textOf(page, 4, height), "");
}

/** What is typed outlives a reload, and is stored as one entry. */
export async function storeAll(page: Page): Promise<void> {
  await page.waitForLoadState("networkidle");
  await page.reload();
  await page.getByText("stands here again").waitFor();
  assert.equal(await textOf(page, 0, await columnNamed(page, "vigour")), "7");
  await page.getByRole("button", { name: /^Store [\d,]+ cells$/ }).click();
  await page.getByText("Stored: 188 plants, 200 marks").waitFor({ timeout: 60_000 });
  await page.getByRole("link", { name: "It can be taken back" }).waitFor();
  await page.getByRole("button", { name: "Nothing to store" }).waitFor();
}

/** The grow-out's page counts what was marked, and the table that goes out has the scores. */
export async function readBack(page: Page, { base, growOut }: Ground): Promise<void> {
  await page.goto(`${base}/grow-outs/${growOut}`);
  const section = page.locator("#plants");
  await section
    .getByText(/20 keep/)
    .first()
    .waitFor();
  const table = await (await page.request.get(`${base}/grow-outs/${growOut}/plants-csv`)).text();
  const [head, first, second] = table.split("\r\n");
  assert.match(head ?? "", /plant,intent,cell,.*vigour,silk_red,height/);
  assert.match(first ?? "", /^1,keep,A,.*7,yes,151\.5/);
  assert.match(second ?? "", /^2,keep,A,.*9,no,152\.5/);
  assert.equal(table.trim().split("\r\n").length, 201);
  assert.ok(table.includes('"stood the gale\nwith ""two"" ears"'), "a line break and quotes came through");
}
