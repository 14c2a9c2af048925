import type { Browser } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect, it } from "vitest";
import { startBrowser, watchErrors } from "./browser";
import { startSite, type TestSite } from "./server";
import { clockAt } from "./steward";
import type { Walk } from "./walk";
import {
  count,
  enterFounder,
  flower,
  markPlants,
  neighbours,
  plan,
  rogue,
  sow,
  weighAndTestFounder,
} from "./year-in-field";
import { give, harvestPlants, newLot, testNewLot } from "./year-in-jar";

let browser: Browser;
let site: TestSite;
let walk: Walk;
let errors: string[];

beforeAll(async () => {
  site = await startSite(clockAt("2025-01-20T10:00:00Z"));
  browser = await startBrowser();
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, timezoneId: "UTC" });
  const page = await context.newPage();
  errors = watchErrors(page);
  walk = { base: site.base, page, at: { variety: "", founder: "", growOut: "", harvested: "" } };
});

afterAll(async () => {
  await browser?.close();
  await site?.end();
});

afterEach(() => {
  expect(errors).toEqual([]);
});

it("a variety and the lot it begins with are entered", () => enterFounder(walk));

it("its seeds are counted and weighed, and a test says what may be given and what is kept back", () =>
  weighAndTestFounder(walk));

it("a plan proposes plants and seeds, with what stays in the jar and in reserve", () => plan(walk));

it("it is sown: asked twice, and the ledger and the jar fall by just that", () => sow(walk));

it("counts bound the size as they are typed; what cannot be is refused, and a mistaken one is taken back in History", () =>
  count(walk));

it("a pass before pollen takes its rogues off the pollen parents; one after it finds none, which is not the same as not looked", () =>
  rogue(walk));

it("flowering is noted by pollen and silk, and the days in common are told", () => flower(walk));

it("a neighbour is looked for and found: the grade, the rule, and the share that may have come in", () =>
  neighbours(walk));

it("plants are marked and scored in the grid, by the keyboard and from a spreadsheet", () => markPlants(walk));

it("the harvest of marked plants shows the greedy mother, and what equal shares would have kept", () =>
  harvestPlants(walk));

it("the new lot says what it holds of the diversity, and claims its isolation", () => newLot(walk));

it("its seeds are weighed and tested, and what may be given follows", () => testNewLot(walk));

it("a gift keeps to the reserve: more is refused without a reason, and both ledgers say what was given", () =>
  give(walk));
