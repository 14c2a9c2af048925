import { describe, expect, it } from "vitest";
import { isEmptyRegistry } from "@/lib/registry/season/is-empty";
import { emptyRegistry } from "@/tests/setup/registry";
import { withSteward, withVariety } from "../varieties/with-variety";

describe("an empty registry", () => {
  it("is one with nothing but the release's crop list", async () => {
    expect(await isEmptyRegistry(await emptyRegistry())).toBe(true);
  });

  it("is none any more with a variety or a steward", async () => {
    const [first, second] = [await emptyRegistry(), await emptyRegistry()];
    await withVariety(first);
    await withSteward(second);
    expect([await isEmptyRegistry(first), await isEmptyRegistry(second)]).toEqual([false, false]);
  });
});
