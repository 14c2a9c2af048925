import temml from "temml";
import { describe, expect, it } from "vitest";
import { calculations } from "@/lib/schemas/calculations";
import { typesetFormulas } from "@/lib/schemas/calculations/typeset";

describe("the typeset formulas", () => {
  it.each(calculations.map(({ name }) => name))("has those of %s, each of which can be typeset", (name) => {
    const lines = typesetFormulas[name] ?? [];
    expect(lines.length).toBeGreaterThan(0);
    for (const line of lines) {
      const mathml = temml.renderToString(line, { throwOnError: true });
      expect(mathml).toContain("<math");
      expect(mathml).not.toContain("merror");
    }
  });

  it("is refused where a formula is not well formed", () => {
    expect(() => temml.renderToString(String.raw`\frac{1}{`, { throwOnError: true })).toThrow();
  });
});
