import Link from "next/link";
import { ButtonLink, Notice } from "@/components/ui";

/** What stands in the place of a form that would take seed out of an empty jar: what could be done instead. `act`: "give", "split off". */
export function NothingInIt({ lot, act }: { lot: { id: string; number: string; varietyId: string }; act: string }) {
  return (
    <Notice
      kind="waiting"
      title={`There is nothing to ${act}: by its ledger nothing is left of lot ${lot.number}`}
      actions={
        <>
          <ButtonLink href={`/lots?variety=${lot.varietyId}&seed=some`}>Lots of this variety with seed</ButtonLink>
          <ButtonLink href={`/lots/${lot.id}/ledger/new`} kind="quiet">
            There is seed in it: weigh it in
          </ButtonLink>
        </>
      }
    >
      <p>
        If seed left it that nobody wrote down, <Link href={`/lots/${lot.id}#ledger`}>its ledger</Link> is put right
        first.
      </p>
    </Notice>
  );
}
