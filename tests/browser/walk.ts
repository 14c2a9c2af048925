import type { Locator, Page } from "playwright-core";
import { open } from "./steward";

/** A walk through the pages: where the app is, the page in hand, and what was made on the way, each by its path. */
export interface Walk {
  readonly base: string;
  readonly page: Page;
  readonly at: { variety: string; founder: string; growOut: string; harvested: string };
}

/** What stands on the page beside its frame. */
export function main(page: Page): Locator {
  return page.locator("main");
}

export async function openAt({ page, base }: Walk, place: string): Promise<void> {
  await open(page, base + place);
}

/** A page of the walk's grow-out. */
export async function inGrowOut(walk: Walk, step: string): Promise<void> {
  await openAt(walk, `${walk.at.growOut}/${step}`);
}
