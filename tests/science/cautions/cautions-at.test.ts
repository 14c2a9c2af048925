import { describe, expect, it } from "vitest";
import { cautionsAt, type Step } from "@/lib/science/cautions/cautions-at";
import { cropList } from "@/lib/science/crops/crop-profile";

const codes = (step: Step, seed: Parameters<typeof cautionsAt>[1]) => cautionsAt(step, seed).map(({ code }) => code);
const steps: readonly Step[] = [
  "sow",
  "rogue",
  "taste",
  "harvest",
  "extract",
  "thresh",
  "dry",
  "store",
  "jar",
  "test",
  "share",
  "blend",
];

// Which crop wants which caution at which step: the trade's usual cautions, written here by hand.
describe("the cautions at a step", () => {
  it("taste every squash before its seed is taken, and say that the taste clears the plant and not its seed", () => {
    const [bitter] = cautionsAt("taste", { crop: "squash-maxima" });
    expect(bitter?.code).toBe("bitter-fruit");
    expect(bitter?.care.join(" ")).toMatch(/spit.*clears the plant, never its seed/s);
    expect(codes("sow", { crop: "squash-maxima" })).toEqual([]);
  });

  it("are silent for a tomato at harvest, and speak of mouldy ears for maize", () => {
    expect(codes("harvest", { crop: "tomato" })).toEqual([]);
    expect(codes("harvest", { crop: "maize-field" })).toEqual(["mouldy-ears"]);
    expect(codes("thresh", { crop: "rye" })).toEqual(["mouldy-ears", "ergot", "dust"]);
  });

  it("name treated seed first at every step, and nothing where it is known to be untreated", () => {
    for (const step of steps) {
      expect(codes(step, { crop: "pea", treatment: "chemical", substance: "thiram" })[0]).toBe("treated");
      expect(codes(step, { crop: "pea", treatment: "unknown" })[0]).toBe("treated");
      expect(codes(step, { crop: "pea", treatment: "none" })).not.toContain("treated");
      expect(codes(step, { crop: "pea", treatment: null })).not.toContain("treated");
    }
    expect(cautionsAt("jar", { treatment: "chemical", substance: "thiram" })[0]?.title).toBe("Treated seed: thiram");
  });

  it("warn of freezing wet seed and of dry ice where seed is dried and stored", () => {
    for (const step of ["dry", "store"] as const) {
      const freezing = cautionsAt(step, { crop: "kale" }).find(({ code }) => code === "freezing");
      expect(freezing?.care.join(" ")).toMatch(/dry seed only.*Dry ice: gloves and open air/s);
    }
  });

  it("pass on what the crop list says of harm, and what the steward wrote of the variety", () => {
    expect(
      codes("jar", { crop: "ground-cherry", cropCautions: "unripe fruit is toxic", cropName: "Ground cherry" }),
    ).toEqual(["crop"]);
    expect(codes("jar", { crop: "kale", cropCautions: "as cabbage" })).toEqual([]);
    expect(codes("share", { crop: "kale", varietyCautions: "stings" })).toEqual(["variety"]);
  });

  it("reach every crop of the list whose listed caution speaks of harm, at the jar", () => {
    const harmful = /toxic|poison|bitter alkaloid|unsafe|burn|irritat|aflatoxin|ergot|favism|cyanogenic|lectin/i;
    const silent = cropList()
      .filter(({ cautions }) => cautions !== null && harmful.test(cautions))
      .filter(({ key, cautions }) => cautionsAt("jar", { crop: key, cropCautions: cautions }).length === 0);
    expect(silent.map(({ key }) => key)).toEqual([]);
  });

  it("never say that something is safe or may be eaten", () => {
    const all = steps.flatMap((step) =>
      cropList().flatMap(({ key }) => cautionsAt(step, { crop: key, treatment: "unknown" })),
    );
    for (const { title, care } of all)
      expect(`${title} ${care.join(" ")}`).not.toMatch(/\bsafe\b|edible|may be eaten|can be eaten/i);
  });

  it("say nothing of a crop where none is known, but what is usual for any seed", () => {
    expect(codes("thresh", {})).toEqual(["dust"]);
    expect(codes("harvest", { crop: "own-tansy" })).toEqual([]);
  });
});
