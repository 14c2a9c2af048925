import type { Transaction } from "@/lib/db";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { foldName } from "../names/fold-name";
import { nearest } from "../search/edit-distance";
import { oneMeant } from "../search/one-meant";

/** The variety that a typed name means: its own name, or another name that only one variety has. */
export async function varietyByName(tx: Transaction, name: string): Promise<Outcome<{ id: string; name: string }>> {
  const nameKey = foldName(name);
  const select = { id: true, name: true };
  const own = await tx.variety.findMany({ where: { nameKey }, select });
  const meant = oneMeant(name, own, (variety) => variety.name);
  if (meant) return accepted(meant);
  const others = own.length > 0 ? [] : await tx.variety.findMany({ where: { names: { some: { nameKey } } }, select });
  const [only] = others;
  if (only && others.length === 1) return accepted(only);
  const several = [...own, ...others];
  if (several.length > 0) {
    const needed = `write one of ${several.map((variety) => `"${variety.name}"`).join(", ")}`;
    return refused(refusal("several-varieties", ["variety"], name, "is a name of several varieties", needed));
  }
  const all = await tx.variety.findMany({ select: { name: true } });
  const near = nearest(
    nameKey,
    all.map((variety) => variety.name),
    foldName,
  );
  const didYouMean = near.length > 0 ? `did you mean ${near.map((each) => `"${each}"`).join(" or ")}? If not, ` : "";
  const needed = `${didYouMean}enter the variety first`;
  return refused(refusal("unknown-variety", ["variety"], name, "is no variety of this registry", needed));
}
