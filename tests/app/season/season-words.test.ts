import { describe, expect, it } from "vitest";
import { countsByPlace, seasonGroups } from "@/app/season/_words/groups";
import { itemWords } from "@/app/season/_words/item-words";
import { seasonLines } from "@/app/season/_words/lines";
import { progressWords } from "@/app/season/_words/progress-words";
import { ruleWords } from "@/app/season/_words/rule-words";
import { seasonRuleNames, waitingItems } from "@/lib/registry/season/waiting";
import type { Holder } from "@/lib/registry/varieties/holders";
import { defaultSettings } from "@/lib/schemas/settings";
import { madeLot, madeRecords, madeTest, madeVariety } from "@/tests/registry/season/made-records";

const holder = (stewardId: string): Holder => ({
  stewardId,
  lots: [],
  confirmed: false,
  why: "heard too long ago",
  last: { day: "2015-05-09", how: "word" },
  places: 1,
});
const two = new Map([
  ["v1", madeVariety()],
  ["v2", madeVariety({ id: "v2", name: "Mere Pea", nameKey: "mere pea" })],
]);

describe("what waits in words", () => {
  it("gives counts first, the span, and the chance where a test leaves it open", () => {
    const records = madeRecords({
      lots: [
        madeLot({
          lastTest: { ...madeTest(13, 20), low: 0.41, high: 0.85 },
          lastTestFirst: "2026-02-01",
          lastTestLast: "2026-02-01",
        }),
      ],
    });
    const [item] = waitingItems(records);
    const words = item && itemWords(item, records);
    expect(words?.sentence).toMatch(
      /^13 of 20 \(65\u00a0%\) came up, 41–85\u00a0%, 1 February 2026: below 70\u00a0% with a chance of 0\.\d+/,
    );
    expect(words?.subject).toEqual({ words: "Quern 1", href: "/lots/l1" });
    expect(words?.hand.href).toBe("/lots/l1");
  });

  it("never says nought of what is unknown", () => {
    const records = madeRecords({
      lots: [madeLot({ gramsOnHand: null, entries: 0, year: null, yearFirst: null, yearLast: null })],
    });
    const sentences = waitingItems(records).map((item) => itemWords(item, records).sentence);
    expect(sentences.join(" ")).toContain("how much is left is unknown");
    expect(sentences.join(" ")).not.toMatch(/\b0\b/);
  });

  it("makes one line of all that one holder is asked about, and several where they are listed apart", () => {
    const holders = new Map([
      ["v1", [holder("s1")]],
      ["v2", [holder("s1"), holder("s2")]],
    ]);
    const records = madeRecords({ varieties: two, holders, names: new Map([["s1", "Aldis"]]) });
    const asked = waitingItems(records).filter((item) => item.rule === "holder-not-confirmed");
    const lines = seasonLines("holder-not-confirmed", asked, records);
    expect(lines.map((line) => line.subject.words)).toEqual(["Aldis", "A steward"]);
    expect(lines[0]?.sentence).toBe("Hollow Pea and Mere Pea; last heard 9 May 2015.");
    expect(seasonLines("holder-not-confirmed", asked, records, true)).toHaveLength(3);
  });

  it("is grouped by rule, what cannot wait first, and counted by place", () => {
    const lots = [
      madeLot({ status: "hold" }),
      madeLot({
        id: "l2",
        number: "Quern 2",
        lastTest: madeTest(4, 20),
        lastTestFirst: "2026-02-01",
        lastTestLast: "2026-02-01",
      }),
    ];
    const groups = seasonGroups(waitingItems(madeRecords({ lots })), madeRecords({ lots }));
    expect(groups[0]?.rule).toBe("germination-below-line");
    expect(countsByPlace(groups)).toEqual({ field: 1, shed: 1, desk: 0 });
  });

  it("counts all that waits where only the first of it is put into words", () => {
    const lots = ["l1", "l2", "l3"].map((id, place) => madeLot({ id, number: `Quern ${place + 1}`, status: "hold" }));
    const records = madeRecords({ lots });
    const [group] = seasonGroups(waitingItems(records), records, 2);
    expect([group?.rule, group?.count, group?.lines.map((line) => line.subject.words)]).toEqual([
      "standing-apart",
      3,
      ["Quern 1", "Quern 2"],
    ]);
    expect(countsByPlace(group ? [group] : []).shed).toBe(3);
  });
});

describe("a rule of the season", () => {
  it("has its words, and names the settings that it follows", () => {
    for (const rule of seasonRuleNames) expect(ruleWords[rule].explanation(defaultSettings, 3).answer).toMatch(/^3 /);
    const inputs = ruleWords["germination-below-line"].explanation({ ...defaultSettings, renewalPlan: 0.65 }, 1).inputs;
    expect(inputs.map((input) => input.value)).toEqual(["65\u00a0%", "50\u00a0%"]);
  });
});

describe("the progress in words", () => {
  it("gives what is done, of how many, and what is overdue", () => {
    const left = Array.from({ length: 8 }, (_, index) => String(index));
    const words = progressWords({ key: "tests", done: 14, of: 22, left, overdue: left.slice(0, 3) });
    expect(words.sentence).toBe("14 of 22 lots tested; 3 overdue");
    expect(words.left).toBe("8 lots never tested");
  });
});
