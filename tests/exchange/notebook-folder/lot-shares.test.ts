import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readLotShares, writeLotShares } from "@/lib/exchange/notebook-folder/lot-shares";

describe("a list of lots with shares", () => {
  it("that is written reads back as the same list", () => {
    const shares = fc
      .uniqueArray(fc.constantFrom("A", "B 2", "C:c", "D;d", "E;f;g", "0.5"), { minLength: 1 })
      .chain((lots) =>
        fc.array(fc.integer({ min: 1, max: 1000 }), { minLength: lots.length, maxLength: lots.length }).map((parts) => {
          const whole = parts.reduce((sum, part) => sum + part, 0);
          return lots.map((lot, place) => ({ lot, share: (parts[place] ?? 0) / whole }));
        }),
      );
    fc.assert(
      fc.property(shares, (list) => {
        const known = new Set<string>(list.map(({ lot }) => lot));
        const read = readLotShares(writeLotShares(list), (name) => known.has(name));
        expect(read).toEqual({ lots: list, unknown: [], faults: [] });
      }),
    );
  });

  it("names what stands nowhere, and keeps to the rest", () => {
    const read = readLotShares("A:0.5;Q:0.5", (name) => name === "A");
    expect(read.unknown).toEqual(["Q"]);
    expect(read.faults).toEqual([]);
  });

  it("may miss the sum of 1 by a millionth, not by two", () => {
    const faults = (text: string) => readLotShares(text, () => false).faults.length;
    expect(faults("A:0.500001;B:0.5")).toBe(0);
    expect(faults("A:0.500002;B:0.5")).toBe(1);
  });
});
