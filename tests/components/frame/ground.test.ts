import { expect, it } from "vitest";
import { groundOf } from "@/components/frame";
import { isWithin, workPlaces } from "@/components/frame/places";

it("a stored ground is read, and whatever else stands there is the device's own", () => {
  expect(groundOf("glare")).toBe("glare");
  expect(groundOf("night")).toBe("night");
  expect(groundOf(undefined)).toBe("device");
  expect(groundOf('"><script>')).toBe("device");
});

it("a place is current on its own page and on those under it, not on another that begins alike", () => {
  const lots = workPlaces.find((place) => place.name === "Lots");
  if (!lots) throw new Error("no place for lots");
  expect(isWithin("/lots", lots)).toBe(true);
  expect(isWithin("/lots/tw-12", lots)).toBe(true);
  expect(isWithin("/lots-of-others", lots)).toBe(false);
});
