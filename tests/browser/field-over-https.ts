import type { BrowserContext, Page } from "playwright-core";
import { expect } from "vitest";
import { sameTapWithin } from "@/lib/field/tap-filter";
import { countsOf, inRegistry } from "./field-ground";
import { Thumb, tapsOfPlant } from "./field-thumb";
import type { SharedSite } from "./shared-server";

/** Who takes the grow-out along: signs in where the page asks. */
export type SignIn = (at: Page) => Promise<void>;

/**
 * A helper takes a grow-out along over the shared address, records with no signal, and is signed out in the registry meanwhile. Back where it can be reached
 * the phone says so and keeps everything; once the helper has signed in again it goes in, each record once.
 */
export async function recordWhileSignedOut(
  site: SharedSite,
  context: BrowserContext,
  at: Page,
  growOutId: string,
  signIn: SignIn,
): Promise<void> {
  await at.goto(`/field#${growOutId}`);
  await at.getByText("Ready with no signal.", { exact: false }).waitFor();
  await at.getByRole("button", { name: "To the plants" }).click();
  await at.getByRole("link", { name: /^Mark a plant/ }).waitFor();
  await at.waitForTimeout(sameTapWithin);
  await context.setOffline(true);
  await at.goto(`/field#${growOutId}/mark`);
  const thumb = new Thumb(at);
  for (const number of [1, 2, 3]) await thumb.run(tapsOfPlant(number));
  const out = await inRegistry(site, (db) => db.write.session.deleteMany({ where: { user: { username: "teasel" } } }));
  expect(out.count).toBeGreaterThan(0);
  // three marks and four scores of each
  const waiting = at.locator("header").getByText("15 not yet in the registry", { exact: false });
  await waiting.waitFor();
  await context.setOffline(false);
  await at.goto("/field#phone");
  await at.getByText("your sign-in has run out", { exact: false }).waitFor();
  await waiting.waitFor();
  expect(await inRegistry(site, (db) => countsOf(db, growOutId))).toMatchObject({ marks: 0, records: 0 });
  await at.getByRole("link", { name: "Sign in again" }).click();
  await at.waitForURL((url) => url.pathname === "/sign-in");
  await signIn(at);
  await at.waitForURL((url) => url.pathname === "/field");
  await at.goto("/field#phone");
  await at.getByRole("heading", { name: "All is in the registry" }).waitFor();
  expect(await at.getByText("your sign-in has run out", { exact: false }).count()).toBe(0);
  const counts = await inRegistry(site, (db) => countsOf(db, growOutId));
  expect(counts).toMatchObject({ plants: 3, marks: 3, scores: 12, records: 15, taken: 15 });
}
