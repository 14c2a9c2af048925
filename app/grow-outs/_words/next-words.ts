import type { NextOfGrowOut } from "@/lib/registry/grow-outs/next-of-grow-out";

/** A thing to do next: where it is done, what it is called, and why now. */
export interface NextInWords {
  readonly href: string;
  readonly words: string;
  readonly why: string;
}

const all: Readonly<Record<NextOfGrowOut, { path: string; words: string; why: string }>> = {
  sow: { path: "sow", words: "Sow it", why: "Take the seed out of the jars; the ledgers are written with it." },
  "choose-plot": {
    path: "plot",
    words: "Choose its plot",
    why: "Its neighbours are looked for from where it will stand.",
  },
  "count-up": { path: "count?stage=up", words: "Count what came up", why: "About three weeks after sowing." },
  "count-thinned": {
    path: "count?stage=thinned",
    words: "Count after thinning",
    why: "And say whether you thinned by vigour or at random.",
  },
  "count-lifted": {
    path: "count?stage=lifted",
    words: "Count the roots lifted",
    why: "Where roots are lifted for the winter; choosing them is selection.",
  },
  replant: { path: "plot?replanted=yes", words: "Replant the roots", why: "On the plot where they will flower." },
  "count-standing": {
    path: "count?stage=standing",
    words: "Count the plants standing",
    why: "Just before the first rogues are pulled: every figure of it rests on this.",
  },
  "look-for-neighbours": {
    path: "neighbours",
    words: "Look for neighbours",
    why: "Before it flowers. Not looked is not none found.",
  },
  rogue: {
    path: "rogue",
    words: "Walk it for off-types",
    why: "What is pulled before pollen flies has fathered no seed.",
  },
  "note-flowering": {
    path: "flowering",
    words: "Note its flowering",
    why: "First flower, half, and the last one, which is easily missed.",
  },
  "mark-plants": {
    path: "plants",
    words: "Mark plants",
    why: "More than you need, from all parts of the plot: some get lost.",
  },
  "choose-plants": {
    path: "choose",
    words: "Choose what to keep",
    why: "Plants are scored and none is chosen: see what each cut gains, and what it costs.",
  },
  harvest: { path: "harvest", words: "Harvest it", why: "Marked plants first, one by one; then the rest." },
  "harvest-again": { path: "harvest", words: "Enter a further harvest", why: "Each harvest is a lot of its own." },
  end: { path: "end", words: "It is over", why: "Say how it ended, so that it stands among what is done." },
  "say-how-it-ended": {
    path: "end",
    words: "Say how it ended",
    why: "Its days are past and nobody wrote what came of it. A failed grow-out is a record, too.",
  },
};

/** What the hand does next with a grow-out. */
export function nextInWords(growOutId: string, next: readonly NextOfGrowOut[]): NextInWords[] {
  return next.map((each) => {
    const { path, words, why } = all[each];
    return { href: `/grow-outs/${growOutId}/${path}`, words, why };
  });
}

/** Everything that can be done with it at any time. */
export function othersOf(growOutId: string): readonly { href: string; words: string }[] {
  const to = (path: string, words: string) => ({ href: `/grow-outs/${growOutId}/${path}`, words });
  return [
    to("count", "count plants"),
    to("rogue", "a rogue pass"),
    to("flowering", "flowering"),
    to("plants", "plants and scores"),
    to("choose", "what to keep"),
    to("neighbours", "neighbours"),
    to("harvest", "a harvest"),
    to("plot", "plots"),
    to("sow", "sowing"),
    to("correct", "put it right"),
    to("end", "its end"),
  ];
}
