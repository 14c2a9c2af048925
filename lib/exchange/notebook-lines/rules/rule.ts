import type { Line } from "../line";
import { canBegin, type Found, find, openingsOf, pattern } from "../pattern";
import type { Certainty, Fact } from "../reading";

/** What a rule makes of a piece of the line; a null fact sets the piece aside, so that no other rule reads into it. */
export interface Reading {
  readonly fact: Fact | null;
  readonly certainty: Certainty;
}

export interface RuleMatch extends Reading {
  readonly end: number;
}

/** One way in which growers write one thing. */
export interface Rule {
  readonly name: string;
  readonly read: (line: Line, at: number) => RuleMatch | null;
}

export type Form = readonly [text: string, read: (found: Found) => Reading | null];

/** A rule of patterns: the longest that fits is taken, of equal ones the first. */
export function rule(name: string, forms: readonly Form[]): Rule {
  const compiled = forms.map(([text, read]) => {
    const shape = pattern(text);
    return { shape, openings: openingsOf(shape), read };
  });
  return {
    name,
    read: (line, at) => {
      let best: RuleMatch | null = null;
      for (const { shape, openings, read } of compiled) {
        if (!canBegin(openings, line, at)) continue;
        const found = find(shape, line, at);
        if (found === null || (best !== null && found.end <= best.end)) continue;
        const reading = read(found);
        if (reading !== null) best = { ...reading, end: found.end };
      }
      return best;
    },
  };
}

export function sure(fact: Fact): Reading {
  return { fact, certainty: "sure" };
}

export function likely(fact: Fact): Reading {
  return { fact, certainty: "likely" };
}

export function doubtful(fact: Fact): Reading {
  return { fact, certainty: "doubtful" };
}

/** For a count without which the reading makes no sense. */
export function withCount(
  found: Found,
  read: (count: NonNullable<ReturnType<Found["count"]>>) => Reading | null,
): Reading | null {
  const count = found.count();
  return count === null ? null : read(count);
}
