import Link from "next/link";
import { PageHead } from "@/components/frame";
import { Figure } from "@/components/numbers";
import { SeedCoat } from "@/components/seed-coat";
import { ButtonLink } from "@/components/ui";
import type { LotRead } from "@/lib/registry/lots/read-lot";
import { isEmpty } from "@/lib/registry/transfers/after-giving";
import type { Settings } from "@/lib/schemas/settings";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { giveExplanation } from "../_words/explain-reserve";
import { giveInWords } from "../_words/give-in-words";

/** The head of a lot's page: which lot it is, what may be given of it, what can be done with it. */
export function LotHeading({ read, settings }: { read: LotRead; settings: Settings }) {
  const { lot } = read;
  const give = giveInWords(read, settings);
  return (
    <PageHead
      kind={<Link href={`/varieties/${lot.varietyId}`}>{lot.variety}</Link>}
      title={`Lot ${lot.number}`}
      mark={<SeedCoat name={lot.variety} crop={lot.crop.cropKey} coat={storedSeedCoat(lot.seedCoat)} size={64} />}
      figure={
        <Figure value={give.figure} waiting={give.waiting} explanation={giveExplanation(read, settings)}>
          {give.sentence}
        </Figure>
      }
      actions={
        <>
          <ButtonLink href={`/lots/${lot.id}/ledger/new`} kind="chief">
            Write into the ledger
          </ButtonLink>
          {isEmpty(read.figures?.gramsOnHand ?? null, lot.thousandSeedGrams) ? null : (
            <ButtonLink href={`/lots/${lot.id}/give`}>Give, lend, deposit</ButtonLink>
          )}
          <ButtonLink href={`/lots/${lot.id}/correct`} kind="quiet">
            Put it right
          </ButtonLink>
        </>
      }
    />
  );
}
