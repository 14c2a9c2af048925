import "server-only";
import type { ReactNode } from "react";
import { LessOffered } from "@/components/ui/less-offered";
import { closedHere, closedOfLots, type RecordPage } from "@/lib/registry/ownership/offered-here";
import { AnothersRecord } from "./anothers-record";
import { current } from "./current";

/**
 * The pages of a record: what stands within offers nothing that would be refused because the record is another's, and a page that would only be refused says
 * whose it is.
 */
export async function OfRecord({
  page,
  id,
  at,
  children,
}: {
  page: RecordPage;
  id: string;
  /** the page's address with this id, where it may name the record otherwise */
  at?: string;
  children: ReactNode;
}) {
  const { db, actor } = await current();
  const closed = await closedHere(db, actor, page, id);
  if (closed === null) return children;
  return (
    <LessOffered
      closed={closed}
      at={at}
      instead={<AnothersRecord closed={closed} page={page} id={id} role={actor.role} />}
    >
      {children}
    </LessOffered>
  );
}

/** The layout of a record's pages. */
export function layoutOf<Page extends RecordPage>(page: Page) {
  const step = page.split("[")[1]?.split("]")[0] ?? "";
  return async ({ params, children }: { params: Promise<object>; children: ReactNode }) => (
    <OfRecord page={page} id={((await params) as Readonly<Record<string, string>>)[step] ?? ""}>
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
