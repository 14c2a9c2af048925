import type { GerminationConditions } from "@/lib/science/germination/germination-conditions";

/** "official tests (Pea) count on days 5 and 8". */
export function daysInWords({ kind, firstCountDay, finalCountDay }: GerminationConditions): string {
  const days = firstCountDay === null ? `day ${finalCountDay}` : `days ${firstCountDay} and ${finalCountDay}`;
  return `official tests (${kind}) count on ${days}`;
}

/** "20 °C, or 20 °C for 16 hours and 30 °C for 8". */
export function warmthInWords({ temperatureC }: GerminationConditions): string {
  return temperatureC
    .split(";")
    .map((part) => {
      const [night, day] = part.trim().split("-");
      return day ? `${night} °C for 16 hours and ${day} °C for 8` : `${night} °C`;
    })
    .join(", or ");
}

const media: Readonly<Record<string, string>> = {
  B: "between blotters",
  TB: "on blotters",
  T: "in a paper towel",
  S: "in sand or soil",
  TS: "on sand or soil",
  P: "in a covered dish",
  C: "on wadding",
  TC: "on wadding in a towel",
  RB: "under a raised cover",
};

/** "between blotters, in a paper towel or in sand or soil". */
export function mediaInWords({ substrata }: GerminationConditions): string {
  const words = substrata.map((code) => media[code] ?? code);
  return words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;
}
