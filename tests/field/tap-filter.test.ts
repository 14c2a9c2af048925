import { describe, expect, it } from "vitest";
import { isMeant, type Tap } from "@/lib/field/tap-filter";

const tap = (at: number, x = 100, y = 600, first = true): Tap => ({ at, x, y, first });

describe("a tap", () => {
  it("is meant where it is the first, or comes as fast as a thumb can", () => {
    expect(isMeant(tap(0), null, false)).toBe(true);
    expect(isMeant(tap(300), tap(0), false)).toBe(true);
    expect(isMeant(tap(200, 300, 200), tap(0), false)).toBe(true);
  });

  it("is not meant where a wet glove makes it land twice on one place", () => {
    expect(isMeant(tap(90), tap(0), false)).toBe(false);
    expect(isMeant(tap(240, 120, 610), tap(0), false)).toBe(false);
  });

  it("is not meant where water taps a far place in the same moment, or a second finger lies on the screen", () => {
    expect(isMeant(tap(20, 300, 200), tap(0), false)).toBe(false);
    expect(isMeant(tap(900, 100, 600, false), tap(0), false)).toBe(false);
  });

  it("may come faster on what steps up and down by one", () => {
    expect(isMeant(tap(150), tap(0), true)).toBe(true);
    expect(isMeant(tap(60), tap(0), true)).toBe(false);
  });
});
