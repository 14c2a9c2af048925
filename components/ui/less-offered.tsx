"use client";

import { usePathname, useSearchParams } from "next/navigation";
import { type ReactNode, useContext } from "react";
import { type Closed, ClosedTo, isOffered } from "./offered";

/**
 * Within it more is closed than around it: what is here is another's. At an address that is closed itself (typed in by hand, or kept from before) stands
 * `instead` in the place of its form.
 */
export function LessOffered({
  closed,
  instead,
  at,
  children,
}: {
  closed: Omit<Closed, "addresses">;
  instead?: ReactNode;
  /** the address with the record's id, where the page's own may name it otherwise */
  at?: string;
  children: ReactNode;
}) {
  const { addresses, deeds, named = [] } = useContext(ClosedTo);
  const more = { addresses, deeds: [...deeds, ...closed.deeds], named: [...named, ...(closed.named ?? [])] };
  const asked = `${usePathname()}?${useSearchParams()}`;
  const here = at ?? asked;
  // What is not for somebody's role says so by itself.
  const theirs = isOffered(here, { addresses, deeds });
  const anothers = theirs && !isOffered(here, { ...more, addresses: [] });
  return <ClosedTo value={more}>{instead && anothers ? instead : children}</ClosedTo>;
}
