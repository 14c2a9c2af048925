import { expect } from "vitest";
import {
  effectiveSize,
  grams,
  kOfN,
  percent,
  percentSpan,
  plainNumber,
  seedsAbout,
  seedsCounted,
  span,
} from "@/lib/display/numbers";
import { equalTakings } from "@/lib/science/harvest/equal-takings";
import { heaviestShare } from "@/lib/science/harvest/heaviest-share";
import { askedTwice, control, fill, follow, pick, press, says, section, sendTo, wordsOf } from "./steward";
import { enterTest, weighSeeds } from "./steward-of-lots";
import { inGrowOut, main, openAt, type Walk } from "./walk";
import { held, lineageOf, sizeOf } from "./worked-out";
import { harvest, plants, second, told } from "./year-of-maize";

/*
 * The year of an outcrosser from the harvest to another steward's hand. Every number that is looked for is worked out from what was told.
 */

const { founder, harvested, crop } = told;
const { parents, seedShares } = harvest;

/** The harvest of marked plants, each weighed. */
export async function harvestPlants(walk: Walk): Promise<void> {
  const { page, at } = walk;
  await inGrowOut(walk, "harvest");
  for (const [place, weight] of seedShares.entries())
    await page.getByLabel(`plant ${place + 1}, g`, { exact: true }).fill(String(weight));
  await fill(page, { "plant 12, its seed": "lost: rotted or mouldy" });
  const live = section(page, "What that makes of the seed");
  const greedy = `The three heaviest gave ${percent(heaviestShare(seedShares, 3), 0)} of the seed. In equal shares the seed of the same ${seedShares.length} plants`;
  await says(
    live,
    `${greedy} would count as ${effectiveSize(harvest.even)} instead of ${effectiveSize(harvest.uneven)}.`,
  );
  for (const { leftOut, bags, each, total } of held(equalTakings(seedShares))) {
    const from =
      leftOut === 0 ? `all ${bags}` : `${bags}, not the ${leftOut === 1 ? "smallest" : `${leftOut} smallest`}`;
    const { effectiveSize: ne } = sizeOf(crop, { ...parents, seedParents: bags });
    await says(live, `${grams(each)} ${from} ${grams(total)} ${effectiveSize(ne)}`);
  }
  await pick(page, "The lot is", "all together");
  await fill(page, { "When it was harvested": "2024-09-28", "Lot number": harvested.number, Mouldy: "0" });
  expect(await control(page, "Who holds it").inputValue()).toBe(told.steward);
  await sendTo(page, "Enter the harvest", /\/grow-outs\/[0-9a-f-]{36}$/);
  await says(main(page), `${effectiveSize(harvest.uneven)} plants that all gave alike would have passed on as much.`);
  await says(main(page), `The crop’s floor is ${plants}: it was a bottleneck.`);
  const lots = section(page, "What was harvested");
  await says(
    lots,
    `${greedy} would have counted as ${effectiveSize(harvest.even)} instead of ${effectiveSize(harvest.uneven)}.`,
  );
  await says(lots, `${seedShares.length} ${grams(harvest.grams)} ${effectiveSize(harvest.uneven)}`);
  at.harvested = await follow(page, harvested.number, lots);
}

/** What the harvested lot holds, and the isolation that it claims. */
export async function newLot(walk: Walk): Promise<void> {
  const { page, at } = walk;
  const figures = lineageOf(crop, { ...parents, seedShares });
  const descent = section(page, "Where it comes from, what came of it");
  await says(descent, `${percent(figures.diversityRetained, 0)} of the diversity that its founder lots brought`);
  await descent.getByText(/^how/).first().click();
  await says(descent, `coancestry θ ${plainNumber(figures.coancestry, 3)}`);
  await says(descent, `effective size of its grow-out ${effectiveSize(harvest.uneven)}`);
  await says(descent, `generations ${plainNumber(figures.generations, 1)}`);
  await says(descent, `harvested from ${founder.number}; effective size ${effectiveSize(harvest.uneven)}.`);
  await inGrowOut(walk, "neighbours/claim");
  await sendTo(page, "Claim it", /\/neighbours$/);
  await openAt(walk, at.harvested);
  await says(
    section(page, "What is written of it"),
    "Isolation open to other pollen. Looked for neighbours 15 July 2024.",
  );
}

/** The harvested lot is weighed and tested. */
export async function testNewLot(walk: Walk): Promise<void> {
  const { page, at } = walk;
  await weighSeeds(page, harvested.weighed, "2024-12-01");
  await says(section(page, "Seed weight"), `A thousand seeds weigh ${plainNumber(1000 * second.seed, 2)} g`);
  await follow(page, "a new test");
  await enterTest(page, harvested.test, second.test);
  await pick(page, "The seeds used", `Book ${grams(second.test.sown * second.seed)} as tested`);
  await sendTo(page, "Store this test", /\/tests\/[0-9a-f-]{36}$/);
  await openAt(walk, at.harvested);
  const { low, high } = second.test.exact;
  await says(
    section(page, "Germination tests"),
    `${kOfN(second.test.normal, second.test.sown)} ${percentSpan(low, high)}`,
  );
  const living = (share: number) => (second.grams / second.seed) * share;
  await says(
    section(page, "The jar"),
    `${seedsAbout(living(second.test.germination))}, ${span(Math.floor(living(low)), Math.ceil(living(high)))}`,
  );
  await says(
    main(page),
    `${seedsAbout(second.free)} may be given away; ${seedsCounted(second.keptBack.seeds)} are kept back.`,
  );
}

/** A gift to another steward, first too large. */
export async function give(walk: Walk): Promise<void> {
  const { page, at } = walk;
  const { given } = told;
  await openAt(walk, `${at.harvested}/give`);
  await pick(page, "How it goes", "Given");
  await fill(page, { "or a new name": given.to, "How much": String(given.tooManySeeds), "counted in": "seeds" });
  await fill(page, { When: "2025-01-12" });
  await press(page, "All of it was said");
  const most = `at most ${Math.floor(second.free)} seeds are free above the reserve of ${second.keptBack.seeds} seeds`;
  await askedTwice(page, "Hand it over", "It is handed over");
  await says(page.getByRole("alert"), most);
  await fill(page, { "How much": String(given.grams), "counted in": "grams" });
  const stays = `${grams(second.grams - given.grams)} stay: ${seedsAbout((second.grams - given.grams) / second.seed)}.`;
  await says(section(page, "What stays in the jar"), stays);
  const asked = await askedTwice(page, "Hand it over", "It is handed over");
  expect(asked).toContain("nothing here can take it back");
  await page.waitForURL(/\/sharing\/[0-9a-f-]{36}$/);
  const sides = section(page, "In the ledgers");
  await says(sides, `${harvested.number} given, 12 January 2025 ${grams(given.grams)}`);
  const [, number = ""] = /there as lot ([^ ]+)\./.exec(await wordsOf(main(page))) ?? [];
  await says(sides, `${number} received, 12 January 2025 ${grams(given.grams)}`);
  await follow(page, number, sides);
  await says(section(page, "Ledger"), `+${grams(given.grams)} ${grams(given.grams)}`);
  const { diversityRetained } = lineageOf(crop, { ...parents, seedShares });
  const descent = section(page, "Where it comes from, what came of it");
  await says(descent, `${percent(diversityRetained, 0)} of the diversity`);
  await says(section(page, "What is written of it"), `Holder ${given.to}`);
  await openAt(walk, at.harvested);
  await says(section(page, "Ledger"), `−${grams(given.grams)} ${grams(second.grams - given.grams)}`);
  await openAt(walk, "/sharing");
  await says(section(page, "Who holds what"), `${told.variety} 2 2 0 12 January 2025 ${told.steward} and ${given.to}`);
  await follow(page, told.variety);
  await says(
    page.getByRole("region", { name: given.to }),
    "1 lot in 1 place; last seen in hand 12 January 2025: counts.",
  );
}
