import type { ChoiceGround } from "@/lib/schemas/plants/choice-ground";
import type { ScoresOf } from "@/lib/schemas/plants/scored-as";

/** How a choice is made: everything that a hand sets. It is what the address of the page carries. */
export interface Setting {
  /** by trait; a trait that is not there weighs the usual */
  readonly weights: Readonly<Record<string, number>>;
  /** null: as many as are wanted */
  readonly keep: number | null;
  readonly withinCells: boolean;
  /** whose pollen there was; null: as the crop is usually chosen */
  readonly pollen: "all" | "kept" | null;
  readonly scoresOf: ScoresOf;
  /** left out by hand, by the plant's name, with why */
  readonly leftOut: Readonly<Record<string, string>>;
  /** put in by hand, by the plant's name */
  readonly taken: readonly string[];
  /** by trait, what share of a differential may be inherited, from and to */
  readonly heritability: Readonly<Record<string, readonly [number, number]>>;
  /** seeds that are wanted in all; null: as the next sowing needs */
  readonly seeds: number | null;
}

export const mostWeight = 10;
export const usualWeight = 5;

export const startSetting: Setting = {
  weights: {},
  keep: null,
  withinCells: true,
  pollen: null,
  scoresOf: "all",
  leftOut: {},
  taken: [],
  heritability: {},
  seeds: null,
};

/** What a trait weighs: what was set, or the usual; one of which nobody said which end is good weighs nothing. */
export function weightOf({ weights }: Setting, trait: ChoiceGround["traits"][number]): number {
  return trait.better === null ? 0 : (weights[trait.key] ?? usualWeight);
}

/** Plants of which seed may be kept. */
export function mayBeKept({ plants }: ChoiceGround): number {
  return plants.filter(({ gone }) => gone === null).length;
}

/** How many are to be kept: what was set; else as many as are wanted, else half of those that may be, no more than there are. */
export function keepOf(setting: Setting, ground: ChoiceGround): number {
  const most = Math.max(1, mayBeKept(ground));
  return Math.min(most, Math.max(1, setting.keep ?? ground.wanted?.count ?? Math.ceil(most / 2)));
}

export function pollenOf({ pollen }: Setting, ground: ChoiceGround): "all" | "kept" {
  if (ground.plot?.sexes === "separate") return "all";
  return pollen ?? (ground.chosenBeforeFlower ? "kept" : "all");
}

type Parameters = Pick<URLSearchParams, "get" | "getAll" | "append">;

/** Reads a setting out of an address; what cannot be read, or names a plant or trait that is not here, is as if it were not there. */
export function readSetting(parameters: Parameters, ground: ChoiceGround): Setting {
  const known = new Set(ground.plants.map(({ name }) => name));
  const traits = new Set(ground.traits.map(({ key }) => key));
  const pairs = (key: string) =>
    parameters.getAll(key).map((text): [string, string] => {
      const at = text.indexOf("~");
      return at < 0 ? [text, ""] : [text.slice(0, at), text.slice(at + 1)];
    });
  const pollen = parameters.get("pollen");
  return {
    weights: Object.fromEntries(
      pairs("weight").flatMap(([key, text]) => {
        const weight = wholeIn(text, 0, mostWeight);
        return traits.has(key) && weight !== null ? [[key, weight]] : [];
      }),
    ),
    keep: wholeIn(parameters.get("keep"), 1, 1_000_000),
    withinCells: parameters.get("cells") !== "no",
    pollen: pollen === "all" || pollen === "kept" ? pollen : null,
    scoresOf: scoresOfText(parameters.get("scores"), ground),
    leftOut: Object.fromEntries(pairs("out").filter(([name, reason]) => known.has(name) && reason !== "")),
    taken: parameters.getAll("in").filter((name) => known.has(name)),
    heritability: Object.fromEntries(
      pairs("inherited").flatMap(([key, text]) => {
        const [low, high] = text.split("-").map(Number);
        const sound = low !== undefined && high !== undefined && low >= 0 && low <= high && high <= 1;
        return traits.has(key) && sound ? [[key, [low, high] as const]] : [];
      }),
    ),
    seeds: wholeIn(parameters.get("seeds"), 1, 1_000_000_000),
  };
}

/** The same as an address, without what stands as it is at first. */
export function settingInAddress(setting: Setting): string {
  const parameters = new URLSearchParams();
  for (const [key, weight] of Object.entries(setting.weights))
    if (weight !== usualWeight) parameters.append("weight", `${key}~${weight}`);
  if (setting.keep !== null) parameters.append("keep", String(setting.keep));
  if (!setting.withinCells) parameters.append("cells", "no");
  if (setting.pollen !== null) parameters.append("pollen", setting.pollen);
  if (setting.scoresOf !== "all") parameters.append("scores", setting.scoresOf.person ?? "nobody");
  for (const [name, reason] of Object.entries(setting.leftOut)) parameters.append("out", `${name}~${reason}`);
  for (const name of setting.taken) parameters.append("in", name);
  for (const [key, [low, high]] of Object.entries(setting.heritability))
    parameters.append("inherited", `${key}~${low}-${high}`);
  if (setting.seeds !== null) parameters.append("seeds", String(setting.seeds));
  const text = parameters.toString();
  return text === "" ? "" : `?${text}`;
}

function scoresOfText(text: string | null, { people }: ChoiceGround): ScoresOf {
  const person = people.find(({ id }) => (id ?? "nobody") === text);
  return text === null || person === undefined ? "all" : { person: person.id };
}

function wholeIn(text: string | null, least: number, most: number): number | null {
  if (text === null || !/^\d{1,9}$/.test(text)) return null;
  const value = Number(text);
  return value < least || value > most ? null : value;
}
