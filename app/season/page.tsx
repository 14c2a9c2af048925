import type { Metadata } from "next";
import Link from "next/link";
import { EmptyState } from "@/components/empty";
import { PageHead, Section } from "@/components/frame";
import { Figure } from "@/components/numbers";
import { ButtonLink } from "@/components/ui";
import { dayInWords } from "@/lib/display/dates";
import { counted } from "@/lib/display/plurals";
import { grouped } from "@/lib/registry/change-set/grouped";
import { seasonProgress } from "@/lib/registry/season/progress";
import { readSeasonRecords } from "@/lib/registry/season/read-season-records";
import type { SeasonPlace, SeasonRecords } from "@/lib/registry/season/records";
import { byPlace, seasonRuleNames, type Waiting, waitingItems } from "@/lib/registry/season/waiting";
import { current } from "../_session/current";
import { LeftOver } from "./_components/left-over";
import { ProgressBars } from "./_components/progress-bars";
import { SeasonStrip } from "./_components/season-strip";
import { WaitingGroup } from "./_components/waiting-group";
import { progressWords } from "./_words/progress-words";

export const metadata: Metadata = { title: "Season" };

const shownAtFirst = 5;

export default async function Season({
  searchParams,
}: {
  searchParams: Promise<{ rule?: string; left?: string; only?: string }>;
}) {
  const { db, settings, today } = await current();
  const records = await readSeasonRecords(db, settings, today);
  const { rule: askedRule, left, only } = await searchParams;
  const items = waitingItems(records);
  const rule = seasonRuleNames.find((name) => name === askedRule);
  if (rule) return <OneRule rule={rule} items={items} records={records} />;
  const progress = seasonProgress(records);
  const one = progress.find((each) => each.key === left);
  if (one) {
    const words = progressWords(one);
    const late = only === "overdue";
    return (
      <div className="sheet stack">
        <PageHead
          title={late ? `${counted(one.overdue.length, "lot")} overdue` : words.left}
          kind={<Link href="/season">Season</Link>}
        >
          <p>{words.sentence}.</p>
        </PageHead>
        <LeftOver ids={late ? one.overdue : one.left} records={records} />
      </div>
    );
  }
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
  const places = byPlace(items);
  const urgent = items.filter((item) => item.urgency === 0).length;
  return (
    <div className="sheet stack">
      <PageHead
        title={dayInWords(today)}
        kind="Season"
        figure={
          <Figure value={counted(items.length, "thing")} waiting={urgent > 0}>
            {items.length === 0
              ? "waits for a hand. Enjoy the day."
              : `${items.length === 1 ? "waits" : "wait"} for a hand.${urgent > 0 ? ` ${urgent} of them cannot wait long.` : ""}`}
          </Figure>
        }
      />
      <SeasonStrip
        today={today}
        hemisphere={settings.hemisphere}
        waiting={{ desk: places.desk.length, shed: places.shed.length, field: places.field.length }}
      />
      <div className="beside">
        <div>
          {orderOfPlaces.map(({ place, title, rest }) => (
            <PlaceSection key={place} place={place} title={title} rest={rest} items={places[place]} records={records} />
          ))}
        </div>
        <Section id="progress" title="How far it has come">
          <ProgressBars progress={progress} />
        </Section>
      </div>
    </div>
  );
}

const orderOfPlaces: readonly { place: SeasonPlace; title: string; rest: string }[] = [
  { place: "field", title: "Field", rest: "Nothing has to be grown out." },
  { place: "shed", title: "Shed", rest: "No jar and no test waits." },
  { place: "desk", title: "Desk", rest: "Nobody waits for a letter." },
];

function PlaceSection({
  place,
  title,
  rest,
  items,
  records,
}: {
  place: SeasonPlace;
  title: string;
  rest: string;
  items: readonly Waiting[];
  records: SeasonRecords;
}) {
  return (
    <Section id={place} title={title} aside={items.length > 0 ? counted(items.length, "thing") : undefined}>
      {items.length === 0 ? <p className="quiet">{rest}</p> : null}
      {[...grouped(items, (item) => item.rule)].map(([rule, own]) => (
        <WaitingGroup key={rule} rule={rule} items={own} records={records} most={shownAtFirst} />
      ))}
    </Section>
  );
}

function OneRule({
  rule,
  items,
  records,
}: {
  rule: Waiting["rule"];
  items: readonly Waiting[];
  records: SeasonRecords;
}) {
  const own = items.filter((item) => item.rule === rule);
  return (
    <div className="sheet stack">
      <PageHead title={counted(own.length, "thing")} kind={<Link href="/season">Season</Link>} />
      <WaitingGroup rule={rule} items={own} records={records} most={null} />
    </div>
  );
}
