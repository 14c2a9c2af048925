import { describe, expect, it } from "vitest";
import { z } from "zod";
import { parsed } from "@/lib/schemas/parsed";
import { textsOfForm } from "@/lib/schemas/varieties/form-texts";

describe("what was sent, read by its shape", () => {
  const shape = z.strictObject({ name: z.string().min(1, "is empty; write a name"), counts: z.array(z.number()) });

  it("is accepted where it fits", () => {
    expect(parsed(shape, { name: "a", counts: [1] })).toEqual({ ok: true, value: { name: "a", counts: [1] } });
  });

  it("is refused at each place that does not fit, with what stands there and what would be right", () => {
    const outcome = parsed(shape, { name: "", counts: [1, "two"] });
    expect(outcome.ok ? [] : outcome.refusals).toMatchObject([
      { path: ["name"], given: "", needed: "write a name" },
      { path: ["counts", 1], given: "two" },
    ]);
  });

  it("is refused with a field that nobody knows", () => {
    const outcome = parsed(shape, { name: "a", counts: [], colour: "red" });
    expect(outcome.ok ? null : outcome.refusals[0]).toMatchObject({ code: "unknown-field", path: ["colour"] });
  });
});

describe("the texts of a form", () => {
  it("leave out files and the framework's own fields", () => {
    const form = new FormData();
    form.set("name", "Hollow Pea");
    form.set("$ACTION_ID", "x");
    form.set("file", new Blob(["x"]));
    expect(textsOfForm(form)).toEqual({ name: "Hollow Pea" });
  });
});
