import { dayInWords } from "@/lib/display/dates";
import type { Explanation } from "@/lib/display/explanation";
import { effectiveSize, percent, plainNumber } from "@/lib/display/numbers";
import { counted, listed } from "@/lib/display/plurals";
import type { Holder, Unconfirmed } from "@/lib/registry/varieties/holders";
import type { LotOfVariety, VarietyRead } from "@/lib/registry/varieties/read-variety";
import type { Settings } from "@/lib/schemas/settings";

/** Why a holder does not count, in words. */
export const unconfirmedWords: Readonly<Record<Unconfirmed, string>> = {
  "nothing heard": "nothing was ever heard",
  "heard too long ago": "too long ago",
  "said no": "said that it is gone",
  "does not know": "does not know",
  "seed past its usual life": "the seed is past its usual life",
  "age not known": "how old the seed is, is not known",
};

/** A holder by name; lots without a holder are kept where the registry is. */
export function holderName(holder: Holder, people: ReadonlyMap<string, string>): string {
  if (holder.stewardId === null) return "here (no holder is written)";
  return people.get(holder.stewardId) ?? "a steward";
}

/** How many places hold a variety for certain. */
export function placesExplanation(
  read: Pick<VarietyRead, "holders" | "people" | "crop"> & { readonly variety: { readonly name: string } },
  settings: Settings,
): Explanation {
  const confirmed = read.holders.filter((holder) => holder.confirmed);
  const places = confirmed.reduce((sum, holder) => sum + holder.places, 0);
  const { seedLifeYearsMax } = read.crop;
  return {
    title: `Places that hold ${read.variety.name}`,
    answer: counted(places, "place"),
    formula:
      "confirmed holders, each with the separate buildings in which their containers stand (one, where none is on record)",
    inputs: [
      ...read.holders.map((holder) => ({
        name: holderName(holder, read.people),
        value:
          holder.why === null ? `${counted(holder.places, "place")}, ${heard(holder)}` : unconfirmedWords[holder.why],
        href: "#holders",
      })),
      { name: "a word counts for", value: counted(settings.confirmedYears, "year"), href: "/settings" },
      {
        name: "usual life of the seed",
        value: seedLifeYearsMax === null ? "unknown" : `up to ${plainNumber(seedLifeYearsMax)} years`,
        href: `/crops/${encodeURIComponent(read.crop.key)}`,
      },
    ],
    assumed: [
      "Seed that was weighed, tested or given away on a day was in the holder’s hand on that day.",
      ...(seedLifeYearsMax === null
        ? ["The usual life of the seed is not known, so its age is not held against it."]
        : []),
    ],
    unsure: "At least three people in three places is the aim, one of them out of the valley.",
    sources: ["Trade practice, not verified in a source"],
    plain: "count of places",
  };
}

function heard(holder: Holder): string {
  if (holder.last === null) return "nothing heard";
  return `${holder.last.how === "word" ? "word of" : "seed in hand"} ${dayInWords(holder.last.day)}`;
}

/** How much of its founders' diversity a lot has kept. */
export function diversityExplanation(lot: Pick<LotOfVariety, "id" | "number" | "figures">): Explanation {
  const figures = lot.figures;
  const many = (figures?.founders.length ?? 0) > 1;
  return {
    title: `Diversity kept in lot ${lot.number}`,
    answer: percent(figures?.diversityRetained ?? null),
    formula:
      "diversity kept = 1 − θ, the chance that two genes drawn from two of its seeds are not copies of one gene of the founders",
    inputs: [
      { name: "lot", value: lot.number, href: `/lots/${lot.id}` },
      { name: "founder lots", value: listed(figures?.founders ?? []) || "none" },
      {
        name: "generations",
        value: figures?.generations === null || !figures ? "unknown" : plainNumber(figures.generations, 1),
      },
      { name: "effective size of the last grow-out", value: effectiveSize(figures?.effectiveSize ?? null) },
      {
        name: "coancestry θ",
        value: figures?.coancestry === null || !figures ? "unknown" : plainNumber(figures.coancestry, 4),
      },
      { name: "foreign ancestry", value: percent(figures?.foreignAncestry ?? null) },
      { name: "of its own kept", value: percent(figures?.nativeDiversityRetained ?? null) },
    ],
    assumed: (figures?.assumed ?? []).map(sentence),
    unsure: many
      ? "Its founders are counted as unrelated; nobody wrote how they are related. If they are kin, less is kept than this."
      : "It is counted from the plants that were written down, not measured in the seed.",
    sources: ["Cockerham 1967, Genetics 56:89", "Lindgren & Mullin 1998, Can. J. For. Res. 28:276"],
    calc: `npm run --silent figures -- ${JSON.stringify(lot.number)}`,
  };
}

function sentence(text: string): string {
  const head = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.!?]$/.test(head) ? head : `${head}.`;
}
