import type { Metadata } from "next";
import { EmptyState } from "@/components/empty";
import { PageHead, Section } from "@/components/frame";
import { Icon } from "@/components/icons/icon";
import { ButtonLink } from "@/components/ui";
import { roleMay } from "@/lib/access/permissions";
import { dayInWords } from "@/lib/display/dates";
import { counted } from "@/lib/display/plurals";
import { seasonProgress } from "@/lib/registry/season/progress";
import { readSeasonRecords } from "@/lib/registry/season/read-season-records";
import { seasonRuleNames, waitingItems } from "@/lib/registry/season/waiting";
import { current } from "../_session/current";
import { OneProgress, OneRule } from "./_components/one-part";
import { ProgressBars } from "./_components/progress-bars";
import { SafeKeepingLine } from "./_components/safe-keeping-line";
import { SeasonFigure } from "./_components/season-figure";
import { SeasonStrip } from "./_components/season-strip";
import { WaitingGroup } from "./_components/waiting-group";
import { countsByPlace, seasonGroups, seasonPlaces } from "./_words/groups";
import styles from "./season.module.css";

export const metadata: Metadata = { title: "Season" };

const shownAtFirst = 5;

export default async function Season({
  searchParams,
}: {
  searchParams: Promise<{ rule?: string; steward?: string; left?: string; only?: string; part?: string }>;
}) {
  const { db, actor, demonstration, settings, today } = await current();
  const records = await readSeasonRecords(db, settings, today);
  const { rule: askedRule, steward, left, only, part } = await searchParams;
  const items = waitingItems(records);
  const rule = seasonRuleNames.find((name) => name === askedRule);
  if (rule) return <OneRule rule={rule} items={items} records={records} steward={steward} part={part} />;
  const progress = seasonProgress(records);
  const one = progress.find((each) => each.key === left);
  if (one) return <OneProgress progress={one} late={only === "overdue"} records={records} part={part} />;
  if (records.varieties.size === 0) {
    return (
      <div className="sheet">
        <h1 className="heard">Season</h1>
        <EmptyState
          noun="season"
          action={
            <ButtonLink href="/" kind="chief">
              Begin
            </ButtonLink>
          }
        >
          Nothing waits, for nothing is on record yet. Bring in a notebook or type one variety in, and the year stands
          here.
        </EmptyState>
      </div>
    );
  }
  const groups = seasonGroups(items, records, shownAtFirst);
  const counts = countsByPlace(groups);
  return (
    <div className="sheet stack">
      <PageHead
        title={dayInWords(today)}
        kind="Season"
        mark={<Icon name="calendar" size={32} />}
        figure={<SeasonFigure groups={groups} />}
      />
      {!demonstration && roleMay(actor.role, "backup") ? <SafeKeepingLine /> : null}
      <SeasonStrip today={today} hemisphere={settings.hemisphere} waiting={counts} />
      <div className="beside">
        <div className={styles.places}>
          {seasonPlaces.map(({ place, title, rest }) => (
            <Section
              key={place}
              id={place}
              title={title}
              aside={counts[place] > 0 ? counted(counts[place], "thing") : undefined}
            >
              {counts[place] === 0 ? <p className="quiet">{rest}</p> : null}
              {groups
                .filter((group) => group.place === place)
                .map((group) => (
                  <WaitingGroup
                    key={group.rule}
                    rule={group.rule}
                    lines={group.lines}
                    settings={settings}
                    count={group.count}
                    urgent={group.urgent > 0}
                  />
                ))}
            </Section>
          ))}
        </div>
        <div className="stack">
          <Section id="progress" title="How far it has come">
            <ProgressBars progress={progress} />
          </Section>
          {items.length > 0 ? (
            <p className="counts not-on-paper">
              <a href="/season/csv" download>
                All that waits, as CSV
              </a>
            </p>
          ) : null}
        </div>
      </div>
    </div>
  );
}
