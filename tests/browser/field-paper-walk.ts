import assert from "node:assert/strict";
import { writeFileSync } from "node:fs";
import type { Locator, Page } from "playwright-core";
import { create } from "qrcode";
import sharp from "sharp";
import { codeInPicture } from "@/components/scanner/decode";
import type { Ground } from "./plants-grid-walk";
import { control, open, pick, press } from "./steward";

const cell = (page: Page, row: number, column: number) =>
  page.locator(`[role=grid] [data-row="${row}"][data-column="${column}"]`);

/** Lays out a field sheet of so many numbered rows, on a paper, and answers its pages. */
export async function layOut(page: Page, { base, growOut }: Ground, rows: number, paper: string): Promise<Locator> {
  await open(page, `${base}/grow-outs/${growOut}/sheet`);
  await pick(page, "Down the sheet", "Numbered rows");
  await control(page, "How many").fill(String(rows));
  await control(page, "Size").selectOption({ label: paper });
  await press(page, "Lay it out");
  await page.waitForURL(/asked=yes/);
  const pages = page.getByRole("region", { name: /^Field sheet, page / });
  await pages.first().waitFor();
  return pages;
}

/** How many pages come out of the printer, and their size in millimetres. */
export async function printed(page: Page): Promise<{ pages: number; width: number; height: number }> {
  const text = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
  const pages = text.match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
  const [, width, height] = /\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)/.exec(text) ?? [];
  const millimetres = (points: string | undefined) => (Number(points) / 72) * 25.4;
  return { pages, width: millimetres(width), height: millimetres(height) };
}

/** The rows of boxes on each page as they are printed: their height and the narrowest column, in millimetres. */
export async function boxesOf(
  page: Page,
): Promise<{ heads: number; rows: number; lowest: number; narrowest: number }[]> {
  await page.emulateMedia({ media: "print" });
  const found = await page.locator("main section table").evaluateAll((tables) =>
    tables.map((table) => {
      const lines = [...table.querySelectorAll("tbody tr")];
      const sizes = lines.map((line) => line.getBoundingClientRect().height);
      const widths = [...table.querySelectorAll("thead th")].map((head) => head.getBoundingClientRect().width);
      const millimetre = 96 / 25.4;
      return {
        heads: table.querySelectorAll("thead tr").length,
        rows: lines.length,
        lowest: Math.min(...sizes) / millimetre,
        narrowest: Math.min(...widths) / millimetre,
      };
    }),
  );
  await page.emulateMedia({ media: null });
  return found;
}

/** What a code on the page says, read from a picture of it as a camera would. */
export async function scanned(code: Locator): Promise<string> {
  const { data, info } = await sharp(await code.screenshot())
    .resize({ width: 480 })
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const text = codeInPicture({ data: new Uint8ClampedArray(data), width: info.width, height: info.height });
  assert.ok(text, "a code that can be read");
  return text;
}

/** The tags of the grid's first rows. */
export async function firstTags(page: Page, rows: number): Promise<string[]> {
  await cell(page, rows - 1, 0).waitFor();
  return Promise.all(
    Array.from({ length: rows }, async (_, row) =>
      (await cell(page, row, 0).locator("span").first().innerText()).trim(),
    ),
  );
}

/** Types a page in that came home: rows 12, 3, 4 and 301, of which the last is not on record, with the day of the field. */
export async function typeSheetIn(page: Page, { base, growOut }: Ground): Promise<void> {
  await open(page, `${base}/grow-outs/${growOut}/plants`);
  await page.getByText("A field sheet came home").click();
  await control(page, "Its rows").fill("12.3:4.301");
  await press(page, "Type it in");
  await page.waitForURL(/sheet=/);
  assert.deepEqual(await firstTags(page, 5), ["12", "3", "4", "301", "1"]);
  const seenOn = page.getByLabel("Seen on");
  assert.equal(await seenOn.inputValue(), "", "the day of the field is asked for, not today");
  await seenOn.fill("2024-08-25");
  const heads = await page.getByRole("columnheader").allInnerTexts();
  const column = heads.findIndex((head) => head.trim() === "vigour");
  await cell(page, 0, column).click();
  for (const step of ["8", "6", "3", "5"]) {
    await page.keyboard.type(step);
    await page.keyboard.press("Enter");
  }
  await press(page, "Store 5 cells");
  await page.getByText("Stored: 1 plant, 4 scores").waitFor();
  assert.deepEqual(await firstTags(page, 5), ["12", "3", "4", "301", "1"]);
  const table = await (await page.request.get(`${base}/grow-outs/${growOut}/plants-csv`)).text();
  const lines = table.split("\r\n");
  const vigour = (lines[0] ?? "").split(",").indexOf("vigour");
  const scoreOf = (tag: string) => lines.find((line) => line.startsWith(`${tag},`))?.split(",")[vigour];
  assert.deepEqual(["12", "4", "301"].map(scoreOf), ["8", "3", "5"]);
}

/** A picture of a code, black on white. */
export async function pictureOf(text: string, side: number): Promise<Buffer> {
  const { modules } = create(text, { errorCorrectionLevel: "M" });
  const squares = Array.from(modules.data, (dark, place) =>
    dark ? `<rect x="${place % modules.size}" y="${Math.floor(place / modules.size)}" width="1" height="1"/>` : "",
  );
  const box = `-8 -8 ${modules.size + 16} ${modules.size + 16}`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${box}" width="${side}" height="${side}"><rect x="-8" y="-8" width="100" height="100" fill="white"/>${squares.join("")}</svg>`;
  return sharp(Buffer.from(svg)).png().toBuffer();
}

/** A film of one picture, as the browser's stand-in for a camera plays it (YUV4MPEG2, 4:2:0). */
export async function filmOf(text: string, file: string): Promise<void> {
  const [width, height] = [640, 480];
  const code = await pictureOf(text, height);
  const data = await sharp({ create: { width, height, channels: 3, background: "white" } })
    .composite([{ input: code }])
    .greyscale()
    .raw()
    .toBuffer();
  const words = new TextEncoder();
  const frame = [words.encode("FRAME\n"), new Uint8Array(data), new Uint8Array((width * height) / 2).fill(128)];
  const head = words.encode(`YUV4MPEG2 W${width} H${height} F10:1 Ip A1:1 C420jpeg\n`);
  writeFileSync(file, new Uint8Array(await new Blob([head, ...Array(10).fill(frame).flat()]).arrayBuffer()));
}
