import { readdirSync } from "node:fs";
import path from "node:path";
import type { Page } from "playwright-core";

/** Brings a folder of files in through the pages, as a steward does, up to the look before anything is written. */
export async function chooseFolder(page: Page, base: string, folder: string): Promise<void> {
  await page.goto(`${base}/bring-in`);
  const files = readdirSync(folder).filter((file) => file.endsWith(".csv"));
  await page.getByLabel("The files, or one zip of them").setInputFiles(files.map((file) => path.join(folder, file)));
  await page.getByRole("button", { name: "Look at them" }).click();
  await page.waitForURL(/\/bring-in\/[0-9a-f-]{36}$/);
}

/** The same, and the one confirm. */
export async function bringFolderIn(page: Page, base: string, folder: string): Promise<void> {
  await chooseFolder(page, base, folder);
  await page.getByRole("button", { name: /^Bring .* in$/ }).click();
  await page.waitForURL(/\/bring-in\/done\//);
}
