import { describe, expect, it } from "vitest";
import { calculationNamed } from "@/lib/schemas/calculations";
import type { Refusal } from "@/lib/science/outcome";

function firstRefusal(name: string, line: string): Refusal {
  const outcome = calculationNamed(name)?.run(JSON.parse(line));
  if (!outcome || outcome.ok) return expect.fail(`${name} did not refuse ${line}`);
  return outcome.refusals[0] as Refusal;
}

describe("the place of a fault in the shape", () => {
  it.each<[string, string, string, (string | number)[]]>([
    ["a list in place of an object", "reserve", "[1]", []],
    ["a number in place of an object", "reserve", "7", []],
    ["nothing in place of an object", "reserve", "null", []],
    ["a missing key", "reserve", "{}", ["seedsPerGrowOut"]],
    ["an unknown key", "reserve", '{"seedsPerGrowOut": 1, "growouts": 3}', ["growouts"]],
    ["a key of the language itself", "reserve", '{"seedsPerGrowOut": 1, "__proto__": 3}', ["__proto__"]],
    ["a text for a number", "reserve", '{"seedsPerGrowOut": "97"}', ["seedsPerGrowOut"]],
    ["null for a number that may be left out", "reserve", '{"seedsPerGrowOut": 9, "tests": null}', ["tests"]],
    ["a fraction for a count", "reserve", '{"seedsPerGrowOut": 9.5}', ["seedsPerGrowOut"]],
    ["a number beyond all numbers", "reserve", '{"seedsPerGrowOut": 1e999}', ["seedsPerGrowOut"]],
    ["a count too large to be exact", "reserve", '{"seedsPerGrowOut": 1e17}', ["seedsPerGrowOut"]],
    [
      "a missing count of a replicate",
      "germination-test",
      '{"replicates": [{"sown": 5}]}',
      ["replicates", 0, "normal"],
    ],
    [
      "an unknown kind of seed",
      "germination-test",
      '{"replicates": [{"sown": 5, "normal": 1}, {"sown": 5, "normal": 1, "mouldy": 1}]}',
      ["replicates", 1, "mouldy"],
    ],
    ["a test that is none", "germination-compare", '{"a": {"sown": 1, "normal": 1}, "b": 4}', ["b"]],
    ["an unknown sex", "effective-size", '{"pollenParents": 9, "seedParents": 4, "sexes": "male"}', ["sexes"]],
    [
      "shares that are a word",
      "effective-size",
      '{"pollenParents": 9, "seedParents": 4, "seedShares": "alike"}',
      ["seedShares"],
    ],
    [
      "a spread without its number",
      "effective-size",
      '{"pollenParents": 9, "seedParents": 4, "seedShares": {}}',
      ["seedShares", "cv"],
    ],
    [
      "a spread with more than its number",
      "effective-size",
      '{"pollenParents": 9, "seedParents": 4, "seedShares": {"cv": 1, "mean": 2}}',
      ["seedShares", "mean"],
    ],
    [
      "a share that is a text",
      "effective-size",
      '{"pollenParents": 2, "seedParents": 2, "pollenShares": [1, "2"]}',
      ["pollenShares", 1],
    ],
    ["a lot of no kind", "lineage", '{"lots": [{"id": "A"}]}', ["lots", 0, "kind"]],
    ["a lot of an unknown kind", "lineage", '{"lots": [{"id": "A", "kind": "cutting"}]}', ["lots", 0, "kind"]],
    [
      "a founder with parents",
      "lineage",
      '{"lots": [{"id": "A", "kind": "founder", "parents": []}]}',
      ["lots", 0, "parents"],
    ],
    ["a blend without parents", "lineage", '{"lots": [{"id": "A", "kind": "blend"}]}', ["lots", 0, "parents"]],
    ["a lot without a name", "lineage", '{"lots": [{"id": "", "kind": "founder"}]}', ["lots", 0, "id"]],
    ["a pair of one", "lineage", '{"lots": [{"id": "A", "kind": "founder"}], "pairs": [["A"]]}', ["pairs", 0]],
    ["neither plants nor a frequency", "off-types", "{}", ["frequency"]],
    ["plants looked at, none told", "off-types", '{"sampled": 10}', ["found"]],
    ["both ways of asking at once", "off-types", '{"sampled": 10, "frequency": 0.1}', ["sampled"]],
  ])("%s leads there", (_, name, line, path) => {
    expect(firstRefusal(name, line).path).toEqual(path);
  });
});

describe("the sentence of a fault in the shape", () => {
  it("says what stands there and what would be right", () => {
    expect(firstRefusal("reserve", '{"seedsPerGrowOut": "97"}').sentence).toBe(
      '"97" cannot stand for seedsPerGrowOut; a number is needed',
    );
    expect(firstRefusal("reserve", '{"seedsPerGrowOut": 9.5}').sentence).toBe(
      "9.5 cannot stand for seedsPerGrowOut; a whole number is needed",
    );
    expect(firstRefusal("reserve", "{}").sentence).toBe("nothing stands for seedsPerGrowOut; a number is needed");
    expect(firstRefusal("lineage", '{"lots": [{"id": "A", "kind": "cutting"}]}').sentence).toBe(
      '"cutting" cannot stand for kind; choose one of "founder", "grow-out", "blend", "split"',
    );
    const shares = '{"pollenParents": 9, "seedParents": 4, "seedShares": "alike"}';
    expect(firstRefusal("effective-size", shares).sentence).toBe(
      '"alike" cannot stand for seedShares; needed is "equal", or an object in { }, or a list in [ ]',
    );
  });
});
