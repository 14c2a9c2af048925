import type { FieldSpec } from "../_forms/field-spec";
import { relationOptions } from "./strain-words";

/** What can be added to a variety. */
export const additions = ["name", "same", "strain", "trait", "word", "story"] as const;
export type Addition = (typeof additions)[number];

/** How each addition is asked for. */
export const additionWords: Readonly<Record<Addition, { title: string; lead: string; confirm: string }>> = {
  name: {
    title: "Another name",
    lead: "A name or spelling under which somebody else keeps or kept it. The search finds it by all of them.",
    confirm: "Add the name",
  },
  same: {
    title: "Possibly the same as another",
    lead: "Somebody takes two varieties for one. Nothing is joined by it: both keep their lots, and each page names the other.",
    confirm: "Write it down",
  },
  strain: {
    title: "A strain",
    lead: "One steward’s long keeping of the variety, which may have drifted from the others.",
    confirm: "Add the strain",
  },
  trait: {
    title: "A line of the type",
    lead: "What the variety may look like in one trait, as an allowed range, and what would be off-type. A mark of the seed or plant that is simply inherited tells most.",
    confirm: "Add the line",
  },
  word: {
    title: "A holder’s word",
    lead: "Somebody said that the seed is still there, or that it is gone. Silence is no word.",
    confirm: "Write the word down",
  },
  story: {
    title: "A story",
    lead: "In the teller’s own words. Two stories that contradict each other may stand side by side.",
    confirm: "Write the story down",
  },
};

interface Choices {
  readonly people: readonly string[];
  readonly lots: readonly { readonly number: string; readonly holder: string | null }[];
  readonly steward?: string;
  /** the other varieties of the crop */
  readonly ofCrop?: readonly { readonly id: string; readonly name: string }[];
}

const options = (words: readonly string[]) => words.map((word) => ({ value: word, words: word }));

/** The fields of an addition. */
export function additionFields(what: Addition, { people, lots, steward, ofCrop = [] }: Choices): readonly FieldSpec[] {
  if (what === "same") {
    return [
      {
        kind: "select",
        name: "other",
        label: "The other variety",
        empty: "choose it",
        required: true,
        options: ofCrop.map(({ id, name }) => ({ value: id, words: name })),
      },
      {
        kind: "words",
        name: "source",
        label: "Who says so, or what speaks for it",
        required: true,
        lines: 2,
      },
    ];
  }
  if (what === "name") {
    return [
      { kind: "words", name: "name", label: "Name", required: true },
      {
        kind: "select",
        name: "kind",
        label: "What kind of name",
        empty: "not known",
        options: [
          { value: "spelling", words: "another spelling" },
          { value: "old", words: "an old name" },
          { value: "local", words: "a local name" },
          { value: "trade", words: "a name of the trade" },
          { value: "other", words: "something else" },
        ],
      },
      {
        kind: "words",
        name: "source",
        label: "Where the name is from",
        hint: "Who says it so, or where it is written",
      },
    ];
  }
  if (what === "strain") {
    return [
      { kind: "words", name: "name", label: "What the strain is called", required: true },
      { kind: "select", name: "steward", label: "Keeper", empty: "not on record", options: options(people) },
      { kind: "words", name: "place", label: "Place" },
      { kind: "date", name: "keptFrom", label: "Kept from" },
      { kind: "date", name: "keptTo", label: "Kept until", hint: "Empty where it is still kept" },
      {
        kind: "select",
        name: "relation",
        label: "What it is to the variety",
        empty: "not known",
        options: relationOptions,
      },
      { kind: "words", name: "difference", label: "What is said to be different", lines: 3 },
      { kind: "words", name: "note", label: "Note", lines: 2 },
    ];
  }
  if (what === "trait") {
    return [
      {
        kind: "words",
        name: "trait",
        label: "Trait",
        required: true,
        hint: "Seed colour, height, day of first flower",
      },
      {
        kind: "words",
        name: "allowed",
        label: "What it may look like",
        required: true,
        hint: "Cream to buff, never white",
      },
      { kind: "words", name: "offType", label: "What is off-type" },
      {
        kind: "select",
        name: "part",
        label: "Part of the plant",
        empty: "not said",
        options: options(["seed", "seedling", "leaf", "flower", "fruit", "root", "whole plant"]),
      },
    ];
  }
  if (what === "word") {
    return [
      {
        kind: "select",
        name: "steward",
        label: "Whose word",
        required: true,
        value: steward,
        options: options(people),
        empty: "choose",
      },
      {
        kind: "choice",
        name: "still",
        label: "Is the seed still there?",
        required: true,
        value: "yes",
        options: [
          { value: "yes", words: "Yes" },
          { value: "no", words: "No, it is gone" },
          { value: "unknown", words: "They do not know", note: "worth asking again" },
        ],
      },
      { kind: "date", name: "on", label: "When it was said", hint: "Empty for today; 2024-11 or 2024~ will do" },
      {
        kind: "select",
        name: "lot",
        label: "Of which lot",
        empty: "of the variety as a whole",
        options: lots.map(({ number, holder }) => ({
          value: number,
          words: holder ? `${number} (${holder})` : number,
        })),
      },
      { kind: "number", name: "grams", label: "How much", unit: "grams" },
      { kind: "words", name: "note", label: "Note", lines: 2 },
    ];
  }
  return [
    {
      kind: "words",
      name: "words",
      label: "The story",
      required: true,
      lines: 8,
      hint: "As it was told; names of people only with their leave",
    },
    { kind: "words", name: "teller", label: "Who told it" },
    { kind: "date", name: "toldOn", label: "When it was told" },
    {
      kind: "date",
      name: "about",
      label: "Which time it tells of",
      hint: "193X for the thirties, 1940/1950 for a span",
    },
  ];
}
