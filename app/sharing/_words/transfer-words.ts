import type { Option } from "@/components/ui";
import { plainNumber, seedsCounted } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { GivingKind, TakingKind } from "@/lib/schemas/transfers/transfer";

/** How seed goes, as it is chosen. */
export const givingOptions: readonly (Option & { value: GivingKind; note?: string })[] = [
  { value: "gift", words: "Given", note: "if they like, they bring some back; they need not" },
  { value: "loan", words: "Lent to another steward", note: "with what was promised, and when to ask" },
  { value: "return", words: "Given back", note: "to whom it was lent from; it stands in quarantine there" },
  { value: "exchange", words: "In exchange", note: "what comes for it is taken in on its own page" },
  { value: "safety duplicate", words: "A safety duplicate", note: "kept in another building, unopened" },
  { value: "to a library", words: "To a seed library", note: "never treated seed" },
];

/** How seed comes in, as it is chosen. */
export const takingOptions: readonly (Option & { value: TakingKind; note?: string })[] = [
  { value: "return", words: "It comes back", note: "what was lent or given, or its harvest" },
  { value: "gift", words: "A gift", note: "from somebody’s hand" },
  { value: "exchange", words: "In exchange" },
  { value: "loan", words: "Lent to us" },
];

/** What a transfer is called, for the head of a page and a cell of a table. */
export function kindInWords(kind: string): string {
  return names[kind] ?? kind;
}

const names: Readonly<Record<string, string>> = {
  gift: "gift",
  loan: "loan",
  return: "return",
  exchange: "exchange",
  "safety duplicate": "safety duplicate",
  sale: "sale",
  "to a library": "to a library",
};

/** What was done, for a sentence: "lent to Rin". */
export function doneInWords(kind: string): string {
  return done[kind] ?? kind;
}

const done: Readonly<Record<string, string>> = {
  gift: "given",
  loan: "lent",
  return: "given back",
  exchange: "given in exchange",
  "safety duplicate": "deposited as a safety duplicate",
  sale: "sold",
  "to a library": "given to a library",
};

/** An amount as it was counted: "20 g", "30 seeds", "2 ears"; null where nobody wrote it. */
export function amountInWords(amount: number | null, unit: string, units: UnitSettings): string {
  if (amount === null) return "unknown";
  if (unit === "g") return weight(amount, units);
  if (unit === "seeds") return seedsCounted(amount);
  const one = unit.replace(/s$/, "");
  return Number.isInteger(amount) ? counted(amount, one, unit) : `${plainNumber(amount, 2)} ${unit}`;
}
