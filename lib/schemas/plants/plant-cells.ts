import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

/** What is meant to be done with a marked plant. */
export const intents = ["keep", "watch", "pull"] as const;
export type Intent = (typeof intents)[number];

/** What became of a marked plant. */
export const fates = ["harvested", "lost", "eaten", "rogued later"] as const;

/** The cells of a plant that are no scores; tag, intent, words and fate are those of its mark. */
export const plantFields = ["tag", "intent", "cell", "words", "fate"] as const;
export type PlantField = (typeof plantFields)[number];

const longestName = 60;
const longestWords = 2000;

/** Reads what is typed into such a cell. A choice may be begun only: k for keep. An empty cell is not read here. */
export function readPlantCell(field: PlantField, typed: string): Outcome<string> {
  const text = typed.normalize("NFC").replace(/\s+/g, " ").trim();
  if (field === "intent") return oneOfThese(intents, text);
  if (field === "fate") return oneOfThese(fates, text);
  const most = field === "words" ? longestWords : longestName;
  if (text.length <= most) return accepted(field === "words" ? typed.normalize("NFC").trim() : text);
  const needed = field === "words" ? "write it as a story of the grow-out" : "write what stands on the tag";
  return refused(refusal("too-long", [], `${text.slice(0, 30)}…`, `is longer than ${most} letters`, needed));
}

function oneOfThese(words: readonly string[], text: string): Outcome<string> {
  const begun = words.filter((word) => word.startsWith(text.toLowerCase()));
  const [found] = begun;
  if (found !== undefined && begun.length === 1) return accepted(found);
  return refused(refusal("not-one-of", [], text, "is none of the choices", `write ${words.join(", ")}`));
}
