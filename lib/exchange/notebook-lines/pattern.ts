import type { Distance } from "./distance";
import { isBeginning, isClosed, isRunOn, type Line, low, words } from "./line";
import type { Amount, Count, LotReference } from "./reading";
import { SLOTS, type SlotRead, type SlotValue } from "./slots";
import { VOCABULARY } from "./vocabulary";

/**
 * The small language of the rules. A pattern is a row of words in lower case, with
 *   (a|b c)   one of several       x?        may be left out
 *   {slot}    see slots.ts; `{count:of}` gives it a name of its own
 *   <name>    a list of vocabulary.ts
 *   $         an end: of the line, of a clause, or before a word that begins something new
 *   ^         a beginning: of the line, of a clause, or behind the year at its head
 * Marks stand for themselves. A pattern finds the longest reading from its first token on.
 */
type Node =
  | { readonly kind: "word"; readonly word: string }
  | { readonly kind: "end" }
  | { readonly kind: "beginning" }
  | { readonly kind: "slot"; readonly slot: string; readonly name: string }
  | { readonly kind: "choice"; readonly options: readonly (readonly Node[])[]; readonly optional: boolean };

export type Pattern = readonly Node[];

type Captures = ReadonlyMap<string, SlotValue>;

/** A pattern found in a line, with what its slots took up. */
export class Found {
  constructor(
    readonly line: Line,
    readonly from: number,
    readonly end: number,
    private readonly captures: Captures,
  ) {}

  get words(): string {
    return words(this.line, this.from, this.end);
  }

  has(name: string): boolean {
    return this.captures.has(name);
  }

  count(name = "count"): Count | null {
    const value = this.captures.get(name) ?? (name === "count" ? this.captures.get("bare") : undefined);
    return value !== undefined && "count" in value ? value.count : null;
  }

  amount(name = "amount"): Amount | null {
    const value = this.captures.get(name) ?? (name === "amount" ? this.captures.get("part") : undefined);
    return value !== undefined && "amount" in value ? value.amount : null;
  }

  name(name = "name"): string | null {
    const value = this.captures.get(name);
    return value !== undefined && "name" in value ? value.name : null;
  }

  lot(name = "lot"): LotReference | null {
    const value = this.captures.get(name);
    return value !== undefined && "lot" in value ? value.lot : null;
  }

  distance(): Distance | null {
    const value = this.captures.get("distance");
    return value !== undefined && "distance" in value ? value.distance : null;
  }

  share(name = "share"): number | null {
    const value = this.captures.get(name);
    return value !== undefined && "share" in value ? value.share : null;
  }

  edtf(): string | null {
    const value = this.captures.get("year");
    return value !== undefined && "edtf" in value ? value.edtf : null;
  }

  day(): { readonly month: number; readonly day: number | null } | null {
    const value = this.captures.get("day");
    return value !== undefined && "month" in value ? value : null;
  }
}

/** The longest reading of a pattern from token `from` on, or null. */
export function find(pattern: Pattern, line: Line, from: number): Found | null {
  let best: { end: number; captures: Captures } | null = null;
  walk(pattern, 0, line, from, new Map(), (end, captures) => {
    if (end > from && (best === null || end > best.end)) best = { end, captures };
  });
  const found = best as { end: number; captures: Captures } | null;
  return found === null ? null : new Found(line, from, found.end, found.captures);
}

function walk(
  nodes: readonly Node[],
  index: number,
  line: Line,
  at: number,
  captures: Captures,
  reached: (end: number, captures: Captures) => void,
): void {
  const node = nodes[index];
  if (node === undefined) {
    reached(at, captures);
    return;
  }
  const onward = (end: number, more: Captures) => walk(nodes, index + 1, line, end, more, reached);
  if (node.kind === "word") {
    if (low(line, at) === node.word) onward(at + 1, captures);
  } else if (node.kind === "end") {
    if (isClosed(line, at) || isRunOn(line, at)) onward(at, captures);
  } else if (node.kind === "beginning") {
    if (isBeginning(line, at)) onward(at, captures);
  } else if (node.kind === "slot") {
    const read = readSlot(node.slot, line, at);
    if (read !== null) onward(read.end, new Map(captures).set(node.name, read));
  } else {
    for (const option of node.options) walk(option, 0, line, at, captures, onward);
    if (node.optional) onward(at, captures);
  }
}

function readSlot(slot: string, line: Line, at: number): SlotRead | null {
  const key = `${slot}@${at}`;
  const known = line.reads.get(key);
  if (known !== undefined) return known;
  const read = SLOTS[slot]?.(line, at) ?? null;
  line.reads.set(key, read);
  return read;
}

/** What a pattern can begin with: these words, or what these slots read. */
export interface Openings {
  readonly words: Set<string>;
  readonly slots: Set<string>;
}

export function openingsOf(shape: Pattern, found: Openings = { words: new Set(), slots: new Set() }): Openings {
  for (const node of shape) {
    if (node.kind === "beginning" || node.kind === "end") continue;
    if (node.kind === "word") found.words.add(node.word);
    else if (node.kind === "slot") found.slots.add(node.slot);
    else for (const option of node.options) openingsOf(option, found);
    if (node.kind !== "choice" || !node.optional) break;
  }
  return found;
}

/** Whether a pattern with these openings can begin at token `at`: spares most patterns a closer look. */
export function canBegin(openings: Openings, line: Line, at: number): boolean {
  if (openings.words.has(low(line, at))) return true;
  for (const slot of openings.slots) if (readSlot(slot, line, at) !== null) return true;
  return false;
}

const SYMBOL = /\s*(\(|\)|\||\?|\$|\{[^}]*\}|[^\s()|?${}]+)/y;

/** Makes a pattern of its text; a fault in it throws when the rules are loaded, so that no test can miss it. */
export function pattern(text: string): Pattern {
  const full = expanded(text);
  const symbols: string[] = [];
  SYMBOL.lastIndex = 0;
  for (let match = SYMBOL.exec(full); match !== null; match = SYMBOL.exec(full)) symbols.push(match[1] ?? "");
  const place = { at: 0 };
  const nodes = sequence(symbols, place);
  if (place.at !== symbols.length || nodes.length === 0) throw new RangeError(`fault in a pattern: ${text}`);
  return nodes;
}

function expanded(text: string): string {
  return text.replace(/<([a-z-]+)>/g, (_, name: string) => {
    const list = VOCABULARY[name];
    if (list === undefined) throw new RangeError(`no such list of words: ${name}`);
    return `(${expanded(list)})`;
  });
}

function sequence(symbols: readonly string[], place: { at: number }): Node[] {
  const nodes: Node[] = [];
  for (
    let symbol = symbols[place.at];
    symbol !== undefined && symbol !== ")" && symbol !== "|";
    symbol = symbols[place.at]
  ) {
    place.at += 1;
    const node = nodeOf(symbol, symbols, place);
    const optional = symbols[place.at] === "?";
    if (optional) place.at += 1;
    nodes.push(optional ? { kind: "choice", options: [[node]], optional: true } : node);
  }
  return nodes;
}

function nodeOf(symbol: string, symbols: readonly string[], place: { at: number }): Node {
  if (symbol === "$") return { kind: "end" };
  if (symbol === "^") return { kind: "beginning" };
  if (symbol === "(") {
    const options: Node[][] = [];
    do options.push(sequence(symbols, place));
    while (symbols[place.at++] === "|");
    return { kind: "choice", options, optional: false };
  }
  const slot = /^\{([a-z]+)(?::([a-z]+))?\}$/.exec(symbol);
  if (slot === null) return { kind: "word", word: symbol };
  const name = slot[1] ?? "";
  if (SLOTS[name] === undefined) throw new RangeError(`no such slot: ${name}`);
  return { kind: "slot", slot: name, name: slot[2] ?? name };
}
