import { describe, expect, it } from "vitest";
import { calculationNamed, calculations } from "@/lib/schemas/calculations";

describe("every calculation", () => {
  it("has a name of its own", () => {
    expect(new Set(calculations.map(({ name }) => name)).size).toBe(calculations.length);
    expect(calculationNamed("reserve")?.title).toBe("What to keep back");
    expect(calculationNamed("reserves")).toBeUndefined();
  });

  it.each(calculations.map((each) => [each.name, each] as const))(
    "%s answers its own example with the keys it promises",
    (_, each) => {
      const outcome = each.run(each.example);
      if (!outcome.ok) return expect.fail(JSON.stringify(outcome.refusals));
      const promised = new Set(each.output.flatMap(({ key }) => key.split(", ")).map((key) => key.split(/[[.]/)[0]));
      for (const key of Object.keys(outcome.value)) expect(promised, key).toContain(key);
      expect(outcome.value).toHaveProperty("assumed");
      expect(JSON.stringify(outcome.value)).not.toMatch(/NaN|undefined/);
    },
  );

  it.each(calculations.map((each) => [each.name, each] as const))(
    "%s says what it answers, when to doubt it and where it is from",
    (_, each) => {
      for (const text of [each.title, each.answers, each.whenToDoubt]) expect(text.length).toBeGreaterThan(10);
      for (const list of [each.formula, each.source, each.input, each.output]) expect(list.length).toBeGreaterThan(0);
      expect(each.run({ ...(each.example as object), unheardOf: 1 })).toMatchObject({
        ok: false,
        refusals: [{ path: ["unheardOf"] }],
      });
    },
  );
});
