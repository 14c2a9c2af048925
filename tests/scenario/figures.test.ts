import { beforeAll, describe, expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { figuresOfAll, type LotFigures } from "@/lib/registry/figures/read-figures";
import { bytesOfPhoto } from "@/lib/registry/photos/keep-file";
import { loadScenario } from "@/seed-scenario/load-scenario";
import { scenarioFolder } from "@/seed-scenario/scenario-folder";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { rowsOf } from "./circle-folder";
// Worked out by expected-figures.py beside this file, which shares no line with the project.
import expected from "./expected-figures.json" with { type: "json" };

let registry: Awaited<ReturnType<typeof emptyRegistry>>;
let figures: ReadonlyMap<string, LotFigures>;

beforeAll(async () => {
  registry = await emptyRegistry();
  await loadScenario(registry, ownerHere());
  figures = new Map([...(await figuresOfAll(registry)).values()].map((each) => [each.number, each]));
});

function figuresOf(lot: string): LotFigures {
  const found = figures.get(lot);
  if (!found) throw new Error(`${lot} has no figures`);
  return found;
}

describe("the demonstration circle, brought in", () => {
  it("stands in the registry with all its lots", () => {
    // a second record of a lot is read as the first
    const twice = rowsOf("lot_details.csv").filter((row) => row.same_as !== "");
    expect(twice.length).toBeGreaterThan(0);
    expect(figures.size).toBe(rowsOf("lots.csv").length - twice.length);
  });

  it("shows a few pictures, each of a record that it names, and small", async () => {
    const photos = await registry.read.photo.findMany();
    expect(photos).toHaveLength(8);
    expect(photos.reduce((sum, photo) => sum + photo.bytes, 0)).toBeLessThan(600_000);
    for (const { hash } of photos) expect((await bytesOfPhoto(registry.location, hash)).state).toBe("whole");
  });

  it("says nothing new when it is brought in again", async () => {
    const encoder = new TextEncoder();
    const files = new Map([...scenarioFolder()].map(([name, text]) => [name, encoder.encode(text)] as const));
    const { value } = granted(await importFolder(registry, ownerHere(), files));
    expect(value.nothingNew).toBe(true);
  });
});

describe("the figures of the demonstration circle", () => {
  const fields = [
    "effectiveSize",
    "inbreeding",
    "coancestry",
    "nativeDiversityRetained",
    "foreignAncestry",
    "generations",
  ] as const;

  it.each(expected.map((each) => [each.lot, each] as const))(
    "of %s are those that another program finds",
    (lot, wanted) => {
      const found = figuresOf(lot);
      for (const field of fields) {
        const value = wanted[field];
        // The other program follows nothing below a grow-out without counts; the registry still knows pollen and generations there.
        if (value === undefined) continue;
        if (value === null) expect(found[field], field).toBeNull();
        else expect(found[field], field).toBeCloseTo(value, 9);
      }
      if (wanted.founders) expect(found.founders).toEqual(wanted.founders);
      if (wanted.gramsOnHand === null) expect(found.gramsOnHand).toBeNull();
      else expect(found.gramsOnHand).toBeCloseTo(wanted.gramsOnHand, 9);
      expect(found.lastTest?.test).toBe(wanted.lastTest?.test);
      for (const part of ["germination", "low", "high"] as const)
        if (wanted.lastTest) expect(found.lastTest?.[part], part).toBeCloseTo(wanted.lastTest[part], 9);
    },
  );

  it("of the first maize harvest are those of a page of arithmetic", () => {
    // Night 1996 long strip: 168 plants stood, 8 were pulled before the pollen, seed of 96 with a cv of 0.6; parents not inbred.
    // P_MM = (1 + 0.36)/96 = 0.0141667; P_MF = P_FF = 1/160 = 0.00625
    // kappa = (0.0141667 + 2 · 0.00625 + 0.00625)/4 = 0.0082292, so Ne = 121.519
    // F = P_MF · ½ = 0.003125; theta = kappa · ½ = 0.0041146
    const { effectiveSize, inbreeding, coancestry } = figuresOf("Night 02");
    expect(effectiveSize).toBeCloseTo(121.519, 3);
    expect(inbreeding).toBeCloseTo(0.003125, 9);
    expect(coancestry).toBeCloseTo(0.0041146, 7);
  });

  it("of the spinach of four males are Wright's, but for the inbreeding of the parents", () => {
    // Iron 2012 stone croft: 4 males, seed of 38 females in equal shares: 4 · 4 · 38/(4 + 38) = 14.4762 (Wright 1931).
    // Its parents are Iron 10, so Ne = 14.4762/(1 + F of Iron 10).
    const parents = figuresOf("Iron 10").inbreeding ?? Number.NaN;
    expect(figuresOf("Iron 13").effectiveSize).toBeCloseTo((4 * 4 * 38) / 42 / (1 + parents), 9);
  });

  it("of the greedy mothers are those of their weights, a quarter below equal shares", () => {
    // Σ q² of the fourteen weights: 118.4² + 104.2² + ... = 35,095; 35,095/473.2² = 0.15673, as good as 6.4 equal mothers.
    // 18 pollen parents: kappa = (0.15673 + 3/18)/4 = 0.08085; 1/kappa = 12.37, and less by the inbreeding of the parents.
    const grams = [118.4, 104.2, 86.1, 24.6, 22.8, 19.5, 17.2, 16.9, 14.4, 13.1, 11.8, 9.7, 8.2, 6.3];
    const sum = grams.reduce((total, each) => total + each, 0);
    const kappa = (grams.reduce((total, each) => total + (each / sum) ** 2, 0) + 3 / 18) / 4;
    const parents = figuresOf("Anvil 13").inbreeding ?? Number.NaN;
    expect(figuresOf("Anvil 16").effectiveSize).toBeCloseTo(1 / (kappa * (1 + parents)), 6);
    expect(1 / kappa).toBeCloseTo(12.37, 2);
    // With equal shares of the fourteen: kappa = (1/14 + 3/18)/4 = 0.05952, 1/kappa = 16.8.
    expect(1 / kappa).toBeLessThan(0.75 * 16.8);
  });

  it("of a blend are the mean of its parts, and its coancestry is less than theirs", () => {
    // Thimble 36 is 49 parts of Thimble 33 and 51 of Thimble 32, which share no founder on record:
    // theta = 0.49² theta33 + 0.51² theta32 + 2 · 0.49 · 0.51 · 0.
    const [home, averil, wide] = ["Thimble 33", "Thimble 32", "Thimble 36"].map(
      (lot) => figuresOf(lot).coancestry ?? Number.NaN,
    );
    expect(wide).toBeCloseTo(0.49 ** 2 * (home ?? 0) + 0.51 ** 2 * (averil ?? 0), 12);
  });

  it("of a clonal crop and below a grow-out without counts are not given", () => {
    for (const lot of ["Wheel 33", "Heron 14", "Heron 23"]) expect(figuresOf(lot).coancestry, lot).toBeNull();
    expect(figuresOf("Wheel 33").lineageFigures).toBe(false);
  });
});
