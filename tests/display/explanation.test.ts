import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type Explanation, methodOf, plainFigures } from "@/lib/display/explanation";
import { calculationNamed } from "@/lib/schemas/calculations";
import { projectFiles } from "../architecture/source-files";

const told = { title: "It", answer: "1", formula: "x", inputs: [], assumed: [], sources: [] };
const texts = projectFiles(/^(app|components|lib\/display)\/.*\.tsx?$/).map((file) => readFileSync(file, "utf8"));

/** Every word that stands in quotes behind a key, in any explanation of the code. */
function written(key: string): string[] {
  const found = texts.flatMap((text) => [...text.matchAll(new RegExp(`\\b${key}: "([^"]+)"`, "g"))]);
  return found.map(([, word]) => word ?? "");
}

describe("an explanation", () => {
  it("leads to the calculation that made its figure", () => {
    const of = (more: object) => methodOf({ ...told, ...more } as unknown as Explanation);
    expect(of({ calc: "echo '{}' | npm run --silent calc -- off-type-trend" })).toBe("off-type-trend");
    expect(of({ calc: "npm run --silent figures -- 'M 3'" })).toBe("lineage");
    expect(of({ method: "effective-size", calc: "npm run --silent figures -- 'M 3'" })).toBe("effective-size");
    expect(of({ plain: "sum of the ledger" })).toBeNull();
  });

  it("is no explanation without a way to its method, unless its figure is a plain one", () => {
    // @ts-expect-error a figure whose explanation leads nowhere
    const nowhere: Explanation = told;
    // @ts-expect-error a figure of a calculation is no plain one
    const both: Explanation = { ...told, plain: "sum of the ledger", method: "reserve" };
    expect([nowhere, both].map(methodOf)).toEqual([null, "reserve"]);
  });

  it("names only calculations that there are", () => {
    const commands = texts.flatMap((text) => [...text.matchAll(/calc -- ([a-z-]+)/g)].map(([, name]) => name ?? ""));
    expect(commands.length).toBeGreaterThan(10);
    const methods = written("method").filter((word) => !word.includes(" ") && word.includes("-"));
    expect([...commands, ...methods].filter((name) => !calculationNamed(name))).toEqual([]);
  });

  it("calls few figures plain, and each kind of them is there", () => {
    const plain = written("plain");
    expect([...new Set(plain)].toSorted()).toEqual(Object.keys(plainFigures).toSorted());
    expect(plain.length).toBeLessThanOrEqual(8);
  });
});
