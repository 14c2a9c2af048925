import type { Client, Transaction } from "@/lib/db";
import { claimKinds, claimStandings, kinshipKinds } from "@/lib/schemas/lots/lineage-claims";
import { refusal } from "@/lib/science/outcome";
import type { Fields } from "./cells";
import { count, day, type FurtherSpec, nameOf, number, oneOf, text } from "./spec";

const needed = { needed: true };

/** What is told and known of where lots are from, beside the records of how they were made. They follow the stories that they name. */
export const lineageFiles: readonly FurtherSpec[] = [
  {
    file: "lineage_claims.csv",
    table: "LineageClaim",
    noun: "claim of descent",
    identity: { by: "lines" },
    events: true,
    columns: [
      nameOf("lot", needed),
      oneOf("kind", claimKinds, needed),
      nameOf("lot", { column: "parent_lot" }),
      text("words", needed),
      text("teller"),
      nameOf("steward"),
      day("told_on"),
      text("how_sure"),
      count("generations_first"),
      count("generations_last"),
      nameOf("story"),
      oneOf("standing", claimStandings, { unsaid: "open" }),
      text("standing_reason"),
    ],
    refuses: ({ kind, lotId, parentLotId, generationsFirst, generationsLast }) => {
      if (kind === "unknown before" && (parentLotId ?? null) !== null)
        return refusal(
          "no-parent-wanted",
          ["parent_lot"],
          null,
          "is named where nothing is known before",
          "leave it empty",
        );
      if ((parentLotId ?? null) !== null && parentLotId === lotId)
        return refusal(
          "of-itself",
          ["parent_lot"],
          "parent_lot",
          "is the lot itself",
          "name another lot, or leave it empty",
        );
      const [first, last] = [generationsFirst ?? null, generationsLast ?? null];
      if (last !== null && (first === null || Number(last) < Number(first)))
        return refusal("range-crossed", ["generations_last"], last, "is fewer than the first", "write it as 2 and 4");
      return null;
    },
  },
  {
    file: "founder_kinships.csv",
    table: "FounderKinship",
    noun: "kinship of founder lots",
    identity: { by: "keyed", columns: 2 },
    columns: [
      nameOf("lot", { ...needed, column: "first_lot", field: "firstId" }),
      nameOf("lot", { ...needed, column: "second_lot", field: "secondId" }),
      oneOf("kind", kinshipKinds, needed),
      number("coancestry"),
      text("how", needed),
    ],
    completes: sameTwoLots,
    refuses: ({ firstId, secondId, kind, coancestry }) => {
      if (firstId === secondId)
        return refusal("of-itself", ["second_lot"], "second_lot", "is the first lot itself", "name two lots");
      const told = coancestry ?? null;
      if ((kind === "coancestry") !== (told !== null) || (told !== null && !(Number(told) >= 0 && Number(told) <= 1)))
        return refusal("coancestry-misplaced", ["coancestry"], told, `does not go with ${kind}`, neededOfCoancestry);
      return null;
    },
  },
];

const neededOfCoancestry = "write a share from 0 to 1 where the kind is coancestry, and nothing elsewhere";

/** Two lots are kin whichever of them is named first. */
async function sameTwoLots(tx: Transaction | Client, rows: readonly Fields[]): Promise<ReadonlyMap<number, string>> {
  const standing = new Map<number, string>();
  for (const [place, { firstId, secondId }] of rows.entries()) {
    const where = { firstId: String(secondId), secondId: String(firstId) };
    const found = await tx.founderKinship.findFirst({ where, select: { id: true } });
    if (found) standing.set(place, found.id);
  }
  return standing;
}
