import { describe, expect, it } from "vitest";
import oilContent from "@/lib/science/seed-moisture/oil-content.json";
import { type AirOfSeed, seedMoisture } from "@/lib/science/seed-moisture/seed-moisture";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";

const moisture = (relativeHumidityPercent: number, temperatureC: number, oilPercent: number) =>
  answered(seedMoisture({ relativeHumidityPercent, temperatureC, oilPercent }));

describe("seed in air (Cromarty, Ellis & Roberts 1982; figures by an independent script)", () => {
  it("29 % oil, 13 % humidity, 25 °C: 3.877 %", () =>
    expect(moisture(13, 25, 29).moisturePercent).toBeCloseTo(3.87745865, 6));
  it("35 % oil, 50 % humidity, 20 °C: 7.906 %", () =>
    expect(moisture(50, 20, 35).moisturePercent).toBeCloseTo(7.90637722, 6));
  it("2 % oil, 15 % humidity, 15 °C: 6.14 %", () => expect(moisture(15, 15, 2).moisturePercent).toBeCloseTo(6.14, 2));
  it("22 % oil at 23.362293 % and 20 °C: 6 %", () =>
    expect(moisture(23.362293, 20, 22).moisturePercent).toBeCloseTo(6, 6));
  it("air without water leaves none", () => expect(moisture(0, 20, 5).moisturePercent).toBe(0));
});

it("says where the formula was not fitted", () => {
  const codes = (...air: Parameters<typeof moisture>) => moisture(...air).assumed.map(({ code }) => code);
  expect(codes(35, 20, 5)).toEqual([]);
  expect(codes(75, 20, 5)).toEqual(["outside-humidity"]);
  expect(codes(35, 10, 40)).toEqual(["outside-temperature"]);
  expect(codes(35, 10, 5)).toEqual([]);
});

it("agrees with 300 airs at 30 digits", () => {
  for (const { input, expected } of referenceCases<AirOfSeed>("seed-moisture")) {
    expectAgreement(answered(seedMoisture(input)), expected);
  }
});

it("air that cannot be is refused at its place", () => {
  const paths = (change: Partial<AirOfSeed>) =>
    pathsOf(seedMoisture({ relativeHumidityPercent: 35, temperatureC: 20, oilPercent: 5, ...change }));
  expect(paths({ relativeHumidityPercent: 100 })).toEqual([["relativeHumidityPercent"]]);
  expect(paths({ oilPercent: -1 })).toEqual([["oilPercent"]]);
  expect(paths({ temperatureC: -99 })).toEqual([["temperatureC"]]);
});

it("the list of oil contents gives a range, its source and how far it was checked for each", () => {
  for (const { crop, oilPercentLow, oilPercentHigh, source, verified } of oilContent) {
    expect(oilPercentLow, crop).toBeLessThanOrEqual(oilPercentHigh);
    expect(source && verified, crop).toBeTruthy();
  }
});
