import type { Page } from "playwright-core";
import { percentSpan } from "@/lib/display/numbers";
import type { GerminationTest } from "@/lib/science/germination/germination-test";
import { awake, control, fill, follow, pick, says, status } from "./steward";
import type { TestTold } from "./worked-out";

/** Counts out and weighs portions of seed, from a lot's page and back to it. */
export async function weighSeeds(
  page: Page,
  weighed: readonly { readonly seeds: number; readonly grams: number }[],
  on: string,
): Promise<void> {
  await follow(page, "count and weigh seeds");
  const ordinals = ["First", "Second", "Third", "Fourth"];
  for (const [place, { seeds, grams }] of weighed.entries()) {
    await fill(page, { [`${ordinals[place]} portion`]: String(seeds) });
    await control(page, "weighs").nth(place).fill(String(grams));
  }
  await fill(page, { When: on });
  await page.getByRole("button", { name: "Take the seed weight from these" }).click();
  await page.waitForURL(/\/lots\/[0-9a-f-]{36}(#.*)?$/);
  await awake(page);
}

/** Types a germination test into its sheet; what it means stands beside it before it is stored. */
export async function enterTest(
  page: Page,
  { on, each, days, counts }: TestTold,
  read: GerminationTest,
): Promise<void> {
  await fill(page, {
    "Set up on": on,
    Replicates: String(counts.length),
    "Seeds in each": String(each),
    "Counted on days": days.join(", "),
  });
  await pick(page, "What is counted", "Normal seedlings");
  for (const [replicate, ofDays] of counts.entries())
    for (const [place, count] of ofDays.entries())
      await page.getByLabel(`Replicate ${replicate + 1}, day ${days[place]}, normal seedlings`).fill(String(count));
  const { low, high } = read.exact;
  const hundred = percentSpan(low, high).replace(/\s*%$/, "").replace("–", " and ");
  await says(status(page), `${read.normal} of ${read.sown} gave normal seedlings: between ${hundred} in a hundred.`);
}
