import Link from "next/link";
import type { ReactNode } from "react";
import { PageHead } from "@/components/frame";
import { SeedCoat } from "@/components/seed-coat";
import type { LotHead } from "@/lib/registry/lots/read-head";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";

/** The head of a page about one lot: what is done, and to which lot of which variety. */
export function LotPageHead({ lot, title, children }: { lot: LotHead; title: string; children?: ReactNode }) {
  return (
    <PageHead
      title={title}
      kind={
        <>
          <Link href={`/lots/${lot.id}`}>Lot {lot.number}</Link>, {lot.variety}
        </>
      }
      mark={<SeedCoat name={lot.variety} crop={lot.crop.cropKey} coat={storedSeedCoat(lot.seedCoat)} size={48} />}
    >
      {children ? <p className="measure">{children}</p> : null}
    </PageHead>
  );
}
