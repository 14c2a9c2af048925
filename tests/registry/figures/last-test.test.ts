import { describe, expect, it } from "vitest";
import { lastTestOf } from "@/lib/registry/figures/figures-of-records";

const test = (name: string, first: string, replicates = [{ sown: 10, normal: 8 }]) => ({
  name,
  lotId: "A",
  date: first,
  first,
  replicates,
});

describe("the last test of a lot", () => {
  it("is the latest by first possible day, of equals the one entered later", () => {
    expect(lastTestOf([test("T1", "2003-01-01"), test("T2", "2001-05-05")])?.test).toBe("T1");
    expect(lastTestOf([test("T1", "2003-01-01"), test("T2", "2003-01-01")])?.test).toBe("T2");
  });

  it("takes all its replicates together, with the exact interval", () => {
    // 18 of 20: Clopper & Pearson 1934, Biometrika 26:404-413; limits 0.683 to 0.988 as in their charts.
    const last = lastTestOf([
      test("T1", "2003", [
        { sown: 12, normal: 10 },
        { sown: 8, normal: 8 },
      ]),
    ]);
    expect(last?.germination).toBe(0.9);
    expect(last?.low).toBeCloseTo(0.683, 3);
    expect(last?.high).toBeCloseTo(0.988, 3);
  });

  it("is none where nothing was tested", () => {
    expect(lastTestOf([])).toBeNull();
    expect(lastTestOf([test("T1", "2003", [])])).toBeNull();
  });
});
