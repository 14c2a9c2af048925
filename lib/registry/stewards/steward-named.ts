import type { Transaction } from "@/lib/db";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { foldName } from "../names/fold-name";
import { nearest } from "../search/edit-distance";
import { oneMeant } from "../search/one-meant";

/** The steward that a person names, in any letter case. Refused, with the nearest names, where none is so called. */
export async function stewardNamed(tx: Transaction, name: string, field = "steward"): Promise<Outcome<string>> {
  const found = await tx.person.findMany({ where: { nameKey: foldName(name) } });
  const person = oneMeant(name, found, (each) => each.name);
  if (person) return accepted(person.stewardId);
  if (found.length > 1) {
    const names = found.map((each) => `"${each.name}"`).join(" or ");
    return refused(refusal("more-than-one", [field], name, "could be more than one steward", `write ${names}`));
  }
  const people = await tx.person.findMany({ select: { name: true } });
  const near = nearest(
    foldName(name),
    people.map((each) => each.name),
    foldName,
  );
  const meant = near.length > 0 ? `did you mean ${near.map((each) => `"${each}"`).join(" or ")}? If not, ` : "";
  return refused(refusal("unknown-steward", [field], name, "is no steward here", `${meant}add the steward first`));
}
