import { dayInWords } from "@/lib/display/dates";
import { grams as inGrams, seedsCounted } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import type { StandOfSent } from "@/lib/registry/field/read-came-home";
import type { FieldRecord } from "@/lib/schemas/field/field-records";

/** What became of a record, in words. */
export const standWords: Readonly<Record<StandOfSent, string>> = {
  taken: "in the registry",
  waiting: "waits",
  question: "waits for a person",
  "set aside": "set aside",
};

/** What a record says, in a few words: "plant 12: keep". */
export function saidInWords(record: FieldRecord): string {
  switch (record.kind) {
    case "mark":
      return `plant ${record.body.tag ?? record.body.plant.name}: ${record.body.intent}`;
    case "score":
      return `plant ${record.body.plant.name}: scored ${record.body.text ?? record.body.value ?? ""}`;
    case "walk": {
      const pulled = record.body.pulled.reduce((sum, { plants }) => sum + plants, 0);
      const looked = record.body.looked === null ? "" : ` of ${record.body.looked} looked at`;
      return pulled === 0 ? `rogue pass: none found${looked}` : `rogue pass: ${pulled} pulled${looked}`;
    }
    case "count":
      return `${counted(record.body.plants, "plant")} ${record.body.stage}`;
    case "flowering":
      return `${record.body.moment} ${record.body.organ}`;
    case "taken":
      return `seed of plant ${record.body.plant.name}${given(record.body)}`;
    case "harvest":
      return `harvest of ${counted(record.body.parts.length, "bag")}`;
    case "photo":
      return record.body.plant ? `picture of plant ${record.body.plant.name}` : "picture";
    case "undo":
      return "takes an earlier one back";
  }
}

function given({ fate, grams, seeds }: { fate: string; grams: number | null; seeds: number | null }): string {
  if (grams !== null) return `: ${inGrams(grams)}`;
  if (seeds !== null) return `: ${seedsCounted(seeds)}`;
  return fate === "kept" ? "" : `: ${fate}`;
}

/** When it was recorded, by the phone's own clock and place. */
export function recordedInWords(at: string, offsetMinutes: number): string {
  const there = new Date(Date.parse(at) + offsetMinutes * 60_000).toISOString();
  return `${dayInWords(there.slice(0, 10))} at ${there.slice(11, 16)}`;
}

/** "This phone's clock is 42 min ahead", or null where it is about right. */
export function clockInWords(minutes: number | null): string | null {
  if (minutes === null) return null;
  const off = Math.abs(minutes);
  const said =
    off < 120 ? `${off} min` : off < 2880 ? `${Math.round(off / 60)} hours` : `${Math.round(off / 1440)} days`;
  return `${said} ${minutes > 0 ? "ahead" : "behind"}`;
}
