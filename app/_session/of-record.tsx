import "server-only";
import type { ReactNode } from "react";
import { LessOffered } from "@/components/ui/offered";
import { closedHere, closedOfLots, type RecordPage } from "@/lib/registry/ownership/offered-here";
import { current } from "./current";

/** The pages of a record: what stands within offers nothing that would be refused because the record is another's. */
async function OfRecord({ page, id, children }: { page: RecordPage; id: string; children: ReactNode }) {
  const { db, actor } = await current();
  const closed = await closedHere(db, actor, page, id);
  return closed === null ? children : <LessOffered closed={closed}>{children}</LessOffered>;
}

/** The layout of a record's pages. */
export function layoutOf(page: RecordPage) {
  return async ({ params, children }: { params: Promise<{ id: string }>; children: ReactNode }) => (
    <OfRecord page={page} id={(await params).id}>
      {children}
    </OfRecord>
  );
}

/** A list of lots: what stands within offers nothing with those that are another's. */
export async function OfLots({ ids, children }: { ids: readonly string[]; children: ReactNode }) {
  const { db, actor } = await current();
  const closed = await closedOfLots(db, actor, ids);
  return closed === null ? children : <LessOffered closed={closed}>{children}</LessOffered>;
}
