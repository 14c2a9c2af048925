import type { Metadata } from "next";
import Link from "next/link";
import { EmptyState } from "@/components/empty";
import { counted } from "@/lib/display/plurals";
import { find } from "@/lib/registry/search/find";
import { foundKinds } from "@/lib/registry/search/indexed-record";
import { current } from "../_session/current";
import { FoundList } from "./_components/found-list";
import { SearchBox } from "./_components/search-box";
import { foundLine, foundTitles } from "./_words/found-words";
import styles from "./search.module.css";

export const metadata: Metadata = { title: "Search" };

const most = 100;

export default async function Search({ searchParams }: { searchParams: Promise<{ q?: string; kind?: string }> }) {
  const { db } = await current();
  const { q = "", kind: asked } = await searchParams;
  const written = q.slice(0, 200);
  const kind = foundKinds.find((each) => each === asked);
  const answer = await find(db, written, most, kind);
  const lines = answer.found.map(foundLine);
  const href = (of?: string) => `/search?q=${encodeURIComponent(written)}${of ? `&kind=${of}` : ""}`;
  const shown = kind ? answer.counts[kind] : answer.total;
  return (
    <div className="sheet stack">
      <h1>Search everything</h1>
      <SearchBox key={written} written={written} />
      {written.trim() === "" ? (
        <EmptyState noun="search">
          Names and spellings, lot numbers, label codes, grow-outs, tests, stewards, stories and notes. The beginnings
          of words are enough, and a slip of the pen is forgiven.
        </EmptyState>
      ) : answer.total === 0 ? (
        <EmptyState noun="search">
          Nothing is written like “{written.trim()}”. Try fewer letters, or another name of it.
        </EmptyState>
      ) : (
        <>
          <nav className={`row ${styles.kinds}`} aria-label="Kinds of finds">
            <Link href={href()} aria-current={kind ? undefined : "page"}>
              Everything, {answer.total}
            </Link>
            {foundKinds
              .filter((each) => answer.counts[each] > 0)
              .map((each) => (
                <Link key={each} href={href(each)} aria-current={kind === each ? "page" : undefined}>
                  {foundTitles[each]}, {answer.counts[each]}
                </Link>
              ))}
          </nav>
          {lines.every((line) => line.meant) ? (
            <p role="status">Nothing is written just like “{written.trim()}”. These come near it.</p>
          ) : null}
          <FoundList lines={lines} />
          {lines.length < shown ? (
            <p className="quiet">
              The first {lines.length} of {counted(shown, "find")}; another word narrows them.
            </p>
          ) : null}
          <p className="counts not-on-paper">
            <a href={href(kind).replace("/search", "/search/csv")} download>
              {shown === 1 ? "The find" : "All finds"} as CSV
            </a>
          </p>
        </>
      )}
    </div>
  );
}
