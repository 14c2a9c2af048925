import { expect, it } from "vitest";
import { replicateFaults } from "@/lib/science/germination/test-counts";

it("kinds that fill the seeds sown exactly are sound", () => {
  expect(replicateFaults({ sown: 10, normal: 4, abnormal: 1, hard: 2, fresh: 1, dead: 2 }, [])).toEqual([]);
});

it("the kind that passes the seeds sown is named, with the count so far", () => {
  const [fault] = replicateFaults({ sown: 10, normal: 4, abnormal: 1, hard: 6 }, ["replicates", 2]);
  expect(fault?.path).toEqual(["replicates", 2, "hard"]);
  expect(fault?.sentence).toBe("6 as hard makes 11 seeds of 10 sown; the kinds together may not pass the seeds sown");
});

it("every count that is none is named", () => {
  const faults = replicateFaults({ sown: 0, normal: -1, dead: 0.5 }, []);
  expect(faults.map(({ path }) => path)).toEqual([["sown"], ["normal"], ["dead"]]);
});
