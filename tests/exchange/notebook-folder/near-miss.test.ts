import { describe, expect, it } from "vitest";
import { nearMiss } from "@/lib/exchange/notebook-folder/near-miss";

const names = ["Orla Fennwick", "Élan Crest", "Kale 1", "Kale 2", "G5"];

describe("a near miss", () => {
  it.each([
    ["Orla Fenwick", "Orla Fennwick"],
    ["Olra Fennwick", "Orla Fennwick"],
    ["orla fennwick", "Orla Fennwick"],
    ["Elan-Crest", "Élan Crest"],
    ["Kale2", "Kale 2"],
    ["G55", "G5"],
  ])("is answered: %s", (written, meant) => {
    expect(nearMiss(written, names)).toBe(meant);
  });

  it.each(["Nobody Known", "G99999", "Onions", "", "x".repeat(200)])("is not made of %s", (written) => {
    expect(nearMiss(written, names)).toBeNull();
  });

  it("is the first of equals", () => {
    expect(nearMiss("Kale 3", names)).toBe("Kale 1");
  });
});
