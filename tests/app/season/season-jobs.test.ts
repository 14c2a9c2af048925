import { describe, expect, it } from "vitest";
import { jobsNow, jobsOf, northernJobs, placedInStrip } from "@/app/season/_words/season-jobs";

const words = (jobs: readonly { words: string }[]) => jobs.map((job) => job.words);

describe("the jobs of the year", () => {
  it("are those of the month: in March seed is tested, in the south in September", () => {
    expect(words(jobsNow(jobsOf("north"), 3))).toContain("germination tests");
    expect(words(jobsNow(jobsOf("north"), 9))).not.toContain("germination tests");
    expect(words(jobsNow(jobsOf("south"), 9))).toContain("germination tests");
  });

  it("lie in the strip from its first month on, in two pieces where it cuts them", () => {
    const job = northernJobs.find((each) => each.words === "germination tests");
    expect(job && placedInStrip(job, 2)).toEqual([{ start: 1, end: 2 }]);
    expect(job && placedInStrip(job, 4)).toEqual([
      { start: 0, end: 0 },
      { start: 11, end: 11 },
    ]);
  });

  it("may run over the turn of the year", () => {
    const turning = { place: "desk" as const, words: "x", from: 12, to: 1 };
    expect(placedInStrip(turning, 11)).toEqual([{ start: 1, end: 2 }]);
  });

  it("of the south are those of the north half a year on", () => {
    expect(jobsOf("south").every((job) => job.from >= 1 && job.from <= 12 && job.to >= 1 && job.to <= 12)).toBe(true);
    expect(jobsOf("south")[0]).toMatchObject({ from: 7, to: 8 });
  });
});
