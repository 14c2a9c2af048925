import { publishedTable, rowsOfCrop } from "@/lib/schemas/tables/published-tables";
import { seedMoisture } from "@/lib/science/seed-moisture/seed-moisture";
import { type OwnInTable, type OwnOfRow, ownAmong, withOwn } from "@/lib/science/tables/own-in-table";
import type { ViabilityConstants } from "@/lib/science/viability/viability";
import type { RowOf } from "../change-set/records";
import type { ContainerOfLot } from "../reserve/read-holdings";

/** How a lot is kept, as far as the equation of seed life asks for it. Only lots of a kind whose constants stand in the table have one. */
export interface StoreOfLot {
  readonly kind: string;
  readonly constants: ViabilityConstants;
  readonly source: string;
  /** own values in the place of published ones, of the constants and of the oil */
  readonly own: readonly OwnOfRow[];
  /** null: no reading since it was last dried */
  readonly moisture: MoistureOfLot | null;
  /** of the warmest place in which it stands; null: of one of them nobody wrote how warm it is, or no place is written */
  readonly temperature: { readonly celsius: number; readonly place: string; readonly places: number } | null;
}

export interface MoistureOfLot {
  /** wet basis */
  readonly percent: number;
  readonly on: string;
  /** where the humidity of the air about it was read: what the percentage was worked out from */
  readonly from: { readonly humidityPercent: number; readonly celsius: number; readonly oilPercent: number } | null;
}

export interface StoreQuestion {
  readonly crop: { readonly cropKey: string; readonly latinName: string | null };
  /** in the order of their days */
  readonly readings: readonly RowOf<"MoistureReading">[];
  readonly dryings: readonly RowOf<"Drying">[];
  readonly containers: readonly ContainerOfLot[];
  readonly own: readonly OwnInTable[];
}

/** How a lot is kept: the last moisture reading since its last drying, and the warmest of its places; null where its kind has no constants. */
export function storeOfLot({ crop, readings, dryings, containers, own }: StoreQuestion): StoreOfLot | null {
  const found = rowWithOwn("viability-constants", crop, own);
  if (!found) return null;
  const { KE, CW, CH, CQ } = found.values;
  if (KE === undefined || CW === undefined || CH === undefined || CQ === undefined) return null;
  const oil = rowWithOwn("oil-content", crop, own);
  const dried =
    dryings
      .map(({ onLast }) => onLast)
      .sort()
      .at(-1) ?? "";
  const moisture = readings
    .filter(({ onLast }) => onLast >= dried)
    .reduce((last: MoistureOfLot | null, reading) => moistureBy(reading, oil?.values) ?? last, null);
  return {
    ...{ kind: found.name, constants: { KE, CW, CH, CQ }, source: found.source, moisture },
    own: [...found.own, ...(moisture?.from && oil ? oil.own : [])],
    temperature: warmestOf(containers),
  };
}

type Numbers = Readonly<Record<string, number | undefined>>;

function rowWithOwn(key: string, crop: StoreQuestion["crop"], own: readonly OwnInTable[]) {
  const table = publishedTable(key);
  const [row] = table ? rowsOfCrop(table, { key: crop.cropKey, latinName: crop.latinName }) : [];
  if (!row) return null;
  const ownOfRow = ownAmong(own, key, row.key, row.values);
  const values = Object.entries(withOwn(row.values, ownOfRow)).map(([field, value]) => [field, Number(value)]);
  return { name: row.name, source: row.source, own: ownOfRow, values: Object.fromEntries(values) as Numbers };
}

/** The percentage that was read; else the one that the humidity of the air in the jar stands for, by the middle of the oil of its kind. */
function moistureBy(reading: RowOf<"MoistureReading">, oil: Numbers | undefined): MoistureOfLot | null {
  const { on, percent, relativeHumidityPercent: humidityPercent, temperatureC: celsius } = reading;
  if (percent !== null) return { percent, on, from: null };
  const { oilPercentLow: low, oilPercentHigh: high } = oil ?? {};
  if (humidityPercent === null || celsius === null || low === undefined || high === undefined) return null;
  const oilPercent = (low + high) / 2;
  const found = seedMoisture({ relativeHumidityPercent: humidityPercent, temperatureC: celsius, oilPercent });
  return found.ok ? { percent: found.value.moisturePercent, on, from: { humidityPercent, celsius, oilPercent } } : null;
}

function warmestOf(containers: readonly ContainerOfLot[]): StoreOfLot["temperature"] {
  const holding = containers.filter(({ amount }) => amount === null || amount > 0);
  const places = new Map<string, number>();
  for (const { place, temperatureC } of holding) {
    if (place === null || temperatureC === null) return null;
    places.set(place, temperatureC);
  }
  const [warmest] = [...places].sort(([, one], [, other]) => other - one);
  return warmest ? { place: warmest[0], celsius: warmest[1], places: places.size } : null;
}
