import { describe, expect, it } from "vitest";
import { ledgerBalance } from "@/lib/registry/figures/ledger-balance";

const entry = (id: string, kind: string, amount: number, day: string) => ({
  id,
  kind,
  amount,
  unit: "g",
  onFirst: day,
  onLast: day,
  replacesId: null,
  takenBack: false,
});

describe("grams on hand", () => {
  it("are the sum of the ledger, freed of binary rounding", () => {
    const entries = [
      entry("1", "received", 0.3, "2001-01-01"),
      entry("2", "given", 0.1, "2002-01-01"),
      entry("3", "sown", 0.2, "2003-01-01"),
    ];
    expect(ledgerBalance(entries, null)).toBe(0);
  });

  it("are not known without an entry", () => {
    expect(ledgerBalance([], null)).toBeNull();
  });
});
