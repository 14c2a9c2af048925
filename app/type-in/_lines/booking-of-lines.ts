import type { LineageEntry, LineageGrowOut, ProposedLineage } from "@/lib/exchange/notebook-lines/lineage";
import type { ParentLot } from "@/lib/exchange/notebook-lines/proposal";
import type { Amount, Count } from "@/lib/exchange/notebook-lines/reading";
import type { NotebookBooking } from "@/lib/schemas/notebook-typing/notebook-booking";
import type { Told, ToldAmount } from "@/lib/schemas/notebook-typing/told";
import { proposedLineage } from "./proposed-lineage";
import type { ReadLine } from "./typed-line";

/** Everything that stands on the screen, as the registry takes it. Lines without a word are left out. */
export function bookingOfLines(given: {
  readonly variety: NotebookBooking["variety"];
  readonly holder: string | null;
  readonly lines: readonly ReadLine[];
  readonly numbers: Readonly<Record<string, string>>;
}): NotebookBooking {
  const { variety, holder, lines, numbers } = given;
  const lineage = proposedLineage(lines);
  return {
    variety,
    holder,
    lines: lines.map(({ words, proposal }) => ({ words: words.trim(), year: proposal.year, kind: proposal.kind })),
    lots: lineage.lots.map(({ name, line, kind, year, firstSeen, words, person, assumed, growOut, parents }) => ({
      ref: name,
      line,
      number: numbers[name] ?? name,
      kind,
      year,
      firstSeen,
      words,
      person,
      assumed,
      growOut,
      parents: parents.map(parentOf),
    })),
    growOuts: lineage.growOuts.map((growOut) => bookedGrowOut(growOut, lines[growOut.line])),
    entries: entriesOf(lineage, lines),
    tests: lineage.tests.map(({ line, lot, on, up, of, days, words }) => ({
      line,
      lot,
      on,
      up: told(up),
      of: told(of),
      days,
      words,
    })),
  };
}

function bookedGrowOut(growOut: LineageGrowOut, line: ReadLine | undefined): NotebookBooking["growOuts"][number] {
  const { year, sown, seedParentsCounted, seedShares, bulked, outcome } = growOut;
  return {
    ref: growOut.name,
    line: growOut.line,
    year,
    sown,
    parents: growOut.parents.map(parentOf),
    seedsSown: told(growOut.seedsSown),
    emerged: told(growOut.emerged),
    plantsStanding: told(growOut.plantsStanding),
    roguedBeforePollen: told(growOut.roguedBeforePollen),
    roguedAfterPollen: told(growOut.roguedAfterPollen),
    roguedUntimed: told(growOut.roguedUntimed),
    seedParents: told(growOut.seedParents),
    seedParentsCounted,
    seedShares,
    bulked,
    outcome,
    isolation: (line?.proposal.isolation ?? []).flatMap((method) => method ?? []),
    neighbours: [...(line?.proposal.neighbours ?? [])],
  };
}

/** The entries of each line, a gift with how it was given. */
function entriesOf(lineage: ProposedLineage, lines: readonly ReadLine[]): NotebookBooking["entries"] {
  const gifts = new Map<number, number>();
  return lineage.ledger.map((entry) => {
    const place = gifts.get(entry.line) ?? 0;
    if (entry.kind === "given") gifts.set(entry.line, place + 1);
    return { ...bookedEntry(entry), manner: entry.kind === "given" ? mannerOf(lines[entry.line], place) : null };
  });
}

function mannerOf(line: ReadLine | undefined, place: number): NotebookBooking["entries"][number]["manner"] {
  return (line?.proposal.given ?? []).filter((gift) => gift.lot !== null)[place]?.manner ?? "gift";
}

function bookedEntry({
  line,
  lot,
  on,
  kind,
  amount,
  other,
}: LineageEntry): Omit<NotebookBooking["entries"][number], "manner"> {
  return { line, lot, on, kind, amount: toldAmount(amount), other };
}

function parentOf({ lot, share }: ParentLot): { lot: string; share: number | null } {
  return { lot, share };
}

function told(count: Count | null): Told | null {
  if (count === null) return null;
  const { words, value, low, high, approximate } = count;
  return { words, value, low, high, approximate };
}

/** Weights become grams; what is counted stays counted. */
function toldAmount(amount: Amount | null): ToldAmount | null {
  if (amount === null) return null;
  const { words, value, low, high, approximate, unit, grams } = amount;
  return { words, ...(grams ?? { value, low, high }), approximate, unit };
}
