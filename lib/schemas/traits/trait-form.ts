import { z } from "zod";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { decimal, name, neededField, oneOf, openField, parseForm, words } from "../lots/form-fields";
import { noWording, type TraitDefinition, type TraitWording, traitDirections, traitKinds } from "./trait";

/** Whose trait it is: one variety's, that of every variety of the crop, or one that all share. */
export const traitScopes = ["variety", "crop", "all"] as const;
export type TraitScope = (typeof traitScopes)[number];

const fields = z.object({
  name: neededField(name, "write what is looked at, as height of the plant"),
  scope: neededField(oneOf(traitScopes), "choose for which varieties it is"),
  kind: neededField(oneOf(traitKinds), "choose how it is told of a plant"),
  unit: openField(name),
  direction: openField(oneOf(traitDirections)),
  target: openField(decimal({})),
  scaleLow: openField(decimal({})),
  scaleHigh: openField(decimal({})),
  steps: openField(words),
  choices: openField(words),
  wanted: openField(words),
});

export interface TraitInput extends TraitDefinition {
  readonly scope: TraitScope;
}

/**
 * A trait as it is typed in. Only what belongs to its kind is taken: a unit of a measure, the ends and steps of a scale, the list of a
 * category. Steps stand one a line, as `9 = strong`; choices one a line.
 */
export function parseTrait(typed: Readonly<Record<string, unknown>>): Outcome<TraitInput> {
  const read = parseForm(fields, typed);
  if (!read.ok) return read;
  const { kind, direction, target, ...given } = read.value;
  const faults: Refusal[] = [];
  const take = <T>(outcome: Outcome<T>, otherwise: T): T => {
    if (outcome.ok) return outcome.value;
    faults.push(...outcome.refusals);
    return otherwise;
  };
  const ends = kind === "scale" ? take(readEnds(given.scaleLow, given.scaleHigh), [1, 9] as const) : null;
  const wording = take(readWordingTyped(kind, ends, given), noWording);
  if (kind === "measure" && given.unit === null)
    faults.push(refusal("unit-missing", ["unit"], "", "stands here", "write the unit it is measured in, as cm"));
  const aimed = direction === "target" && kind !== "category";
  if (aimed && (kind === "yes-no" || kind === "date"))
    faults.push(refusal("no-target", ["direction"], direction, "has no value to aim at here", "choose another"));
  else if (aimed && target === null)
    faults.push(refusal("target-missing", ["target"], "", "stands here", "write the value that is aimed at"));
  else if (aimed && ends && target !== null && (target < ends[0] || target > ends[1]))
    faults.push(
      refusal("target-off-scale", ["target"], target, "is off the scale", `write one of ${ends[0]} to ${ends[1]}`),
    );
  if (kind === "category" && direction === "target" && given.wanted === null)
    faults.push(refusal("wanted-missing", ["wanted"], "", "stands here", "write which of the choices are wanted"));
  if (kind === "category" && (direction === "higher" || direction === "lower"))
    faults.push(refusal("no-ends", ["direction"], direction, "is for what has two ends", "choose another"));
  if (faults.length > 0) return refused(...faults);
  return accepted({
    name: given.name,
    scope: given.scope,
    kind,
    unit: kind === "measure" ? given.unit : null,
    direction,
    target: aimed ? target : null,
    scaleLow: ends?.[0] ?? null,
    scaleHigh: ends?.[1] ?? null,
    wording,
  });
}

const mostSteps = 101;

/** The ends of a scale, 1 and 9 unless told. */
function readEnds(low: number | null, high: number | null): Outcome<readonly [number, number]> {
  const ends = [low ?? 1, high ?? 9] as const;
  for (const [place, field] of ["scaleLow", "scaleHigh"].entries()) {
    const end = ends[place] as number;
    if (!Number.isInteger(end))
      return refused(refusal("end-not-whole", [field], end, "is no end of a scale", "write a whole number"));
  }
  if (ends[0] >= ends[1])
    return refused(
      refusal("scale-ends", ["scaleHigh"], ends[1], "is not above the low end", `write more than ${ends[0]}`),
    );
  if (ends[1] - ends[0] >= mostSteps)
    return refused(
      refusal("scale-too-long", ["scaleHigh"], ends[1], `gives more than ${mostSteps} steps`, "measure it instead"),
    );
  return accepted(ends);
}

interface Typed {
  readonly steps: string | null;
  readonly choices: string | null;
  readonly wanted: string | null;
}

function readWordingTyped(
  kind: TraitDefinition["kind"],
  ends: readonly [number, number] | null,
  typed: Typed,
): Outcome<TraitWording> {
  if (kind === "category") return readChoices(typed);
  if (kind !== "scale" && kind !== "yes-no") return accepted(noWording);
  const steps: Record<string, string> = {};
  const faults: Refusal[] = [];
  for (const line of linesOf(typed.steps)) {
    const [, step = "", said = ""] = /^(\S+?)\s*[=:]\s*(.+)$/.exec(line) ?? [];
    const known = ends
      ? /^-?\d+$/.test(step) && Number(step) >= ends[0] && Number(step) <= ends[1]
      : ["yes", "no"].includes(step.toLowerCase());
    const needed = ends
      ? `write a step from ${ends[0]} to ${ends[1]}, as ${ends[1]} = strong`
      : "write yes = … or no = …";
    const key = ends ? String(Number(step)) : step.toLowerCase();
    if (!known) faults.push(refusal("not-a-step", ["steps"], line, "gives no step its words", needed));
    else if (key in steps)
      faults.push(refusal("step-twice", ["steps"], line, "words a step again", "leave one of them"));
    else steps[key] = said.trim();
  }
  return faults.length > 0 ? refused(...faults) : accepted({ ...noWording, steps });
}

function readChoices({ choices: list, wanted: some }: Typed): Outcome<TraitWording> {
  const choices = linesOf(list);
  const keys = choices.map((choice) => choice.toLowerCase());
  const twice = choices.find((choice, place) => keys.indexOf(choice.toLowerCase()) < place);
  if (choices.length < 2)
    return refused(
      refusal(
        "choices-missing",
        ["choices"],
        list ?? "",
        "is no list to choose from",
        "write at least two, one a line",
      ),
    );
  if (twice !== undefined)
    return refused(refusal("choice-twice", ["choices"], twice, "stands there twice", "leave one of them"));
  const wanted: string[] = [];
  for (const line of linesOf(some)) {
    const place = keys.indexOf(line.toLowerCase());
    if (place < 0)
      return refused(
        refusal("not-a-choice", ["wanted"], line, "is not in the list", `write some of ${choices.join(", ")}`),
      );
    wanted.push(choices[place] as string);
  }
  return accepted({ steps: {}, choices, wanted });
}

function linesOf(text: string | null): string[] {
  return (text ?? "")
    .normalize("NFC")
    .split(/\r?\n|;/)
    .map((line) => line.replace(/\s+/g, " ").trim())
    .filter((line) => line !== "");
}

/** A trait as the texts of its form. */
export function traitTexts(trait: TraitDefinition, scope: TraitScope): Record<string, string> {
  const { steps, choices, wanted } = trait.wording;
  const number = (value: number | null) => (value === null ? "" : String(value));
  return {
    name: trait.name,
    scope,
    kind: trait.kind,
    unit: trait.unit ?? "",
    direction: trait.direction ?? "",
    target: number(trait.target),
    scaleLow: number(trait.scaleLow),
    scaleHigh: number(trait.scaleHigh),
    steps: Object.entries(steps)
      .map(([step, said]) => `${step} = ${said}`)
      .join("\n"),
    choices: choices.join("\n"),
    wanted: wanted.join("\n"),
  };
}
