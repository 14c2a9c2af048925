import Link from "next/link";
import { Explained } from "@/components/numbers";
import type { StemTree } from "@/components/stem-chart";
import { kinOf, sharedAncestors } from "@/components/stem-chart";
import { counted, listed } from "@/lib/display/plurals";
import type { LotOfLineage } from "@/lib/registry/lineage/lineage-lots";
import type { LineageRead } from "@/lib/registry/lineage/read-lineage";
import type { SharedByLots } from "@/lib/registry/lineage/shared-by-lots";
import { coancestryInWords, sharedExplanation, sharedSentence } from "../_words/shared";

const mostNamed = 6;

/** The ancestors that two lots share, and how near kin they are. */
export function SharedByTwo({
  read,
  tree,
  one,
  other,
  shared,
}: {
  read: LineageRead;
  tree: StemTree;
  one: LotOfLineage;
  other: LotOfLineage;
  shared: SharedByLots | null;
}) {
  const { all, nearest } = sharedAncestors(kinOf(tree), one.id, other.id);
  const lots = new Map(read.lots.map((lot) => [lot.id, lot]));
  const named = nearest.flatMap((id) => lots.get(id) ?? []);
  const between = one.standing === "counted" && other.standing === "counted" ? shared : null;
  return (
    <div className="stack-near">
      <h3>
        What <Link href={`/lots/${one.id}`}>{one.number}</Link> and{" "}
        <Link href={`/lots/${other.id}`}>{other.number}</Link> share
      </h3>
      <p>
        {all.size === 0
          ? "No lot on record stands behind both."
          : `${counted(all.size, "lot")} ${all.size === 1 ? "stands" : "stand"} behind both; the ${nearest.length === 1 ? "last" : "last ones"}, where they parted: ${listed(named.slice(0, mostNamed).map(({ number }) => number))}${named.length > mostNamed ? ` and ${named.length - mostNamed} more` : ""}.`}
      </p>
      {between ? (
        <>
          <Explained explanation={sharedExplanation(one, other, between)}>
            Coancestry {coancestryInWords(between)}
          </Explained>
          <p>{sharedSentence(one, other, between)}</p>
        </>
      ) : (
        <p>
          How near kin they are is not known: somewhere up their lines the plants, the seed parents or their shares were
          not written down.
        </p>
      )}
    </div>
  );
}
