"use client";

import Link from "next/link";
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

/** What is closed around something. */
export const ClosedTo = createContext<Closed>({ addresses: [], deeds: [] });

/** Tells everything within what is not for the one who looks: ways and deeds that would be refused are not offered. */
export function Offering({ closed, children }: { closed: Closed; children: ReactNode }) {
  return <ClosedTo value={closed}>{children}</ClosedTo>;
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
