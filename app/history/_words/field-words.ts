import { plainNumber } from "@/lib/display/numbers";
import { pointsToRecord } from "@/lib/registry/history/names-of-ids";
import { readWording } from "@/lib/schemas/traits/trait";

/** Fields whose words are not just their name with blanks. */
const words: Readonly<Record<string, string>> = {
  cropId: "crop",
  on: "date",
  onWords: "date in words",
  yearWords: "year in words",
  thousandSeedGrams: "thousand-seed weight, g",
  gramsOnHand: "on hand, g",
  seedGrams: "seed, g",
  grams: "grams",
  aim: "what is aimed at",
  typeDescription: "type description",
  seedCoat: "seed-coat mark",
  plantsWanted: "plants wanted",
  seedParentsWanted: "seed parents wanted",
  isolationWantedM: "isolation wanted, m",
  sensitivity: "who may see it",
  offType: "off-type",
  founderLines: "one line or many",
  statusReason: "why it stands so",
  originalSample: "original sample",
  identityGrade: "how sure the name is",
  isolationGrade: "isolation",
  isolationReasons: "isolation, why",
  donorNumber: "number of the giver",
  howSure: "how sure",
  extra: "other columns of the file",
  takenBack: "taken back",
  plantsPlanned: "plants planned",
  seedParentsPlanned: "seed parents planned",
  fromOn: "from",
  toOn: "until",
  endedOn: "ended",
  plantsStanding: "plants standing",
  malesStanding: "males standing",
  roguedBeforePollen: "rogued before pollen shed",
  roguedAfterPollen: "rogued after pollen shed",
  seedSharesCv: "unevenness of seed shares (cv)",
  finalCountDay: "day of the last count",
  preTreatment: "treatment before sowing",
  temperatureC: "temperature, °C",
  relativeHumidityPercent: "air humidity, %",
  distanceMetres: "distance, m",
  sizeM2: "size, m²",
  areaM2: "area, m²",
  altitudeM: "altitude, m",
  toWords: "given to",
  told: "what was told",
  replyDue: "when to ask",
  due: "by when",
  keptOn: "kept on",
  other: "other side",
  code: "label code",
  note: "note",
  sameAsId: "read as the same as",
  firstId: "one founder",
  secondId: "the other founder",
  parentLotId: "the earlier lot",
  generationsFirst: "grow-outs between, at least",
  generationsLast: "grow-outs between, at most",
  standing: "how it stands",
  standingReason: "why it stands so",
  foreignPollenHow: "foreign pollen, how found",
  matingSystem: "mating system",
  direction: "which end is good",
  scaleLow: "lowest step",
  scaleHigh: "highest step",
  wording: "words of its steps or list",
};

/** A field's name as a person says it. */
export function fieldWords(field: string): string {
  const known = words[field];
  if (known) return known;
  if (field === "growOutId") return "grow-out";
  const plain = pointsToRecord(field) ? field.replace(/Id$/, "") : field;
  return plain.replace(/([a-z])([A-Z0-9])/g, "$1 $2").toLowerCase();
}

/** A stored value in words: names for records that are pointed to, "nothing" where nothing stood. */
export function valueWords(field: string, value: unknown, names: ReadonlyMap<string, string>): string {
  if (value === null || value === undefined || value === "") return "nothing";
  if (pointsToRecord(field)) return names.get(String(value)) ?? "a record that is gone";
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value === "number") return plainNumber(value, 6);
  if (field === "seedCoat") return coatWords(String(value));
  if (field === "wording") return wordingWords(String(value));
  return String(value);
}

function wordingWords(stored: string): string {
  const { steps, choices, wanted } = readWording(stored);
  const said = [...Object.entries(steps).map(([step, words]) => `${step} ${words}`), ...choices];
  return `${said.join(", ")}${wanted.length > 0 ? `; wanted: ${wanted.join(", ")}` : ""}`;
}

function coatWords(stored: string): string {
  try {
    const { pattern, ground, second } = JSON.parse(stored) as Record<string, string>;
    return `${pattern}, ${second} on ${ground}`;
  } catch {
    return stored;
  }
}
