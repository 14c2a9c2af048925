import Link from "next/link";
import type { ReactNode } from "react";
import { PageHead } from "@/components/frame";
import { SeedCoat } from "@/components/seed-coat";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";

/** The head of a page about one grow-out: which one, and what is done here. */
export function GrowOutPageHead({
  growOut,
  variety,
  title,
  children,
}: {
  growOut: { readonly id: string; readonly name: string };
  variety: { readonly name: string; readonly seedCoat: string | null; readonly cropKey: string };
  title: string;
  children?: ReactNode;
}) {
  return (
    <PageHead
      kind={
        <>
          <Link href={`/grow-outs/${growOut.id}`}>{growOut.name}</Link>, {variety.name}
        </>
      }
      title={title}
      mark={<SeedCoat name={variety.name} crop={variety.cropKey} coat={storedSeedCoat(variety.seedCoat)} size={48} />}
    >
      {children ? <p className="measure">{children}</p> : null}
    </PageHead>
  );
}
