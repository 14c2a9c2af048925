import { describe, expect, it } from "vitest";
import { type GradeFacts, isolationGrade } from "@/lib/science/isolation/isolation-grade";

const facts = (more: Partial<GradeFacts>): GradeFacts => ({
  clonal: false,
  looked: true,
  verdicts: [],
  methods: [],
  ...more,
});
const grade = (more: Partial<GradeFacts>) => isolationGrade(facts(more)).grade;

describe("the grade of a lot", () => {
  it("is never isolated from an empty list: nobody looked is unknown, looked and none found is isolated", () => {
    expect(isolationGrade(facts({ looked: false }))).toEqual({ grade: "unknown", reasons: ["nobody-looked"] });
    expect(isolationGrade(facts({}))).toEqual({ grade: "isolated", reasons: ["none-found"] });
  });

  it("is that of the worst source", () => {
    expect(grade({ verdicts: ["ok", "does-not-cross", "rarely-crosses", "none-known", "same-variety"] })).toBe(
      "isolated",
    );
    expect(grade({ verdicts: ["ok", "marginal"] })).toBe("partly");
    expect(grade({ verdicts: ["marginal", "too-close", "ok"] })).toBe("open");
  });

  it("a source too close is open even where nobody looked for others or another could not be judged", () => {
    expect(grade({ looked: false, verdicts: ["too-close"] })).toBe("open");
    expect(grade({ verdicts: ["not-assessed", "too-close"] })).toBe("open");
  });

  it("is unknown where a source could not be judged, or where sources stand far off and nobody looked for nearer ones", () => {
    expect(isolationGrade(facts({ verdicts: ["not-assessed", "marginal"] }))).toEqual({
      grade: "unknown",
      reasons: ["not-assessed", "marginal"],
    });
    expect(grade({ looked: false, verdicts: ["ok"] })).toBe("unknown");
  });

  it("is controlled where cage, bags or hand pollination shut pollen out, by more than assumption", () => {
    const hand = { method: "hand pollination", evidence: "seen" };
    expect(isolationGrade(facts({ looked: false, verdicts: ["too-close"], methods: [hand] }))).toEqual({
      grade: "controlled",
      reasons: ["kept-apart", "too-close", "nobody-looked"],
    });
    expect(grade({ methods: [{ method: "cage", evidence: "every fruit tagged" }] })).toBe("controlled");
    for (const evidence of ["assumed", null]) {
      const assumed = isolationGrade(facts({ verdicts: ["marginal"], methods: [{ method: "bags", evidence }] }));
      expect(assumed).toEqual({ grade: "partly", reasons: ["marginal", "kept-apart-by-assumption"] });
    }
  });

  it("is no better for a barrier, a distance or a time that was only written down", () => {
    const methods = ["barrier", "distance", "time"].map((method) => ({ method, evidence: "seen" }));
    expect(grade({ verdicts: ["too-close"], methods })).toBe("open");
  });

  it("there is none to claim for a crop kept by division", () => {
    expect(isolationGrade(facts({ clonal: true }))).toEqual({ grade: null, reasons: ["clonal"] });
  });
});
