import { rmSync } from "node:fs";
import type { Browser } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect, it } from "vitest";
import { dateInWords } from "@/lib/display/dates";
import {
  effectiveSize,
  grams,
  kOfN,
  percent,
  plainNumber,
  seedsAbout,
  seedsCounted,
  span,
} from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { windowDays } from "@/lib/science/isolation/flowering-window";
import { isolationGrade } from "@/lib/science/isolation/isolation-grade";
import { expectedFlower, founderFolder, parents, size, sowing, told } from "./biennial-of-carrot";
import { bringFolderIn } from "./bring-in";
import { startBrowser, watchErrors } from "./browser";
import { startSite, type TestSite } from "./server";
import {
  askedTwice,
  clockAt,
  control,
  fill,
  follow,
  group,
  pick,
  plain,
  press,
  says,
  section,
  sendTo,
  status,
  wordsOf,
} from "./steward";
import { inGrowOut, main, openAt, type Walk } from "./walk";
import { lineageOf, sizeOf, windowOf } from "./worked-out";

let browser: Browser;
let site: TestSite;
let walk: Walk;
let errors: string[];

beforeAll(async () => {
  site = await startSite(clockAt("2024-01-20T10:00:00Z"));
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

const { crop, founder, growOut, plots, harvested } = told;
const aGrowOut = /\/grow-outs\/[0-9a-f-]{36}$/;

/** Writes down one count of a stage. */
async function count(stage: string, plants: number, on: string, more: Record<string, string> = {}): Promise<void> {
  await inGrowOut(walk, "count");
  await fill(group(walk.page, stage), { Plants: String(plants), On: on, ...more });
  await press(walk.page, "Write the counts down");
  await says(status(walk.page), `Written down: ${plants}`);
}

/** What it would count as before seed is taken, kept alike from all that may stand, and from those meant for seed. */
function bounds(standing: number): string[] {
  const all = sizeOf(crop, { pollenParents: standing, seedParents: standing });
  const meant = sizeOf(crop, { pollenParents: standing, seedParents: told.seedParents });
  return [
    `up to ${effectiveSize(all.effectiveSize)}`,
    `from the ${told.seedParents} meant for seed, ${effectiveSize(meant.effectiveSize)};`,
  ];
}

it("the founder lot comes in as a small folder; the plan says that it flowers in its second year", async () => {
  const { page, at } = walk;
  const folder = founderFolder();
  await bringFolderIn(page, site.base, folder);
  rmSync(folder, { recursive: true });
  await openAt(walk, "/varieties");
  at.variety = await follow(page, told.variety);
  at.founder = await follow(page, founder.number, section(page, "Lots"));
  await follow(page, "Plan a grow-out from it");
  await says(main(page), "It flowers in its second year.");
  await fill(page, { "What it is called": growOut, "Who grows it": told.steward, Plot: plots.first });
  await fill(page, { "Plants wanted": String(told.plantsWanted), "Seed to be kept from": String(told.seedParents) });
  await says(main(page), `For ${counted(told.plantsWanted, "plant")} sow ${seedsCounted(sowing.seeds)}`);
  await says(main(page), `which weigh ${grams(sowing.sown)}. ${grams(sowing.left)} stay in the jar.`);
  const stay = `${seedsAbout(sowing.seedsLeft)} of its good lots stay, ${seedsCounted(sowing.keptBack.seeds)} are to be kept back.`;
  await says(main(page), `The reserve is not touched: ${stay}`);
  at.growOut = await sendTo(page, "Plan it", aGrowOut);
  await says(
    section(page, "The line of its life"),
    `Flowering ${crop.daysToFlowerMin} to ${crop.daysToFlowerMax} days`,
  );
});

it("in the first year it is sown, thinned, rogued of what bolts, and its roots are lifted", async () => {
  const { page, at } = walk;
  await inGrowOut(walk, "sow");
  await fill(page, { When: told.sown });
  await press(page, `Take ${seedsCounted(sowing.seeds)}`);
  await askedTwice(page, "Sow it", "It is sown: write it down");
  await page.waitForURL(aGrowOut);
  await count("Up", told.up, "2022-06-02");
  await count("After thinning", told.thinned, "2022-06-20", { Thinned: "by vigour" });
  await inGrowOut(walk, "rogue");
  await fill(page, { "Walked on": "2022-08-15", "At the stage": "leaf", "Plants looked at": String(told.thinned) });
  await fill(page, { "Early or late": String(told.bolters) });
  await pick(page, "Had pollen flown?", "Before pollen shed");
  await press(page, "Write the walk down");
  await says(status(page), "Written down: 15 August 2022");
  await count("Roots lifted", told.lifted, "2022-10-20");
  await openAt(walk, at.growOut);
  const seen = section(page, "Counted, pulled and in flower");
  for (const words of bounds(told.lifted)) await says(seen, words);
  await says(seen, `${kOfN(told.up, sowing.seeds)}`);
  await says(seen, `${kOfN(told.lifted, told.thinned)} left after thinning`);
  const life = section(page, "The line of its life");
  await says(life, `Roots lifted 20 October 2022 , on record ${counted(told.lifted, "plant")}`);
  await says(life, `Flowering expected ${expectedFlower}`);
  await openAt(walk, at.founder);
  await says(section(page, "Ledger"), `−${grams(sowing.sown)} (${seedsCounted(sowing.seeds)}) ${grams(sowing.left)}`);
});

it("in the second year the roots are replanted on another plot, and flower there", async () => {
  const { page, at } = walk;
  await inGrowOut(walk, "plot?replanted=yes");
  const there = section(page, "Replanted on another plot");
  await fill(there, { Plot: plots.second, "its rough place": "Orrebeck" });
  await fill(there, { [`Left ${plots.first} on`]: "2022-10-20", "Stands there from": "2023-03-25" });
  await sendTo(page, "It stands there now", aGrowOut);
  const stood = `${plots.first}, until 20 October 2022; ${plots.second}, Orrebeck, from 25 March 2023`;
  await says(section(page, "How it was grown"), stood);
  await inGrowOut(walk, "count");
  await fill(group(page, "Roots replanted"), { Plants: String(told.replanted), On: "2023-03-25" });
  // The bolters were pulled the year before: none of the roots that were replanted is one of them.
  for (const words of bounds(told.replanted)) await says(status(page, "What it counts as"), words);
  await press(page, "Write the counts down");
  await says(status(page), `Written down: ${told.replanted} roots replanted`);
  await count("In flower", told.flowering, "2023-06-30");
  await inGrowOut(walk, "flowering");
  const [first, half, last] = told.flower;
  await fill(page, { "First flower": first, "Half in flower": half, "Last flower": last });
  await press(page, "Write it down");
  await says(status(page), "Written down");
  await openAt(walk, at.growOut);
  const seen = section(page, "Counted, pulled and in flower");
  await says(seen, `${kOfN(told.replanted, told.lifted)} roots lifted`);
  await says(seen, `${kOfN(told.flowering, told.replanted)} roots replanted`);
  const open = windowDays(windowOf([first, last]));
  await says(seen, `${dateInWords(last)} , put it right ${span(open.least, open.most)}`);
  for (const words of bounds(told.flowering)) await says(seen, words);
});

it("nobody flowers beside the second plot, and the grade says that somebody looked", async () => {
  const { page } = walk;
  await inGrowOut(walk, "neighbours/looked");
  await fill(page, { "Looked on": "2023-06-20" });
  await page.getByRole("checkbox", { name: "None was found" }).check();
  await sendTo(page, "Write down that somebody looked", /\/neighbours$/);
  const { grade } = isolationGrade({ clonal: false, looked: true, verdicts: [], methods: [] });
  await says(main(page), `${grade} is what its lots may claim. Somebody looked and found no neighbour source.`);
});

it("the harvest of the second year is a lot of that year, with what it holds of the diversity", async () => {
  const { page, at } = walk;
  await inGrowOut(walk, "harvest");
  await fill(page, { "How many plants gave seed that is kept": String(told.seedParents) });
  await pick(page, "You know of each", "nothing of each");
  await pick(page, "The lot is", "equal weight of each");
  await fill(page, { "It weighs": String(harvested.grams), "When it was harvested": harvested.on });
  await fill(page, { "Lot number": harvested.number });
  expect(await control(page, "Who holds it").inputValue()).toBe(told.steward);
  await sendTo(page, "Enter the harvest", aGrowOut);
  await says(main(page), `${effectiveSize(size)} plants that all gave alike would have passed on as much.`);
  await says(main(page), `The crop’s floor is ${crop.plantsMin}: it was a bottleneck.`);
  const life = await wordsOf(section(page, "The line of its life"));
  const stages = [
    `Sown ${dateInWords(told.sown)}`,
    `Thinned 20 June 2022 , on record ${counted(told.thinned, "plant")}`,
    `Roots lifted 20 October 2022 , on record ${counted(told.lifted, "plant")}`,
    "Winter December 2022 to February 2023",
    `Replanted 25 March 2023 , on record ${counted(told.replanted, "plant")}`,
    `Flowering ${dateInWords(told.flower[0])} to ${dateInWords(told.flower[2])} , on record ${counted(told.flowering, "plant")}`,
    `Harvest ${dateInWords(harvested.on)} , on record ${counted(told.seedParents, "seed parent")}`,
  ];
  const places = stages.map((stage) => life.indexOf(plain(stage)));
  expect(places, life).not.toContain(-1);
  expect(places).toEqual(places.toSorted((one, other) => one - other));
  at.harvested = await follow(page, harvested.number, section(page, "What was harvested"));
  await says(
    section(page, "Ledger"),
    `harvested , ${dateInWords(harvested.on)}: put this entry right +${grams(harvested.grams)}`,
  );
  await says(section(page, "What is written of it"), `Harvest ${dateInWords(harvested.on)}`);
  const figures = lineageOf(crop, parents);
  const descent = section(page, "Where it comes from, what came of it");
  await says(descent, `${percent(figures.diversityRetained, 0)} of the diversity that its founder lots brought`);
  await descent.getByText(/^how/).first().click();
  await says(
    descent,
    `coancestry θ ${plainNumber(figures.coancestry, 3)} inbreeding F ${plainNumber(figures.inbreeding, 3)}`,
  );
  await says(
    descent,
    `${harvested.number}, 2023: harvested from ${founder.number}; effective size ${effectiveSize(size)}.`,
  );
  await openAt(walk, at.variety);
  const row = `${harvested.number} ${dateInWords(harvested.on)} ${told.steward} ${grams(harvested.grams)} never tested`;
  await says(section(page, "Lots"), `${row} ${percent(figures.diversityRetained)}`);
});
