import type { Explanation } from "@/lib/display/explanation";
import { keptSpan, sizeSpan } from "@/lib/display/kept-span";
import { span } from "@/lib/display/numbers";
import { listed } from "@/lib/display/plurals";
import type { NarrowingRecord, SpanOfLot } from "@/lib/registry/figures/span-of-lot";

/** The founders' diversity, or what it is measured from where nothing bounds what went before. */
function measuredFrom({ since }: SpanOfLot): string {
  return since.length === 0
    ? "of the diversity that its founder lots brought"
    : `of the diversity that was there at the harvest of ${listed(since.map(({ name }) => name))}`;
}

/** What a span of diversity kept means, after its figure. */
export function spanSentence(shown: SpanOfLot): string {
  const { low, high } = shown.diversityRetained;
  const known =
    keptSpan(shown.diversityRetained).startsWith("about") || low === high
      ? ""
      : " Somewhere up its line something was not written down, and what was written allows all of this.";
  const anew =
    shown.since.length === 0
      ? ""
      : ` Of ${shown.since.length === 1 ? "that grow-out" : "those grow-outs"} nothing is written that bounds its plants, so the measure begins there.`;
  return `${measuredFrom(shown)} is expected to be still in it.${known}${anew}`;
}

/** Which record would narrow the span most, and to what; null where none would. */
export function narrowsInWords(narrows: NarrowingRecord | null): string | null {
  if (narrows === null) return null;
  const left = `${keptSpan(narrows.atWorst)} at the worst, ${keptSpan(narrows.atBest)} at the best`;
  return `${missingWords(narrows)} would narrow it most: it would be ${left}.`;
}

function missingWords({ missing, record }: NarrowingRecord): string {
  const of = record.kind === "founders" ? listed(record.names) : record.name;
  switch (missing) {
    case "pollenParents":
      return `How many plants shed pollen in ${of}`;
    case "seedParents":
      return `How many plants gave the seed of ${of}`;
    case "seedShares":
      return `How the seed of ${of} was shared among its plants`;
    case "parentShares":
      return record.kind === "lot"
        ? `How much of each lot went into ${of}`
        : `How many plants of each lot stood in ${of}`;
    case "kinship":
      return `How the founder lots ${of} are related`;
  }
}

/** The page on which the record that would narrow a span is written. */
export function narrowsHref({ record }: NarrowingRecord): string {
  if (record.kind === "founders") return `/lots/${record.ids[0]}`;
  return record.kind === "lot" ? `/lots/${record.id}` : `/grow-outs/${record.id}`;
}

/** How the span of a lot's diversity came about. */
export function spanExplanation(number: string, founders: readonly string[], shown: SpanOfLot): Explanation {
  const narrows = shown.narrows;
  const words = narrowsInWords(narrows);
  return {
    title: `Diversity kept in lot ${number}`,
    answer: keptSpan(shown.diversityRetained),
    formula:
      "1 − θ at the worst and at the best that the records allow; θ is the chance that two genes of two plants of the lot come from one gene of a founder",
    inputs: [
      ...(shown.since.length === 0
        ? [{ name: "founder lots", value: listed(founders) || "none" }]
        : shown.since.map(({ growOutId, name }) => ({
            name: "measured from",
            value: name,
            href: `/grow-outs/${growOutId}`,
          }))),
      { name: "coancestry θ", value: twoFigures(shown.coancestry) },
      { name: "inbreeding F", value: twoFigures(shown.inbreeding) },
      { name: "effective size of its grow-out", value: sizeSpan(shown.effectiveSize) },
      { name: "generations", value: span(shown.generations.low, shown.generations.high) },
      ...(narrows === null
        ? []
        : [{ name: "what to look up", value: recordName(narrows), href: narrowsHref(narrows) }]),
    ],
    assumed: shown.assumed,
    unsure: `An expectation from the records, not a measurement of this seed.${words === null ? "" : ` ${words}`}`,
    sources: ["Cockerham 1967, Genetics 56:89", "Lindgren and Mullin 1998, Canadian Journal of Forest Research 28:276"],
    method: "lineage-span",
  };
}

function recordName({ record }: NarrowingRecord): string {
  return record.kind === "founders" ? listed(record.names) : record.name;
}

/** Probabilities at two significant figures. */
function twoFigures({ low, high }: { readonly low: number; readonly high: number }): string {
  const [from, to] = [Number(low.toPrecision(2)), Number(high.toPrecision(2))];
  return from === to ? `about ${from}` : `${from} to ${to}`;
}
