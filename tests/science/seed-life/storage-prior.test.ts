import { expect, it } from "vitest";
import { storagePrior } from "@/lib/science/seed-life/storage-prior";
import { answered, pathsOf } from "../agreement";

// Wheat, Ellis & Hong 2007.
const wheat = { KE: 8.498, CW: 4.836, CH: 0.0322, CQ: 0.000454 };
const at = (moisturePercent: number, temperatureC: number) =>
  answered(storagePrior({ constants: wheat, moisturePercent, temperatureC }));

it("wheat at 10 % and 20 °C: σ 686.1 days, by hand from log₁₀ σ = 8.498 − 4.836 − 0.644 − 0.1816 = 2.8364", () => {
  const { prior, sigmaYears, longestYears, assumed } = at(10, 20);
  expect(sigmaYears).toBeCloseTo(686.1 / 365.2425, 3);
  expect(prior.Ki).toEqual({ mean: 1.65, sd: 0.5 });
  expect(prior.lnSigmaYears.mean).toBeCloseTo(Math.log(686.1 / 365.2425), 4);
  expect(prior.lnSigmaYears.sd).toBe(1);
  expect([longestYears, assumed]).toEqual([null, []]);
});

it("no more is believed than 15 years in the cold and 10 in a room", () => {
  // 8 % at 5 °C: 24.9 years (seed-testing reference, section c)
  const cold = at(8, 5);
  expect(cold.sigmaYears).toBeCloseTo(24.9, 1);
  expect(cold.longestYears).toBe(15);
  expect(cold.prior.lnSigmaYears.mean).toBeCloseTo(Math.log(15), 12);
  // 5 % at 20 °C: 686.1 days · (10/5)^4.836 = 19,597 days, 53.7 years
  const room = at(5, 20);
  expect(room.sigmaYears).toBeCloseTo(53.7, 1);
  expect(room.longestYears).toBe(10);
});

it("outside what the equation is known for it says so, and what it cannot take it refuses", () => {
  expect(at(8, -18).assumed.map(({ code }) => code)).toEqual(["outside-temperature"]);
  expect(at(2, 20).assumed.map(({ code }) => code)).toEqual(["outside-moisture"]);
  expect(pathsOf(storagePrior({ constants: wheat, moisturePercent: 0, temperatureC: 20 }))).toEqual([
    ["moisturePercent"],
  ]);
});
