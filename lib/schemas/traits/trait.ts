/** What a trait is: how it is told of a plant. */
export const traitKinds = ["count", "measure", "scale", "yes-no", "category", "date"] as const;
export type TraitKind = (typeof traitKinds)[number];

/** Which end of a trait is good; `target` aims at a value between, `none` is neither good nor bad. */
export const traitDirections = ["higher", "lower", "target", "none"] as const;
export type TraitDirection = (typeof traitDirections)[number];

/** Words of a trait: for steps of a scale (by the step) or for yes and no, and the list of a category. */
export interface TraitWording {
  readonly steps: Readonly<Record<string, string>>;
  readonly choices: readonly string[];
  /** of the choices, those that are wanted */
  readonly wanted: readonly string[];
}

export const noWording: TraitWording = { steps: {}, choices: [], wanted: [] };

/** A version of a trait as scores are read by it. */
export interface TraitDefinition {
  readonly name: string;
  readonly kind: TraitKind;
  readonly unit: string | null;
  /** null: nobody has said which end is good */
  readonly direction: TraitDirection | null;
  readonly target: number | null;
  readonly scaleLow: number | null;
  readonly scaleHigh: number | null;
  readonly wording: TraitWording;
}

/** The ends of a scale; 1 and 9 where none were said. */
export function scaleEnds(trait: Pick<TraitDefinition, "scaleLow" | "scaleHigh">): readonly [number, number] {
  return [trait.scaleLow ?? 1, trait.scaleHigh ?? 9];
}

/** Wording as it is stored: JSON with what there is, null where there is none. Its keys stand in a fixed order. */
export function storedWording({ steps, choices, wanted }: TraitWording): string | null {
  const entries = Object.entries(steps);
  const parts = {
    ...(entries.length > 0 ? { steps: Object.fromEntries(entries) } : {}),
    ...(choices.length > 0 ? { choices } : {}),
    ...(wanted.length > 0 ? { wanted } : {}),
  };
  return Object.keys(parts).length === 0 ? null : JSON.stringify(parts);
}

/** Reads stored wording; what is no such JSON says nothing. */
export function readWording(stored: string | null): TraitWording {
  if (stored === null) return noWording;
  try {
    const { steps, choices, wanted } = JSON.parse(stored) as Partial<Record<keyof TraitWording, unknown>>;
    return { steps: textsOf(steps), choices: listOf(choices), wanted: listOf(wanted) };
  } catch {
    return noWording;
  }
}

function textsOf(value: unknown): Record<string, string> {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return {};
  return Object.fromEntries(
    Object.entries(value).filter((each): each is [string, string] => typeof each[1] === "string"),
  );
}

function listOf(value: unknown): string[] {
  return Array.isArray(value) ? value.filter((each) => typeof each === "string") : [];
}
