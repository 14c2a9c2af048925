"use client";

import Link from "next/link";
import { type ComponentProps, createContext, type ReactNode, useContext } from "react";

/** What is not for somebody: addresses, with changing steps as [step], and deeds by their name. Nothing, unless the layout says so. */
export interface Closed {
  readonly addresses: readonly string[];
  readonly deeds: readonly string[];
}

const ClosedTo = createContext<Closed>({ addresses: [], deeds: [] });

/** Tells everything within what is not for the one who looks: ways and deeds that would be refused are not offered. */
export function Offering({ closed, children }: { closed: Closed; children: ReactNode }) {
  return <ClosedTo value={closed}>{children}</ClosedTo>;
}

/** What is not for the one who looks. */
export function useClosed(): Closed {
  return useContext(ClosedTo);
}

/** True where an address is not among the closed ones. */
export function isOffered(href: string, { addresses }: Closed): boolean {
  const asked = steps(href);
  return !addresses.some((address) => {
    const closed = steps(address);
    return closed.length === asked.length && closed.every((step, at) => step.startsWith("[") || step === asked[at]);
  });
}

function steps(href: string): string[] {
  return (href.split(/[?#]/)[0] ?? "").split("/").filter(Boolean);
}

/** A link that is there only for who may follow it, with the words `before` and `after` it; `otherwise` stands there for the others. */
export function Way({
  otherwise = null,
  before,
  after,
  ...link
}: ComponentProps<typeof Link> & { otherwise?: ReactNode; before?: string; after?: string }) {
  if (!isOffered(String(link.href), useContext(ClosedTo))) return otherwise;
  return (
    <>
      {before}
      <Link {...link} />
      {after}
    </>
  );
}

/** A file to be taken out, for who may. */
export function FileWay(link: ComponentProps<"a"> & { href: string }) {
  return isOffered(link.href, useContext(ClosedTo)) ? <a {...link} /> : null;
}

/** What is there only for who may do the deed. */
export function Offered({ deed, children }: { deed: string; children: ReactNode }) {
  return useContext(ClosedTo).deeds.includes(deed) ? null : children;
}
