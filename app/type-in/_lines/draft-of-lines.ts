import type { TypedLine } from "./typed-line";

/** Which variety the notebook is of, as typed. */
export interface VarietyTyped {
  readonly name: string;
  readonly crop: string;
  readonly ownCrop: boolean;
}

/** All that is being typed. */
export interface LinesDraft {
  readonly variety: VarietyTyped;
  readonly holder: string;
  readonly lines: readonly TypedLine[];
  /** lot numbers written by hand, by the lot's name in the lines */
  readonly numbers: Readonly<Record<string, string>>;
}

export const emptyDraft: LinesDraft = {
  variety: { name: "", crop: "", ownCrop: false },
  holder: "",
  lines: [{ id: "first", words: "", fixes: {} }],
  numbers: {},
};

/** Reads a draft that was kept, perhaps by an older page; null where it is none. */
export function draftOfLines(stored: unknown): LinesDraft | null {
  if (typeof stored !== "object" || stored === null) return null;
  const { variety, holder, lines, numbers } = stored as Partial<LinesDraft>;
  if (!Array.isArray(lines) || lines.length === 0) return null;
  const kept = (lines as Partial<TypedLine>[]).flatMap((line) =>
    typeof line.words === "string" && typeof line.id === "string"
      ? [{ id: line.id, words: line.words, fixes: line.fixes ?? {} }]
      : [],
  );
  if (kept.length === 0) return null;
  return { variety: { ...emptyDraft.variety, ...variety }, holder: holder ?? "", lines: kept, numbers: numbers ?? {} };
}

/** Whether anything was typed at all. */
export function isEmptyDraft({ lines, variety }: LinesDraft): boolean {
  return variety.name.trim() === "" && lines.every((line) => line.words.trim() === "");
}
