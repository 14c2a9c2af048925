import { plainNumber } from "@/lib/display/numbers";
import { scaleEnds, type TraitDefinition } from "@/lib/schemas/traits/trait";

/** What stands over a column of boxes: the trait, and in short lines how it is told. */
export interface TraitHead {
  readonly name: string;
  readonly scale: readonly string[];
  /** in full, where the short lines leave something out; it stands under the table */
  readonly full: string | null;
}

const longestLine = 12;
const mostLines = 3;

/** The head of a trait's column: its unit, the ends of its scale in their words, its few answers. */
export function traitHead(trait: TraitDefinition): TraitHead {
  const { name, unit, wording } = trait;
  switch (trait.kind) {
    case "count":
      return { name, scale: ["count"], full: null };
    case "measure":
      return { name, scale: [unit ?? "unit?"], full: null };
    case "date":
      return { name, scale: ["day"], full: null };
    case "yes-no":
      return { name, scale: ["y  n  –"], full: said(wording.steps) };
    case "scale":
      return scaleHead(trait);
    case "category":
      return shortened(name, wording.choices, wording.choices.length === 0 ? ["in words"] : ["a word of", "the list"]);
  }
}

function scaleHead(trait: TraitDefinition): TraitHead {
  const [low, high] = scaleEnds(trait).map((end) => plainNumber(end, 3));
  const { steps } = trait.wording;
  const ends = [low, high].map((end) => `${end} ${steps[end ?? ""] ?? ""}`.trim());
  const between = Object.keys(steps).some((step) => step !== low && step !== high);
  const fits = ends.every((line) => line.length <= longestLine);
  return {
    name: trait.name,
    scale: fits && said(steps) !== null ? ends : [`${low}–${high}`],
    full: between || !fits ? said(steps) : null,
  };
}

function shortened(name: string, lines: readonly string[], instead: readonly string[]): TraitHead {
  const fits = lines.length > 0 && lines.length <= mostLines && lines.every((line) => line.length <= longestLine);
  return { name, scale: fits ? lines : instead, full: fits || lines.length === 0 ? null : lines.join(", ") };
}

function said(steps: Readonly<Record<string, string>>): string | null {
  const all = Object.entries(steps).map(([step, words]) => `${step} ${words}`);
  return all.length === 0 ? null : all.join(", ");
}
