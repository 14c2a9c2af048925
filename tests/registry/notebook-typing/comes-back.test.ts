import { describe, expect, it } from "vitest";
import { bookingOfLines } from "@/app/type-in/_lines/booking-of-lines";
import { proposedNumbers } from "@/app/type-in/_lines/lot-numbers";
import { proposedLineage } from "@/app/type-in/_lines/proposed-lineage";
import { readLines } from "@/app/type-in/_lines/typed-line";
import { ownerHere } from "@/lib/access/actor";
import { figuresOfAll, figuresOfVariety } from "@/lib/registry/figures/read-figures";
import { bookNotebookLines } from "@/lib/registry/notebook-typing/book-notebook-lines";
import { EVENTS, GROW_OUTS, NOT_OVER_READ, YEARS } from "@/tests/exchange/notebook-lines/lines";
import { emptyRegistry, granted } from "@/tests/setup/registry";

const before = [
  "1970, 40 plants, kept from 12, 300 g",
  "1975, from Osk a packet of 40 seeds",
  "1980, 30 plants, kept from 20, 200 g",
];

/** The lines as the page would send them, under a variety and lot numbers of their own. */
function sent(words: readonly string[], name: string) {
  const typed = words.map((line, place) => ({ id: String(place), words: line, fixes: {} }));
  const lines = readLines(typed, "2026-11-25");
  const lots = proposedLineage(lines).lots.map((lot) => lot.name);
  const numbers = proposedNumbers(lots, {}, name, 0);
  return bookingOfLines({ variety: { name, crop: "maize-field", ownCrop: false }, holder: null, lines, numbers });
}

describe("every way of writing that the grammar reads", () => {
  it("can be booked as it was understood, all grow-outs as one notebook, with figures that can be worked out", async () => {
    const words = GROW_OUTS.map(([line]) => line);
    const db = await emptyRegistry();
    const { value } = granted(await bookNotebookLines(db, ownerHere(), sent(words, "Tallow")));
    expect(value.made.growOuts).toBeGreaterThan(30);
    expect((await figuresOfVariety(db, value.varietyId)).size).toBe(value.made.lots);
    const told = await db.read.observation.findMany({ select: { words: true } });
    expect(words.filter((line) => !told.some((each) => each.words === line.trim()))).toEqual([]);
  });

  it("can be booked line by line after others, every word of it kept", async () => {
    const db = await emptyRegistry();
    const refusedLines: [string, string[]][] = [];
    for (const [place, [line]] of [...EVENTS, ...YEARS, ...NOT_OVER_READ].entries()) {
      const booked = await bookNotebookLines(db, ownerHere(), sent([...before, line], `Notebook ${place} of`));
      if (!booked.ok) refusedLines.push([line, booked.refusals.map((refusal) => refusal.code)]);
    }
    expect(refusedLines).toEqual([]);
    expect((await figuresOfAll(db)).size).toBe(await db.read.lot.count());
    const told = await db.read.observation.findMany({ select: { words: true } });
    const stories = await db.read.story.findMany({ select: { words: true } });
    const kept = new Set([...told, ...stories].map((each) => each.words));
    const lines = [...EVENTS, ...YEARS, ...NOT_OVER_READ].map(([line]) => line.trim());
    expect(lines.filter((line) => line !== "" && !kept.has(line))).toEqual([]);
  });
});
