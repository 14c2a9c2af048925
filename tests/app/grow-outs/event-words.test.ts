import { describe, expect, it } from "vitest";
import { eventWords } from "@/app/grow-outs/_words/event-words";
import { metricUnits } from "@/lib/display/units";
import type { EventOfGrowOut } from "@/lib/registry/grow-outs/events-of-grow-out";

const words = (patch: Partial<EventOfGrowOut>) =>
  eventWords(
    {
      id: "e",
      kind: "count",
      on: null,
      what: null,
      how: null,
      plants: null,
      amount: null,
      note: null,
      stewardId: null,
      ...patch,
    },
    metricUnits,
  );

describe("what was seen in a grow-out", () => {
  it("tells a pass that found none from one of which nothing was written", () => {
    expect(words({ kind: "rogues", amount: 0, plants: 60, how: "before" })).toBe(
      "none pulled of 60 looked at before pollen shed",
    );
    expect(words({ kind: "rogues", amount: 3 })).toBe("3 pulled; nobody wrote how many were looked at");
  });

  it("gives counts by their stage, and an unknown distance as unknown", () => {
    expect(words({ what: "up", plants: 70 })).toBe("70 plants had come up");
    expect(words({ kind: "neighbour", what: "maize", how: "NW", amount: 200 })).toBe("maize, 200\u00a0m away NW");
    expect(words({ kind: "neighbour", what: "maize" })).toBe("maize, distance unknown");
    expect(words({ kind: "flowering", what: "half", how: "silk" })).toBe("half in silk");
  });
});
