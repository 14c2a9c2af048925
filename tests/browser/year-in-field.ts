import { expect } from "vitest";
import { foreignShare, foreignShareSpan } from "@/lib/display/foreign-share";
import {
  effectiveSize,
  grams,
  kOfN,
  percent,
  percentSpan,
  plainNumber,
  seedsAbout,
  seedsCounted,
  significant,
  span,
  wholeNumber,
} from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { distance, metricUnits } from "@/lib/display/units";
import { daysApart } from "@/lib/science/dates/days-apart";
import { offTypesFound } from "@/lib/science/off-types/off-types-found";
import { populationPlan } from "@/lib/science/population/population-plan";
import { pasteText } from "./paste-text";
import {
  askedTwice,
  control,
  fill,
  follow,
  group,
  pick,
  press,
  says,
  section,
  sendTo,
  status,
  wordsOf,
} from "./steward";
import { enterTest, weighSeeds } from "./steward-of-lots";
import { inGrowOut, main, openAt, type Walk } from "./walk";
import { held, matingOf, sizeOf } from "./worked-out";
import { days, first, foreignPollen, isolation, plants, told } from "./year-of-maize";

/*
 * The year of an outcrosser from the jar into the field. Every number that is looked for is worked out from what was told.
 */

const { founder, crop } = told;
const { sowing, keptBack } = first;

/** A variety and the lot that it begins with. */
export async function enterFounder(walk: Walk): Promise<void> {
  const { page, at } = walk;
  await openAt(walk, "/varieties/new");
  await fill(page, { Name: told.variety, Crop: crop.commonName });
  at.variety = await sendTo(page, "Record the variety", /\/varieties\/[0-9a-f-]{36}$/);
  await follow(page, "Enter a lot of it");
  await pick(page, "Where the seed came from", "From somebody's hand");
  await fill(page, { "Year of the harvest": "2023", "Who holds it": told.steward, "Lot number": founder.number });
  await fill(group(page, "What is in the jar"), { "How much": String(founder.grams), when: "2024-02-10" });
  at.founder = await sendTo(page, "Enter the lot", /\/lots\/[0-9a-f-]{36}$/);
  await says(
    section(page, "Ledger"),
    `weighed , 10 February 2024: put this entry right +${grams(founder.grams)} ${grams(founder.grams)}`,
  );
  await says(main(page), "Unknown what may be given: nobody has tested whether it lives.");
  await says(section(page, "Where it comes from, what came of it"), `${percent(1, 0)} of the diversity`);
}

/** The founder lot is weighed and tested: what may be given, and what is kept back. */
export async function weighAndTestFounder(walk: Walk): Promise<void> {
  const { page, at } = walk;
  await weighSeeds(page, founder.weighed, "2024-02-11");
  const perGram = significant(1 / first.seed, 3);
  const weight = `A thousand seeds weigh ${plainNumber(1000 * first.seed, 2)} g: ${perGram} seeds in a gram.`;
  await says(section(page, "Seed weight"), weight);
  await follow(page, "a new test");
  await enterTest(page, founder.test, first.test);
  await pick(page, "The seeds used", `Book ${grams(first.tested)} as tested`);
  await sendTo(page, "Store this test", /\/tests\/[0-9a-f-]{36}$/);
  await says(main(page), "Very likely it stands above the line for renewing, 70 in a hundred.");
  await openAt(walk, at.founder);
  const counts = kOfN(first.test.normal, first.test.sown);
  const { low, high } = first.test.exact;
  await says(section(page, "Germination tests"), `${counts} ${percentSpan(low, high)}`);
  await says(section(page, "Ledger"), `−${grams(first.tested)} ${grams(first.afterTest)}`);
  await says(
    main(page),
    `${seedsAbout(first.afterTest / first.seed - keptBack.seeds)} may be given away; ${seedsCounted(keptBack.seeds)} are kept back.`,
  );
  const { growOuts, tests, duplicates, archive } = keptBack.parts;
  await says(
    section(page, "Kept back"),
    `one grow-out ${growOuts} two germination tests of 50 ${tests} a sowing for another place ${duplicates} never to be touched ${archive} kept back ${keptBack.seeds}`,
  );
  await says(section(page, "The jar"), `${seedsCounted(sowing.seeds)}, ${grams(first.sown)}`);
}

/** The plan of the grow-out, with its plot. */
export async function plan(walk: Walk): Promise<void> {
  const { page, at } = walk;
  await follow(page, "Plan a grow-out from it");
  expect(await control(page, "Plants wanted").inputValue()).toBe(String(plants));
  expect(await control(page, "Lot").locator("option:checked").innerText()).toContain(founder.number);
  await fill(page, {
    "What it is called": told.growOut,
    "Who grows it": told.steward,
    "Seed to be kept from": String(told.seedParentsMeant),
  });
  await page.getByText("How many plants keep how much").click();
  const { selfingRate, inbreeding } = matingOf(crop);
  const keep = held(populationPlan({ retain: 0.9, years: 30, yearsBetweenGrowOuts: 3, selfingRate, inbreeding }));
  await says(main(page), `${wholeNumber(keep.floweringPlants)} plants in flower, seed kept from ${keep.seedParents}`);
  await says(main(page), `For ${counted(plants, "plant")} sow ${seedsCounted(sowing.seeds)}`);
  await says(main(page), `which weigh ${grams(first.sown)}. ${grams(first.afterSowing)} stay in the jar.`);
  const stay = seedsAbout(first.afterTest / first.seed - sowing.seeds);
  await says(
    main(page),
    `This eats into the reserve: ${stay} of its good lots stay, and ${seedsCounted(keptBack.seeds)} are to be kept back.`,
  );
  at.growOut = await sendTo(page, "Plan it", /\/grow-outs\/[0-9a-f-]{36}$/);
  await says(main(page), `${counted(plants, "plant")} are planned, seed to be kept from ${told.seedParentsMeant}.`);
  await follow(page, "Choose its plot");
  await fill(page, {
    Plot: "the long field",
    "its rough place": "Orrebeck",
    "its area": String(told.plotM2),
    "Stands there from": "2024-05-08",
  });
  await sendTo(page, "Put it there", /\/grow-outs\/[0-9a-f-]{36}$/);
  await says(section(page, "The plan"), "the long field, Orrebeck, from 8 May 2024");
}

/** Sowing is asked twice and writes the ledger. */
export async function sow(walk: Walk): Promise<void> {
  const { page, at } = walk;
  await inGrowOut(walk, "sow");
  await fill(page, { When: "2024-05-08" });
  await press(page, `Take ${seedsCounted(sowing.seeds)}`);
  await fill(page, { "Why it is sown all the same": "it is the only jar, and it ages" });
  await press(page, "Sow it");
  await page.getByRole("dialog").getByRole("button", { name: "Leave it as it is" }).click();
  const asked = await askedTwice(page, "Sow it", "It is sown: write it down");
  expect(asked).toContain(`${sowing.seeds} seeds of lot ${founder.number}.`);
  expect(asked).toContain("nothing here can take it back");
  await page.waitForURL(/\/grow-outs\/[0-9a-f-]{36}$/);
  await says(section(page, "What was sown"), `${founder.number} 2023 ${percent(1)} ${seedsCounted(sowing.seeds)}`);
  await openAt(walk, at.founder);
  const ledger = section(page, "Ledger");
  await says(ledger, `−${grams(first.sown)} (${seedsCounted(sowing.seeds)}) ${grams(first.afterSowing)}`);
  expect((await wordsOf(ledger)).match(/ sown ,/g)).toHaveLength(1);
  await says(section(page, "The jar"), `${grams(first.afterSowing)}, ${seedsAbout(first.afterSowing / first.seed)}`);
}

/** Counts by stage; one that cannot be, and one that is taken back in History. */
export async function count(walk: Walk): Promise<void> {
  const { page, at } = walk;
  const size = status(page, "What it counts as");
  const bound = (standing: number) =>
    `up to ${effectiveSize(sizeOf(crop, { pollenParents: standing, seedParents: standing }).effectiveSize)}`;
  const meant = (standing: number) => {
    const { effectiveSize: ne } = sizeOf(crop, { pollenParents: standing, seedParents: told.seedParentsMeant });
    return `from the ${told.seedParentsMeant} meant for seed, ${effectiveSize(ne)};`;
  };
  await inGrowOut(walk, "count");
  await fill(group(page, "Up"), { Plants: String(told.up), On: "2024-05-29" });
  await says(size, bound(told.up));
  await fill(group(page, "After thinning"), {
    Plants: String(told.thinned),
    On: "2024-06-08",
    Thinned: "at random",
  });
  await says(size, bound(told.thinned));
  await press(page, "Write the counts down");
  await says(status(page), `Written down: ${told.up} up, ${told.thinned} left after thinning`);
  await fill(group(page, "Standing"), { Plants: "1000", On: "2024-07-10" });
  await press(page, "Write the counts down");
  await says(page.getByRole("alert"), `1000 is more than the ${sowing.seeds} seeds sown`);
  await fill(group(page, "Standing"), { Plants: String(told.mistaken) });
  await press(page, "Write the counts down");
  await says(status(page), `looks odd: more than the ${told.thinned} counted thinned`);
  await openAt(walk, "/history");
  await follow(page, new RegExp(`${told.mistaken} standing`));
  const asked = await askedTwice(page, "Take it back", "Take it back");
  expect(asked).toContain("1 count of plants is removed");
  await says(main(page), "Everything stands as it did before that change.");
  await openAt(walk, at.growOut);
  await says(section(page, "How it was grown"), "Plants standing unknown");
  await inGrowOut(walk, "count");
  await fill(group(page, "Standing"), { Plants: String(told.standing), On: "2024-07-10" });
  await says(size, bound(told.standing));
  await says(size, meant(told.standing));
  await press(page, "Write the counts down");
  await says(status(page), `Written down: ${told.standing} standing`);
  await openAt(walk, at.growOut);
  const stages = section(page, "Counted, pulled and in flower");
  await says(stages, kOfN(told.up, sowing.seeds));
  await says(stages, `${kOfN(told.thinned, told.up)} up`);
  await says(stages, `${kOfN(told.standing, told.thinned)} left after thinning`);
  const history = section(page, "History");
  await says(history, `Taken back: Grow-out ${told.growOut}: ${told.mistaken} standing`);
  await says(history, `Grow-out ${told.growOut}: ${told.up} up`);
}

/** A pass before pollen flew, and one after it that finds none. */
export async function rogue(walk: Walk): Promise<void> {
  const { page, at } = walk;
  const pulled = told.offType + told.sick;
  const found = held(offTypesFound({ sampled: told.standing, found: told.offType }));
  const offTypes = `${told.offType} of ${told.standing} were pulled as off-type (${percent(found.share)}); in truth hardly more than ${percent(found.upperBound)}.`;
  const left = told.standing - pulled;
  await inGrowOut(walk, "rogue");
  await fill(page, { "Walked on": "2024-07-12", "At the stage": "before flower", "Plants looked at": "100" });
  await fill(page, { "Off-type colour": String(told.offType), Sick: String(told.sick) });
  await pick(page, "Had pollen flown?", "Before pollen shed");
  await says(status(page, "This walk"), `${counted(pulled, "plant")} pulled of ${told.standing} looked at ${offTypes}`);
  const { effectiveSize: ne } = sizeOf(crop, { pollenParents: left, seedParents: left });
  await says(status(page, "What it counts as"), `up to ${effectiveSize(ne)}`);
  await press(page, "Write the walk down");
  await says(status(page), "Written down: 12 July 2024");
  await fill(page, { "Walked on": "2024-08-20", "At the stage": "fruit or ear", "Plants looked at": String(left) });
  await pick(page, "Had pollen flown?", "After pollen shed");
  await page.getByRole("checkbox", { name: "Walked, and found none to pull" }).check();
  await press(page, "Write the walk down");
  await says(status(page), "20 August 2024, walked and none found");
  await openAt(walk, at.growOut);
  await says(section(page, "Counted, pulled and in flower"), offTypes);
  await says(section(page, "How it was grown"), `Rogued before pollen shed ${pulled} Rogued after pollen shed 0`);
}

/** What came to flower, and the days of pollen and silk. */
export async function flower(walk: Walk): Promise<void> {
  const { page, at } = walk;
  await inGrowOut(walk, "count");
  await fill(group(page, "In flower"), { Plants: String(told.flowering), On: "2024-07-28" });
  await press(page, "Write the counts down");
  await says(status(page), `Written down: ${told.flowering} in flower`);
  await inGrowOut(walk, "flowering");
  const { pollen, silk } = told;
  await fill(page, { "First pollen": pollen[0], "Half shed": pollen[1], "Last pollen": pollen[2] });
  await fill(page, { "First silk": silk[0], "Half in silk": silk[1], "Last silk": silk[2] });
  await press(page, "Write it down");
  await says(status(page), "Written down");
  await openAt(walk, at.growOut);
  const flowering = section(page, "Counted, pulled and in flower");
  await says(flowering, `2 August 2024 , put it right ${span(days.pollen.least, days.pollen.most)} Silk`);
  await says(flowering, `6 August 2024 , put it right ${span(days.silk.least, days.silk.most)}`);
  const later = (place: 0 | 1 | 2) => {
    const day = (text: string) => ({ first: text, last: text });
    const { low, high } = daysApart(day(pollen[place]), day(silk[place]));
    return `${span(low, high)} days later`;
  };
  await says(flowering, `first ${later(0)}, half in flower ${later(1)}, last ${later(2)}.`);
  await says(flowering, `Pollen flew while silk was open on ${days.both.least} days.`);
}

/** A neighbour source, and that somebody looked. */
export async function neighbours(walk: Walk): Promise<void> {
  const { page } = walk;
  const { neighbour } = told;
  const { distances, verdict, grade } = isolation("stewardship");
  expect([verdict, grade(false), grade(true)]).toEqual(["too-close", "open", "open"]);
  await says(section(page, "Neighbours"), "not assessed Nobody wrote that they looked for neighbours.");
  await inGrowOut(walk, "neighbours/new");
  await fill(page, { "What grows there": "sweet maize", Crop: neighbour.crop.commonName });
  await fill(page, { "How far off": String(neighbour.metres), "On which side": "south-west" });
  await fill(page, { "How large": String(neighbour.areaM2), "How it is known": "seen" });
  await fill(page, { "In flower from": neighbour.flowers[0], to: neighbour.flowers[1] });
  await sendTo(page, "Write it down", /\/neighbours$/);
  await says(main(page), "Nobody wrote that they looked all round");
  await follow(page, "Somebody looked");
  await fill(page, { "Looked on": "2024-07-15" });
  await sendTo(page, "Write down that somebody looked", /\/neighbours$/);
  const rule = `${distance(distances?.min ?? null, metricUnits)} to ${distance(distances?.max ?? null, metricUnits)}`;
  await says(
    main(page),
    `open is what its lots may claim: other pollen of its kind may have come in. One source is too close`,
  );
  await says(main(page), `by the distances to keep the variety (${rule}).`);
  const together = `in flower together on ${days.met.least} of ${counted(days.silk.least, "day")}`;
  await says(main(page), `stood ${distance(neighbour.metres, metricUnits)} off, ${together}.`);
  const { risk } = foreignPollen();
  await says(section(page, "How much may have come in"), foreignShare(risk.foreignShare));
  await says(section(page, "How much may have come in"), foreignShareSpan(risk.range.low, risk.range.high));
}

/** Plants marked and scored in the grid, typed and pasted. */
export async function markPlants(walk: Walk): Promise<void> {
  const { page, at } = walk;
  await openAt(walk, `${at.variety}/traits/new`);
  await fill(page, { "What is looked at": "height" });
  await pick(page, "How it is told of a plant", "Measured");
  await fill(page, { Unit: "cm" });
  await sendTo(page, "Define the trait", /\/traits$/);
  await inGrowOut(walk, "plants/add");
  await fill(page, { From: "1", To: "12", When: "2024-07-20" });
  await sendTo(page, "Add the plants", /\/plants$/);
  const grid = page.getByRole("grid");
  await grid.getByRole("row").nth(1).getByRole("gridcell").first().click();
  for (const key of ["k", "Enter", "k", "Enter", "keep", "Enter"])
    await (key === "Enter" ? page.keyboard.press(key) : page.keyboard.type(key));
  await grid.getByRole("rowheader").first().click();
  const { heights } = told;
  const rows = heights.map((height, place) => [place + 1, place < 12 ? "keep" : "watch", height].join("\t"));
  await pasteText(page, ["tag\tintent\theight, cm", ...rows].join("\r\n"));
  const dialog = page.getByRole("dialog");
  await says(dialog, "2 plants would be added");
  await dialog.getByRole("button", { name: /^Put \d+ cells in$/ }).click();
  await fill(page, { "Seen on": "2024-07-20" });
  await page.getByRole("button", { name: /^Store \d+ cells$/ }).click();
  await says(main(page), "Stored: 2 plants, 14 marks, 14 scores.");
  await openAt(walk, at.growOut);
  const marked = section(page, "Plants and scores");
  await says(marked, "14 plants on record: 12 keep, 2 watch and 0 pull.");
  const [least, most] = [Math.min(...heights), Math.max(...heights)];
  await says(marked, `height 14 of 14 from ${least} cm to ${most} cm`);
}
