import { dateInWords } from "@/lib/display/dates";
import { percent } from "@/lib/display/numbers";
import type { LineProposal, UnknownField } from "@/lib/exchange/notebook-lines/proposal";
import type { Certainty } from "@/lib/exchange/notebook-lines/reading";
import { growingFields } from "./growing-fields";
import { certaintyOf, field, type LineField, lotField } from "./line-field";
import { stockFields } from "./stock-fields";
import type { ReadLine } from "./typed-line";

/** What a line says, in the order of the year: when, from what, how many, what was kept, what came of it. `nameOf` gives a lot's number. */
export function lineFields(line: ReadLine, nameOf: (lot: string) => string = (lot) => lot): LineField[] {
  const { proposal } = line;
  const certain = certaintyOf(line);
  const { year, yearCertainty, from, kind } = proposal;
  const source = kind === "blend" ? "mixed in" : kind === "split" ? "part of" : "sown from";
  return [
    field("year", "year", year === null ? null : dateInWords(year), yearCertainty ?? "likely", "year"),
    ...receivedFields(proposal, certain("received")),
    ...from.flatMap((parent, place) => lotField(`from.${place}`, source, parent)),
    ...(from.length > 1 ? from.map((parent, place) => shareField(parent, place, nameOf)) : []),
    ...(kind === "grow-out" || kind === "failed" ? growingFields(proposal, certain) : []),
    ...stockFields(proposal, certain),
  ];
}

function receivedFields({ received, lots }: LineProposal, certainty: Certainty): LineField[] {
  const founder = lots.find((lot) => lot.kind === "founder" && !lot.assumed);
  const harvest = founder && founder.year !== null ? dateInWords(founder.year) : null;
  return [
    ...(received
      ? [field("received", `how much from ${received.from}`, received.amount?.words ?? null, certainty, "amount")]
      : []),
    ...(founder ? [field("lotYear", "that seed’s harvest", harvest, "sure", "date")] : []),
  ];
}

function shareField(parent: LineProposal["from"][number], place: number, nameOf: (lot: string) => string): LineField {
  const text = parent.share === null ? null : percent(parent.share);
  return field(`share.${place}`, `share of ${nameOf(parent.lot)}`, text, "sure", "share");
}

const unknownWords: Readonly<Partial<Record<UnknownField, string>>> = {
  seedsSown: "how many seeds were sown",
  foreignPollen: "what else flowered near",
  seedsTested: "how many seeds were tested",
};

/** What the registry would like to know and the line leaves open, beside the fields that stand open already. */
export function leftOpen({ proposal }: ReadLine): string[] {
  return proposal.unknown.flatMap((unknown) => unknownWords[unknown] ?? []);
}
