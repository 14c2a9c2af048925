import type { Metadata } from "next";
import { cookies } from "next/headers";
import Link from "next/link";
import { EmptyState } from "@/components/empty";
import { PageHead, Parts, Section } from "@/components/frame";
import { Icon } from "@/components/icons/icon";
import { Figure } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { ButtonLink } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { counted } from "@/lib/display/plurals";
import { readCameHome } from "@/lib/registry/field/read-came-home";
import { sentRecord } from "@/lib/registry/field/stored-record";
import { current } from "../../_session/current";
import { zoneCookie } from "../../_session/zone-cookie";
import { momentInWords } from "../../safe-keeping/_words/health-words";
import { clockInWords, recordedInWords, saidInWords, standWords } from "../_words/sent-words";

export const metadata: Metadata = { title: "What came home" };

const shownAtOnce = 100;

/** What phones brought home from the field, and what of it a person has to settle. */
export default async function CameHome({
  searchParams,
}: {
  searchParams: Promise<{ growOut?: string; phone?: string; part?: string }>;
}) {
  const { db } = await current("record-in-field");
  const { growOut, phone, part: asked } = await searchParams;
  const part = /^\d{1,5}$/.test(asked ?? "") ? Math.max(1, Number(asked)) : 1;
  const read = await readCameHome(db, {
    growOutId: growOut ?? null,
    deviceId: phone ?? null,
    from: (part - 1) * shownAtOnce,
    most: shownAtOnce,
  });
  const zone = (await cookies()).get(zoneCookie)?.value;
  const now = new Date();
  const href = (to: { phone?: string; part?: number }) => {
    const query = new URLSearchParams();
    if (growOut) query.set("growOut", growOut);
    if (to.phone) query.set("phone", to.phone);
    if (to.part && to.part > 1) query.set("part", String(to.part));
    const text = query.toString();
    return text === "" ? "/field/came-home" : `/field/came-home?${text}`;
  };
  const only = read.records.find(({ growOutId }) => growOutId === growOut)?.growOut;
  return (
    <div className="sheet stack">
      <PageHead
        title={growOut && only ? `What came home of ${only}` : "What came home"}
        kind={growOut && only ? <Link href={`/grow-outs/${growOut}`}>Grow-out {only}</Link> : "From the field"}
        mark={<Icon name="page-in" size={32} />}
        figure={
          <Figure
            value={read.askedInAll === 0 ? "Nothing waits" : counted(read.askedInAll, "question")}
            waiting={read.askedInAll > 0}
          >
            {read.askedInAll === 0
              ? "for a person: what phones recorded stands in the registry, or waits for what has not come yet."
              : "from the field for a person to settle. Nothing that was recorded is lost meanwhile."}
          </Figure>
        }
        actions={<ButtonLink href="/field/file">Bring a phone’s file in</ButtonLink>}
      />
      {read.recordsInAll === 0 && read.askedInAll === 0 ? (
        <EmptyState noun="season">
          No phone has brought anything home yet. What is recorded in the field comes in by itself as soon as the phone
          reaches the registry.
        </EmptyState>
      ) : null}
      {read.asked.length > 0 ? (
        <Section id="questions" title="Waits for a person" aside={counted(read.askedInAll, "question")}>
          <ul className="stack-near">
            {read.asked.map(({ id, sentence, fieldRecordId, ofPlants }) => (
              <li key={id} className="measure">
                {sentence} {fieldRecordId ? <Way href={`/field/came-home/${fieldRecordId}`}>Settle it</Way> : null}
                {ofPlants ? <Way href={`/field/same-plant/${id}`}>One plant, or two</Way> : null}
              </li>
            ))}
          </ul>
        </Section>
      ) : null}
      {read.asOne.length > 0 ? (
        <Section id="as-one" title="Read as one plant" aside={counted(read.asOne.length, "pair")}>
          <ul className="stack-near">
            {read.asOne.map(({ questionId, lead, other, growOut: of }) => (
              <li key={questionId}>
                Plants {lead} and {other}
                {growOut ? "" : ` of ${of}`}. <Way href={`/field/same-plant/${questionId}`}>Look at both</Way>
              </li>
            ))}
          </ul>
        </Section>
      ) : null}
      {read.phones.length > 0 ? (
        <Section id="phones" title="Phones">
          <SimpleTable
            entries
            columns={[
              { key: "phone", name: "Phone" },
              { key: "heard", name: "Last heard" },
              { key: "records", name: "Records", kind: "count" },
              { key: "taken", name: "In the registry", kind: "count" },
              { key: "waiting", name: "Waiting", kind: "count" },
              { key: "questions", name: "Questions", kind: "count" },
              { key: "aside", name: "Set aside", kind: "count" },
              { key: "clock", name: "Its clock" },
            ]}
            rows={read.phones.map((each) => ({
              id: each.id,
              cells: {
                phone: <Link href={href({ phone: each.id })}>{each.name}</Link>,
                heard: momentInWords(each.lastHeardAt, zone, now),
                records: each.records,
                taken: each.taken,
                waiting: each.waiting,
                questions: each.questions,
                aside: each.setAside,
                clock: clockInWords(each.clockAhead) ?? "about right",
              },
            }))}
          />
        </Section>
      ) : null}
      {read.records.length > 0 ? (
        <Section id="records" title="Records" aside={counted(read.recordsInAll, "record")}>
          {phone ? (
            <p className="not-on-paper">
              Of one phone alone. <Link href={href({})}>Show those of all</Link>
            </p>
          ) : null}
          <SimpleTable
            entries
            columns={[
              { key: "what", name: "What" },
              ...(growOut ? [] : [{ key: "growOut", name: "Grow-out" }]),
              { key: "recorded", name: "Recorded, by the phone’s clock" },
              { key: "arrived", name: "Arrived" },
              { key: "phone", name: "Phone, and whose hand" },
              { key: "stand", name: "What became of it" },
            ]}
            rows={read.records.map((row) => ({
              id: row.id,
              cells: {
                what: <Way href={`/field/came-home/${row.id}`}>{saidInWords(sentRecord(row))}</Way>,
                growOut: row.growOut ?? "",
                recorded: recordedInWords(row.recordedAt, row.recordedOffset),
                arrived: momentInWords(row.arrivedAt, zone, now),
                phone:
                  row.by === null
                    ? `${row.phone}, no. ${row.sequence}`
                    : `${row.phone}, no. ${row.sequence}; ${row.by}`,
                stand: row.stand === "waiting" && row.reasons[0] ? `waits: ${row.reasons[0]}` : standWords[row.stand],
              },
            }))}
          />
          <Parts
            part={part}
            parts={Math.ceil(read.recordsInAll / shownAtOnce)}
            of="the records"
            href={(each) => href({ ...(phone ? { phone } : {}), part: each })}
            words={{ before: "Later ones", next: "Earlier ones" }}
          />
        </Section>
      ) : null}
    </div>
  );
}
