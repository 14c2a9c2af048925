import assert from "node:assert/strict";
import type { Page } from "playwright-core";
import { pasteText } from "./paste-text";
import { awake, open, press, says, section } from "./steward";

/** Where the app is, and a grow-out with no plants. */
export interface Ground {
  readonly base: string;
  readonly growOut: string;
  readonly variety: string;
}

/*
 * Heights of twelve plants in three cells, by hand: deviations 8 1 −6 −3 | 0 8 −6 −2 | 8 −3 2 −7. Ears: means 1.5, 1.25 and 1.5, so that plant 4 stands
 * 1.5 above its cell, 6 stands 0.75, and 11 and 12 both 0.5. Plant 13 stands alone.
 */
const scored: readonly (readonly [string, string, number, number])[] = [
  ["1", "A", 182, 1],
  ["2", "A", 175, 1],
  ["3", "A", 168, 1],
  ["4", "A", 171, 3],
  ["5", "B", 150, 1],
  ["6", "B", 158, 2],
  ["7", "B", 144, 1],
  ["8", "B", 148, 1],
  ["9", "C", 201, 1],
  ["10", "C", 190, 1],
  ["11", "C", 195, 2],
  ["12", "C", 186, 2],
  ["13", "Z", 300, 9],
];

/** Defines two traits of which high is good, and pastes the plants with their scores. */
export async function bringScoresIn(page: Page, { base, growOut, variety }: Ground): Promise<void> {
  for (const [name, kind, unit] of [
    ["stature", /^Measured/, "cm"],
    ["cobs", /^Counted/, null],
  ] as const) {
    await open(page, `${base}/varieties/${variety}/traits/new`);
    await page.getByLabel("What is looked at").fill(name);
    await page.getByRole("radio", { name: kind }).check();
    if (unit) await page.getByLabel("Unit").fill(unit);
    await page.getByLabel("Which end is good").selectOption("higher");
    await page.getByRole("button", { name: "Define the trait" }).click();
    await page.waitForURL(/\/traits$/);
  }
  await open(page, `${base}/grow-outs/${growOut}/plants`);
  await press(page, "One more plant");
  await page.getByLabel("Seen on").fill("2024-08-20");
  await page.locator('[role=grid] [data-row="0"][data-column="0"]').click();
  const lines = scored.map((cells) => cells.join("\t"));
  await pasteText(page, ["tag\tcell\tstature, cm\tcobs", ...lines].join("\r\n"));
  await page.getByRole("button", { name: /^Put [\d,]+ cells in$/ }).click();
  await page.getByRole("button", { name: /^Store [\d,]+ cells$/ }).click();
  await page.getByText(/^Stored: 13 plants/).waitFor({ timeout: 60_000 });
}

const list = (page: Page) => section(page, "The plants, ranked");

/** The tags of the plants that are kept, in the order of the list. */
export async function kept(page: Page): Promise<string[]> {
  return list(page).locator('tr[data-standing="kept"]').getByRole("rowheader").allInnerTexts();
}

async function keptBecome(page: Page, tags: readonly string[]): Promise<void> {
  let now: string[] = [];
  for (let attempt = 0; attempt < 100; attempt += 1) {
    now = await kept(page);
    if (now.join() === tags.join()) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  assert.deepEqual(now, tags);
}

/** The cut is typed, the weights are moved by the arrow keys; ties, what cannot be compared and the floor are told. */
export async function weighAndCut(page: Page, { base, growOut }: Ground): Promise<void> {
  await open(page, `${base}/grow-outs/${growOut}/choose`);
  const many = page.getByRole("slider", { name: "How many to keep" });
  await page.getByRole("spinbutton", { name: "How many to keep, as a number" }).fill("3");
  assert.equal(await many.inputValue(), "3");
  const cobs = page.getByRole("slider", { name: "cobs", exact: true });
  await cobs.focus();
  await page.keyboard.press("Home");
  await keptBecome(page, ["1", "6", "9"]);
  await says(section(page, "What counts"), "100 % of what counts");
  // Each stands 8 cm above its neighbours, and seed parents give half: at most 4 cm.
  await says(section(page, "What it may bring"), "+8 cm");
  await says(section(page, "What it may bring"), "0 to +4 cm");
  await says(section(page, "How many"), "this year would be a bottleneck");
  await says(list(page), "could not be compared: alone in its cell");
  await says(section(page, "Where they stand"), "The kept stand in 3 of 4 cells. None is kept in Z.");
  await page.keyboard.press("End");
  await page.getByRole("slider", { name: "stature", exact: true }).focus();
  await page.keyboard.press("Home");
  await keptBecome(page, ["4", "6"]);
  await says(section(page, "How many"), "1 place is left for 2 plants that stand alike");
}

/** A plant is left out, not without a reason; the address tells all of it to whoever opens it. */
export async function leaveOutAndReload(page: Page): Promise<void> {
  await list(page).getByRole("button", { name: "Leave out plant 6" }).click();
  await page.keyboard.press("Enter");
  await says(list(page), "Nothing stands here; say why");
  await page.keyboard.type("smut");
  await page.keyboard.press("Enter");
  await keptBecome(page, ["4", "11", "12"]);
  await page.waitForFunction(() => window.location.search.includes("smut"));
  await page.reload();
  await awake(page);
  await keptBecome(page, ["4", "11", "12"]);
  await says(list(page), "left out: smut");
  await page.getByLabel("Seeds wanted in all").fill("180");
  await page.keyboard.press("Tab");
  await says(section(page, "Alike from each"), "Take 60 seeds from each of the 3 plants");
}

/** The marks are written once it is confirmed, and stand; all of it is one entry. */
export async function keepThem(page: Page, { base, growOut }: Ground): Promise<void> {
  const keep = section(page, "Keep these");
  await says(keep, "3 plants become keep and 1 left out by hand gets its reason and becomes watch.");
  await press(page, "Keep these");
  const dialog = page.getByRole("dialog", { name: "Keep 3 plants?" });
  await dialog.getByLabel("Chosen on").fill("2024-09-01");
  await dialog.getByRole("button", { name: "Write the marks" }).click();
  await says(keep, "Stored: 4 marks.");
  await says(keep, "All of them are marked keep already: nothing would change.");
  const table = await (await page.request.get(`${base}/grow-outs/${growOut}/plants-csv`)).text();
  const intents = Object.fromEntries(
    table
      .trim()
      .split("\r\n")
      .slice(1)
      .map((line) => line.split(",").slice(0, 2)),
  );
  assert.deepEqual(
    Object.keys(intents).filter((tag) => intents[tag] === "keep"),
    ["4", "11", "12"],
  );
  assert.equal(intents["6"], "watch");
  assert.ok(table.includes("left out: smut"), "the reason stands in the words of the mark");
  await keep.getByRole("link", { name: "It can be taken back" }).click();
  await page.waitForURL(/\/history\//);
}
