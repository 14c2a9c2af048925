import type { Drawn } from "../drawn";
import { oddWord, soundWord } from "../odd-words";
import { formsOfField } from "./in-the-field";
import { formsOfJars } from "./in-the-jar";
import { formsOfVarieties } from "./of-varieties";
import type { Here, SoundForm, SoundRecipe, SoundRecipes } from "./sound-form";

const recipes: SoundRecipes = { ...formsOfJars, ...formsOfField, ...formsOfVarieties };

/** How a form is filled in so that it is taken; every form of records has one. */
export function recipeOf(file: string, name: string): SoundRecipe {
  const recipe = recipes[file]?.[name];
  if (!recipe) throw new Error(`${file} ${name} has no sound form: write one in tests/faults/fuzz/sound`);
  return recipe;
}

/**
 * A form as it is right, or (`spoils`) with one thing in it spoiled: emptied, left out, made odd, put for another, or a record that it is not about.
 * Gives what the action is called with, by the names of what it takes.
 */
export async function sentSoundly(
  recipe: SoundRecipe,
  here: Here,
  takes: readonly string[],
  spoils: { readonly ids: readonly string[]; readonly drawn: Drawn } | null,
): Promise<{ all: unknown[]; shown: string }> {
  const right = await recipe(here);
  const sent = spoils ? spoilt(right, spoils.ids, spoils.drawn) : right;
  const bound = [...(sent.bound ?? [])];
  const form = new FormData();
  for (const [name, value] of Object.entries(sent.fields ?? {})) form.append(name, value);
  const all = takes.map((name) => {
    if (name === "form") return form;
    if (name === "before" || name === "state") return { typed: {}, refusals: [], done: null };
    return name === "given" || name === "sent" ? sent.given : bound.shift();
  });
  return { all, shown: JSON.stringify(sent).slice(0, 1500) };
}

/** A place in a form, as steps into it. */
type Place = readonly (string | number)[];

function spoilt(form: SoundForm, ids: readonly string[], drawn: Drawn): SoundForm {
  const copy = structuredClone(form) as SoundForm;
  const places = placesOf(copy);
  if (places.length === 0) return copy;
  const place = drawn.one(places);
  const holder = place.slice(0, -1).reduce<unknown>((at, step) => (at as Record<string, unknown>)[step], copy);
  const last = place.at(-1) as string;
  const into = holder as Record<string, unknown>;
  if (place[0] === "fields" && drawn.chance(0.15)) delete into[last];
  else into[last] = otherThan(valueAt(copy, drawn.one(places)), typeof into[last], ids, drawn);
  return copy;
}

function otherThan(elsewhere: unknown, kind: string, ids: readonly string[], drawn: Drawn): unknown {
  const dice = drawn.whole(6);
  const word =
    dice === 0 ? "" : dice === 1 ? oddWord(drawn) : dice === 2 ? soundWord(drawn) : dice === 3 ? drawn.one(ids) : null;
  if (word === null) return dice === 4 ? elsewhere : drawn.one(["0", "-1", "1e9", "2999-01-01", "x".repeat(5000)]);
  // Of what is sent as it is, not as texts, a number may be spoiled into another number as well.
  return kind === "number" && drawn.chance(0.6) ? drawn.one([0, -1, 0.5, 1e9, Number.NaN]) : word;
}

function valueAt(form: SoundForm, place: Place): unknown {
  return place.reduce<unknown>((at, step) => (at as Record<string, unknown>)[step], form);
}

/** Every single value in a form. */
function placesOf(within: unknown, at: Place = []): Place[] {
  if (typeof within !== "object" || within === null) return at.length > 0 ? [at] : [];
  return Object.entries(within).flatMap(([step, inner]) => placesOf(inner, [...at, step]));
}
