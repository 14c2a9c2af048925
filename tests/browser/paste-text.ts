import type { Page } from "playwright-core";

/** Pastes text into what has the focus, as a spreadsheet puts it on the clipboard. */
export async function pasteText(page: Page, text: string): Promise<void> {
  await page.evaluate((pasted) => {
    const data = new DataTransfer();
    data.setData("text/plain", pasted);
    const event = new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true });
    document.activeElement?.dispatchEvent(event);
  }, text);
}
