import { describe, expect, it } from "vitest";
import { readSubmission } from "@/components/drafts/submission";

const kept = { path: "/lots/new", at: 1000, waited: true, texts: [["number", "Quern 1"]] };

describe("a form that was sent after the sign-in had run out", () => {
  it("is read as it was kept", () => {
    expect(readSubmission(JSON.stringify(kept), 2000)).toEqual(kept);
  });

  it("is left where it is older than half a day, or no such thing", () => {
    expect(readSubmission(JSON.stringify(kept), 1001 + 12 * 3_600_000)).toBeNull();
    expect(readSubmission(null, 0)).toBeNull();
    expect(readSubmission('{"path":3}', 0)).toBeNull();
    const odd = JSON.stringify({ ...kept, texts: [["a", 1], "b", ["c", "d"]] });
    expect(readSubmission(odd, 2000)?.texts).toEqual([["c", "d"]]);
  });
});
