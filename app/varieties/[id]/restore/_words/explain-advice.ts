import type { Explanation } from "@/lib/display/explanation";
import { percent, plainNumber, wholeNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import type { LotToRestoreWith, RestoreGround } from "@/lib/registry/varieties/read-restore";
import type { NothingHelps, RestoreAdvice } from "@/lib/registry/varieties/restore-advice";

/** How the advice came about. */
export function adviceExplanation(advice: RestoreAdvice, { seedsWanted }: RestoreGround): Explanation {
  const { parts, best, kept, figures, among, seeds } = advice;
  const native = among.some(({ foreign }) => foreign);
  return {
    title: "What the mix would keep",
    answer: percent(kept),
    formula: native
      ? "1 − t/k of the mix, chosen so that ΣΣ w w' t/k is least; 0 ≤ w ≤ what a lot can give / seeds of the mix"
      : "1 − θ, θ = ΣΣ w w' Θ made least; Σ w = 1, 0 ≤ w ≤ what a lot can give / living seeds of the mix",
    inputs: [
      ...parts.map(({ lot, share, seeds: own }) => ({
        name: `lot ${lot.number}`,
        value: `${percent(share, 0)}, ${wholeNumber(own)} living seeds of ${wholeNumber(lot.canGive ?? 0)} it can give`,
        href: `/lots/${lot.id}`,
      })),
      { name: "living seeds of the mix", value: wholeNumber(seeds) },
      ...(best ? [{ name: "the best alone", value: `lot ${best.lot.number}, ${percent(best.kept)}` }] : []),
      ...(figures ? [{ name: "coancestry θ of the mix", value: plainNumber(figures.coancestry, 4) }] : []),
      { name: "lots it was chosen among", value: String(among.length) },
    ],
    assumed: [
      ...(seedsWanted
        ? [
            `Of the seeds that germinate in a test 8 in 10 make a plant: ${counted(seedsWanted.plants, "plant")} want ${seedsWanted.seeds} living seeds.`,
          ]
        : []),
      ...(parts.some(({ lot }) => lot.keeps === "half")
        ? ["Where a holder’s reserve cannot be worked out, half of the jar stays."]
        : []),
      ...(parts.some(({ lot }) => lot.lifeAssumed)
        ? ["Of seed that was never tested half is taken as alive: test it before it is mixed."]
        : []),
      "A holder’s reserve is taken evenly from all the good jars that hold it.",
    ],
    unsure: `It looks at kinship alone, not at vigour, age or trueness to type. ${
      native
        ? "With foreign genes in the mix founders count as unrelated; if they are kin, it adds less."
        : "Where founders may be kin the figures are those of the cautious end."
    }`,
    sources: [
      "Caballero & Toro 2000, Genet. Res. 75:331",
      "Fernández, Toro & Caballero 2001, Animal Biodiversity and Conservation 24.2:17",
    ],
    calc: "npm run --silent calc -- blend-advice",
  };
}

/** Why no mix helps, and what would. */
export function nothingInWords(nothing: NothingHelps, best: LotToRestoreWith | null): string {
  const lot = best ? `lot ${best.number}` : "the best lot";
  return {
    "no lineage": "The records of this crop make no lineage: mend what is told of its lots first.",
    "no lot can be used":
      "Nothing can be told: no lot of it is tested, weighed, of known lineage, free of objections and more than its holder’s reserve.",
    "one lot can be used": `Only ${lot} can be used as it is. What stands against the others is told below.`,
    "all are one pool":
      "All that can be used are one pool: parts of one harvest, or split from one lot. Mixing them adds nothing.",
    "nothing is added": `What could be mixed to ${lot} comes from it, or shares as much with it as it does with itself. Seed from another line would help.`,
  }[nothing];
}

/** How near lots are, for the head of the table. */
export function kinshipExplanation(lots: number): Explanation {
  return {
    title: "Coancestry between lots",
    answer: counted(lots, "lot"),
    formula:
      "Θ(A, B): the chance that a gene of a seed of one and a gene of a seed of the other come from one gene of a founder; of a lot with itself, of two of its seeds",
    inputs: [],
    assumed: ["Lots of one grow-out are one pool: they are to each other what each is to itself."],
    unsure: "Lots that came of one another are near; the paler the square, the more they add to each other.",
    sources: ["Cockerham 1967, Genetics 56:89"],
    calc: "npm run --silent calc -- lineage",
  };
}
