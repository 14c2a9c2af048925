import type { Page } from "playwright-core";
import { halves } from "../registry/photos/pictures";

/** Puts a picture to a record by the page's own form; gives the address of the picture's page. */
export async function putPicture(page: Page, base: string, record: string, caption: string): Promise<string> {
  await page.goto(base + record);
  await page.getByRole("link", { name: "add pictures" }).click();
  const buffer = await halves(640, 480).jpeg().toBuffer();
  await page.getByLabel("The pictures").setInputFiles({ name: "pods.jpg", mimeType: "image/jpeg", buffer });
  await page.getByLabel("What they show").fill(caption);
  await page.getByRole("button", { name: "Add them" }).click();
  await page.getByRole("link", { name: caption }).click();
  await page.getByRole("heading", { name: caption, level: 1 }).waitFor();
  await page.waitForFunction(() => [...document.images].every((image) => image.complete && image.naturalWidth > 0));
  return new URL(page.url()).pathname;
}
