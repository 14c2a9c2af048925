import { describe, expect, it } from "vitest";
import { sourcesOfField } from "@/lib/registry/crops/source-marks";
import { cropFieldNames } from "@/lib/schemas/crops/crop-fields";
import { cropList } from "@/lib/science/crops/crop-profile";

const maize =
  "mate=PAT74v(panmictic; the 95-100 figure itself GKu);iso=WAC302v(660 ft),CFR76u(660 ft open-pollinated);spg=CFR46v2(3);all other cells=GKu";

describe("the sources of a crop's field", () => {
  it("are those that the list names for its group, with their mark", () => {
    expect(sourcesOfField(maize, "isolationStewardMinM").map((each) => [each.code, each.mark])).toEqual([
      ["WAC302", "verified"],
      ["CFR76", "not verified"],
    ]);
    expect(sourcesOfField(maize, "seedsPerGramMax")).toMatchObject([
      { code: "CFR46", mark: "second hand", detail: "3" },
    ]);
  });

  it("keep a detail whole that has the list's own parting marks in it", () => {
    expect(sourcesOfField(maize, "matingSystem")[0]?.detail).toBe("panmictic; the 95-100 figure itself GKu");
  });

  it("fall back to what the list says of all other cells", () => {
    expect(sourcesOfField(maize, "plantsMin")).toMatchObject([{ code: "GK", mark: "not verified" }]);
  });

  it("are there for every field of every crop of the list, each with its citation", () => {
    const open = cropList().flatMap((crop) =>
      cropFieldNames.flatMap((field) => {
        const sources = sourcesOfField(crop.sources, field);
        const named = sources.length > 0 && sources.every((each) => each.citation !== each.code);
        return named ? [] : [`${crop.key} ${field}: ${sources.map((each) => each.code).join(",")}`];
      }),
    );
    expect(open).toEqual([]);
  });
});
