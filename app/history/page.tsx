import type { Metadata } from "next";
import { EmptyState } from "@/components/empty";
import { PageHead, Parts } from "@/components/frame";
import { Icon } from "@/components/icons/icon";
import { Figure } from "@/components/numbers";
import { Notice } from "@/components/ui";
import { counted } from "@/lib/display/plurals";
import { historyPart, listChangeSets } from "@/lib/registry/history/list-change-sets";
import { current } from "../_session/current";
import { HistoryFilterForm } from "./_components/history-filter-form";
import { HistoryList } from "./_components/history-list";
import { historyHref, readHistoryAddress } from "./_words/history-filter";

export const metadata: Metadata = { title: "History" };

type Parameters = Promise<Record<string, string | string[] | undefined>>;

export default async function History({ searchParams }: { searchParams: Parameters }) {
  const { db } = await current("history");
  const parameters = await searchParams;
  const { filter, part } = readHistoryAddress(parameters);
  const { sets, total } = await listChangeSets(db, filter, part - 1);
  const parts = Math.ceil(total / historyPart);
  return (
    <div className="sheet stack">
      <PageHead
        title="History"
        mark={<Icon name="ledger" size={32} />}
        figure={
          <Figure value={counted(total, "change")}>
            {total === 1 ? "stands" : "stand"} here, with who wrote what and when. Nothing that was written is lost: an
            entry can be taken back, and the taking back stands here too.
          </Figure>
        }
      />
      {parameters.undone ? <Notice title="Taken back">Everything stands as it did before that change.</Notice> : null}
      <div className="row">
        <HistoryFilterForm filter={filter} />
        <a href={historyHref("/history/csv", filter)} download className="not-on-paper">
          As CSV
        </a>
      </div>
      {sets.length === 0 ? (
        <EmptyState noun="history">
          {Object.values(filter).some(Boolean) ? "No change fits what you look for." : "Nothing was written yet."}
        </EmptyState>
      ) : (
        <HistoryList sets={sets} />
      )}
      <Parts
        part={part}
        parts={parts}
        of="the history"
        href={(each) => historyHref("/history", filter, each)}
        words={{ before: "Later changes", next: "Earlier changes" }}
      />
    </div>
  );
}
