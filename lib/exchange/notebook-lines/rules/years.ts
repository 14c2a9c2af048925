import { isClosed, low } from "../line";
import { readYear } from "../year";
import { doubtful, type Rule, rule, sure } from "./rule";

const LEADS = new Set(["in", "year", "season"]);

/** A year, at the head of the line or in it: "1994", "'94", "about 1960", "in the early eighties", "1987-91", "next year". */
export const yearRule: Rule = {
  name: "year",
  read: (line, at) => {
    const start = LEADS.has(low(line, at)) ? at + 1 : at;
    const year = readYear(line, start, at === 0 && start === at);
    // "next year sow 60" within a line is a plan
    if (year === null || (year.relative && at > 0)) return null;
    // "1990 seeds" is a count: a year has an end behind it, or stands first
    if (at > 0 && /^\d{4}$/.test(year.edtf ?? "") && !isClosed(line, year.end)) return null;
    return {
      end: year.end,
      certainty: year.certainty,
      fact: { kind: "year", value: { edtf: year.edtf, relative: year.relative } },
    };
  },
};

/** Of a crop that seeds in its second year: "seeded in 1995", "seed harvested 1995". */
export const harvestYearRule = rule("harvest-year", [
  [
    "(harvested|seed harvested|seeded|seed ripe|seed ripened|picked|threshed|went to seed|set seed|lifted seed) (in|the)? {year}",
    (found) => {
      const edtf = found.edtf();
      return edtf === null ? null : sure({ kind: "harvest-year", value: { edtf } });
    },
  ],
]);

/** "sown 12 May"; and a day of the year that stands alone, which is kept but used for nothing. */
export const dayRule = rule("day", [
  [
    "(<sow>|planted|planted out|set out) (on|in)? (the)? {day}",
    (found) => {
      const day = found.day();
      return day === null ? null : sure({ kind: "sown-on", value: { month: day.month, day: day.day } });
    },
  ],
  [
    "(on|in)? (the)? {day}",
    (found) => {
      const day = found.day();
      return day === null ? null : sure({ kind: "day", value: { month: day.month, day: day.day } });
    },
  ],
  [
    "(harvested|harvest|picked|threshed|up|came up|in flower|flowered) (on)? (the)? {day}",
    (found) => {
      const day = found.day();
      return day === null ? null : sure({ kind: "day", value: { month: day.month, day: day.day } });
    },
  ],
  [
    "{day} (<sow>|planted|planted out)",
    (found) => {
      const day = found.day();
      return day === null ? null : doubtful({ kind: "sown-on", value: { month: day.month, day: day.day } });
    },
  ],
]);
