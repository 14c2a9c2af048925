import type { Page } from "playwright-core";
import { uuidv7 } from "uuidv7";

/** A mark as a phone sends it. */
function mark(deviceId: string, sequence: number, growOutId: string, name: string, on: string) {
  const plant = { id: uuidv7(), name, cell: null, row: "3", position: 14 };
  return {
    ...{ id: uuidv7(), deviceId, sequence, growOutId, on, recordedAt: `${on}T09:30:00.000Z`, recordedOffset: 0 },
    ...{ stewardId: null, kind: "mark" },
    body: { plant, tag: name, intent: "keep", words: "stands straight", fate: null, replaces: null },
  };
}

/**
 * Two phones send what they marked in a grow-out: one plant at one place on both, and one on a day that has not come. Answers where each question is
 * settled. The page must be one of the registry's.
 */
export async function fromTwoPhones(page: Page, base: string, growOutId: string) {
  await page.goto(`${base}/field/came-home`);
  for (const [name, marks] of [
    [
      "Reed",
      [
        ["12", "2026-08-01"],
        ["13", "2091-01-05"],
      ],
    ],
    ["Sedge", [["40", "2026-08-01"]]],
  ] as const) {
    const id = uuidv7();
    const records = marks.map(([tag, on], place) => mark(id, place + 1, growOutId, tag, on));
    const delivery = { device: { id, name }, sentAt: new Date().toISOString(), records };
    const status = await page.evaluate(async (body) => {
      const headers = { "content-type": "application/json" };
      return (await fetch("/field/records", { method: "POST", headers, body })).status;
    }, JSON.stringify(delivery));
    if (status !== 200) throw new Error(`the registry answered ${status} to what a phone sent`);
  }
  await page.goto(`${base}/field/came-home?growOut=${growOutId}`);
  const address = (name: string) => page.getByRole("link", { name, exact: true }).first().getAttribute("href");
  return {
    home: `/field/came-home?growOut=${growOutId}`,
    record: await address("Settle it"),
    same: await address("One plant, or two"),
  };
}
