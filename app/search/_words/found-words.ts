import type { Found } from "@/lib/registry/search/find";
import type { FoundKind } from "@/lib/registry/search/indexed-record";

/** The kinds of record, as a list of finds is headed. */
export const foundTitles: Readonly<Record<FoundKind, string>> = {
  variety: "Varieties",
  lot: "Lots",
  "grow-out": "Grow-outs",
  test: "Tests",
  steward: "Stewards",
  story: "Stories",
  note: "Notes",
};

/** One find as a line: where it leads, what it is, and in which words it was found. */
export interface FoundLine {
  readonly key: string;
  readonly href: string;
  readonly title: string;
  readonly kind: FoundKind;
  /** "Pea", "of Hollow Pea" */
  readonly of: string | null;
  /** "another name: Cottager's Grey" */
  readonly found: string | null;
  readonly meant: boolean;
}

const pages: Readonly<Record<Found["page"]["kind"], (id: string) => string>> = {
  variety: (id) => `/varieties/${id}`,
  lot: (id) => `/lots/${id}`,
  "grow-out": (id) => `/grow-outs/${id}`,
  test: (id) => `/tests/${id}`,
  steward: (id) => `/stewards/${id}/correct`,
};

/** A find as a page or the quick answer shows it. */
export function foundLine({ kind, id, title, of, page, as, excerpt, meant }: Found): FoundLine {
  const belongs = kind === "lot" || kind === "grow-out" ? `of ${of}` : kind === "test" ? `of lot ${of}` : of;
  const about =
    kind === "story" || kind === "note" ? `about ${of === "ledger" ? "its ledger" : (of ?? "it")}` : belongs;
  return {
    key: `${kind}:${page.id}:${id}`,
    href: pages[page.kind](page.id),
    title,
    kind,
    of: about,
    found: as === null ? null : excerpt === null ? as : `${as}: ${excerpt}`,
    meant,
  };
}
