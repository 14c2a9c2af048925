import { describe, expect, it } from "vitest";
import { type StorageOfSeed, viability } from "@/lib/science/viability/viability";
import { viabilityConstants } from "@/lib/science/viability/viability-constants";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";

const wheat = { KE: 8.498, CW: 4.836, CH: 0.0322, CQ: 0.000454 };
const maize = { KE: 9.993, CW: 5.993, CH: 0.0322, CQ: 0.000454 };
const sigma = (constants: typeof wheat, moisturePercent: number, temperatureC: number) =>
  answered(viability({ constants, moisturePercent, temperatureC, Ki: 1 })).sigmaDays;

describe("the life of sealed seed (constants Ellis & Hong 2007; figures by an independent script)", () => {
  it("wheat at 10 % and 20 °C: σ 686.1 days (by hand: log₁₀ σ = 8.498 − 4.836 − .644 − .1816)", () => {
    expect(sigma(wheat, 10, 20)).toBeCloseTo(686.11987528, 6);
  });
  it("wheat at 5 % and −18 °C: 972 years", () => expect(sigma(wheat, 5, -18) / 365.25).toBeCloseTo(972.06394386, 5));
  it("maize at 13 % and 25 °C: 169.2 days", () => expect(sigma(maize, 13, 25)).toBeCloseTo(169.19498632, 6));
  it("wheat at 12 % and 20 °C from 95 %: 17.7 % after two years, 85 % after 173 days, half after 467", () => {
    const of = (more: Partial<StorageOfSeed>) =>
      answered(viability({ constants: wheat, moisturePercent: 12, temperatureC: 20, initialViability: 0.95, ...more }));
    expect(of({ days: 730.5 }).viabilityAfter).toBeCloseTo(0.17712552, 6);
    expect(of({ threshold: 0.85 }).daysToThreshold).toBeCloseTo(173, 0);
    expect(of({ threshold: 0.5 }).daysToThreshold).toBeCloseTo(467, 0);
    expect(of({ threshold: 0.99 }).daysToThreshold).toBe(0);
    expect(of({})).toMatchObject({ viabilityAfter: null, daysToThreshold: null });
  });
});

it("says where the equation was not fitted: the freezer, very dry and very damp seed", () => {
  const codes = (moisturePercent: number, temperatureC: number) =>
    answered(viability({ constants: wheat, moisturePercent, temperatureC, Ki: 1 })).assumed.map(({ code }) => code);
  expect(codes(10, 20)).toEqual([]);
  expect(codes(5, -18)).toEqual(["outside-temperature"]);
  expect(codes(2, 20)).toEqual(["outside-moisture"]);
});

it("agrees with 300 stores at 30 digits", () => {
  for (const { input, expected } of referenceCases<StorageOfSeed>("viability")) {
    expectAgreement(answered(viability(input)), expected);
  }
});

it("a moisture of 0, both or neither of the start, and shares of 0 or 1 are refused at their place", () => {
  const paths = (change: Partial<StorageOfSeed>) =>
    pathsOf(viability({ constants: wheat, moisturePercent: 10, temperatureC: 20, initialViability: 0.9, ...change }));
  expect(paths({ moisturePercent: 0 })).toEqual([["moisturePercent"]]);
  expect(paths({ initialViability: undefined })).toEqual([["initialViability"]]);
  expect(paths({ Ki: 1 })).toEqual([["Ki"]]);
  expect(paths({ initialViability: 1 })).toEqual([["initialViability"]]);
  expect(paths({ threshold: 0 })).toEqual([["threshold"]]);
  expect(paths({ days: -1 })).toEqual([["days"]]);
  expect(paths({ temperatureC: 1e6 })).toEqual([["constants"]]);
});

it("only constants that were checked in their source are listed: twelve species", () => {
  const all = viabilityConstants();
  expect(all).toHaveLength(12);
  expect(all.every(({ verified }) => verified)).toBe(true);
  expect(all.map(({ crop }) => crop)).not.toContain("Barley");
  expect(all.find(({ crop }) => crop === "Maize")).toMatchObject(maize);
});
