import { describe, expect, it } from "vitest";
import { type StoreQuestion, storeOfLot } from "@/lib/registry/lots/store-of-lot";

const reading = (on: string, more: Partial<StoreQuestion["readings"][number]> = {}) => ({
  ...{ id: on, lotId: "l", on, onFirst: on, onLast: on, method: null, note: null },
  ...{ percent: null, relativeHumidityPercent: null, temperatureC: null, ...more },
});
const drying = (on: string) => ({
  ...{ id: on, lotId: "l", on, onFirst: on, onLast: on, note: null },
  ...{ startGrams: null, startPercent: null, targetPercent: null, endGrams: null, days: null },
});
const container = (place: string | null, temperatureC: number | null, amount: number | null = 100) => ({
  ...{ containerId: `${place}`, code: "c", kind: null, amount, unit: "g", sealedOn: null, lastOpened: null },
  ...{ desiccant: null, note: null, place, placeKind: null, building: null, temperatureC },
  relativeHumidityPercent: null,
});
const maize = { cropKey: "maize-field", latinName: "Zea mays subsp. mays" };
const ask = (more: Partial<StoreQuestion> = {}) =>
  storeOfLot({ crop: maize, readings: [], dryings: [], containers: [], own: [], ...more });

// Maize, Ellis & Hong 2007.
it("a kind has its constants by its species, others have none", () => {
  expect(ask()).toMatchObject({
    ...{ kind: "Maize", constants: { KE: 9.993, CW: 5.993, CH: 0.0322, CQ: 0.000454 } },
    ...{ moisture: null, temperature: null, own: [] },
  });
  expect(ask({ crop: { cropKey: "leek", latinName: "Allium porrum" } })).toBeNull();
  expect(ask({ crop: { cropKey: "own-crop", latinName: null } })).toBeNull();
});

it("an own value stands in the place of a published constant, and is told", () => {
  const own = { table: "viability-constants", row: "Maize", field: "KE", value: 9.5, reason: "a flour type" };
  const store = ask({ own: [{ ...own, source: null }] });
  expect(store?.constants.KE).toBe(9.5);
  expect(store?.own).toMatchObject([{ field: "KE", value: 9.5, instead: 9.993, reason: "a flour type" }]);
});

describe("moisture", () => {
  it("is the last that was read, and none before the lot was dried once more", () => {
    const readings = [reading("2024-01-10", { percent: 14 }), reading("2024-02-01", { percent: 11.2 })];
    expect(ask({ readings })?.moisture).toEqual({ percent: 11.2, on: "2024-02-01", from: null });
    expect(ask({ readings, dryings: [drying("2024-01-20")] })?.moisture?.percent).toBe(11.2);
    expect(ask({ readings, dryings: [drying("2024-03-01")] })?.moisture).toBeNull();
  });

  it("is worked out from the air in the jar by the oil of its kind", () => {
    const readings = [reading("2024-02-01", { relativeHumidityPercent: 50.5, temperatureC: 20.3 })];
    const moisture = ask({ readings })?.moisture;
    // maize in air of 50.5 % at 20.3 °C: 11.2 % (seed-testing reference, section c)
    expect(moisture?.percent).toBeCloseTo(11.2, 1);
    expect(moisture?.from).toEqual({ humidityPercent: 50.5, celsius: 20.3, oilPercent: 5 });
    expect(ask({ readings: [reading("2024-02-01", { relativeHumidityPercent: 50 })] })?.moisture).toBeNull();
  });
});

describe("warmth", () => {
  it("is that of the warmest place that holds seed", () => {
    const containers = [container("cellar", 9), container("shelf", 18), container("attic", 25, 0)];
    expect(ask({ containers })?.temperature).toEqual({ place: "shelf", celsius: 18, places: 2 });
  });

  it("is not known where it is not of one of them", () => {
    expect(ask({ containers: [container("cellar", 9), container("shelf", null)] })?.temperature).toBeNull();
    expect(ask({ containers: [container("cellar", 9), container(null, null)] })?.temperature).toBeNull();
  });
});
