import type { CropField } from "@/lib/schemas/crops/crop-fields";
import sources from "./sources.json";

/** How far a value of the list was checked: read in its source, read second hand, known in general, or not read this time. */
export type SourceMark = "verified" | "second hand" | "not verified";

/** Where a value of the list comes from. */
export interface SourceOfValue {
  readonly code: string;
  readonly citation: string;
  readonly mark: SourceMark;
  /** what the list says beside the code */
  readonly detail: string | null;
}

const citations: Readonly<Record<string, string>> = sources;

/** The fields that a word of the list's source column speaks for. */
const groups: Readonly<Record<string, readonly CropField[]>> = {
  mate: ["matingSystem", "outcrossingPctMin", "outcrossingPctMax", "selfIncompatible"],
  iso: ["isolationStewardMinM", "isolationStewardMaxM"],
  wild: ["wildRelatives"],
  spg: ["seedsPerGramMin", "seedsPerGramMax"],
  life: ["seedLifeYearsMin", "seedLifeYearsMax"],
};

/** The sources of one field, from the list's source column (`iso=WAC302v(660 ft),VC11v;all other cells=GKu`). */
export function sourcesOfField(column: string | null, field: CropField): SourceOfValue[] {
  const parts = new Map(
    splitOutside(column ?? "", ";").map((part) => {
      const at = part.indexOf("=");
      return [part.slice(0, at).trim(), part.slice(at + 1).trim()] as const;
    }),
  );
  const group = Object.keys(groups).find((name) => groups[name]?.includes(field));
  const own = group === undefined ? undefined : parts.get(group);
  const text = own ?? parts.get("all other cells") ?? parts.get("all cells") ?? "";
  return splitOutside(text, ",").flatMap(sourceOfText);
}

function sourceOfText(text: string): SourceOfValue[] {
  const match = /^([A-Z0-9-]+?)(v2|v|u)(?:\((.*)\)|\s+(.*))?$/.exec(text.trim());
  if (!match) return [];
  const [, code = "", mark, bracketed, after] = match;
  return [
    {
      code,
      citation: citations[code] ?? code,
      mark: mark === "v" ? "verified" : mark === "v2" ? "second hand" : "not verified",
      detail: bracketed ?? after ?? null,
    },
  ];
}

/** Splits at a mark that stands outside brackets. */
function splitOutside(text: string, mark: string): string[] {
  const parts: string[] = [];
  let depth = 0;
  let part = "";
  for (const character of text) {
    if (character === "(") depth += 1;
    if (character === ")") depth = Math.max(0, depth - 1);
    if (character === mark && depth === 0) {
      parts.push(part);
      part = "";
    } else part += character;
  }
  return [...parts, part].filter((each) => each.trim() !== "");
}
