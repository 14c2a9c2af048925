"use client";

import Link from "next/link";
import { usePathname, useSearchParams } from "next/navigation";
import { type ComponentProps, createContext, type ReactNode, useContext } from "react";

/** What is not for somebody: addresses, with changing steps as [step], and deeds by their name. Nothing, unless the layout says so. */
export interface Closed {
  readonly addresses: readonly string[];
  readonly deeds: readonly string[];
  /** addresses that are closed where they name one of these records, in a step or behind the question mark */
  readonly named?: readonly Named[];
}

interface Named {
  readonly addresses: readonly string[];
  readonly ids: readonly string[];
}

const ClosedTo = createContext<Closed>({ addresses: [], deeds: [] });

/** Tells everything within what is not for the one who looks: ways and deeds that would be refused are not offered. */
export function Offering({ closed, children }: { closed: Closed; children: ReactNode }) {
  return <ClosedTo value={closed}>{children}</ClosedTo>;
}

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

/** What is not for the one who looks. */
export function useClosed(): Closed {
  return useContext(ClosedTo);
}

/** True where an address is not among the closed ones. */
export function isOffered(href: string, { addresses, named = [] }: Closed): boolean {
  const asked = steps(href);
  if (fits(asked, addresses)) return false;
  const words = [...asked, ...(href.split("?")[1] ?? "").split(/[=&,#]|%2C/)];
  return !named.some((each) => each.ids.some((id) => words.includes(id)) && fits(asked, each.addresses));
}

function fits(asked: readonly string[], addresses: readonly string[]): boolean {
  return addresses.some((address) => {
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

/** What is there only for who may do the deed; `otherwise` stands there for the others. */
export function Offered({
  deed,
  otherwise = null,
  children,
}: {
  deed: string;
  otherwise?: ReactNode;
  children: ReactNode;
}) {
  return useContext(ClosedTo).deeds.includes(deed) ? otherwise : children;
}
