import type { Metadata } from "next";
import { cookies } from "next/headers";
import { PageHead, Section } from "@/components/frame";
import { Icon } from "@/components/icons/icon";
import { Figure } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { Notice } from "@/components/ui";
import { bytesInWords } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { ownRegistry } from "@/lib/registry/open-registry";
import { type Health, readHealth } from "@/lib/registry/safe-keeping/health";
import { current } from "../_session/current";
import { zoneCookie } from "../_session/zone-cookie";
import { backUpNow } from "./_actions/back-up-now";
import { BackUpButton } from "./_components/back-up-button";
import { keptInWords, momentInWords, spaceOf, whatToDo } from "./_words/health-words";

export const metadata: Metadata = { title: "Safe keeping" };

export default async function SafeKeeping({ searchParams }: { searchParams: Promise<{ made?: string }> }) {
  await current("backup");
  const zone = (await cookies()).get(zoneCookie)?.value;
  const now = new Date();
  const health = await readHealth(await ownRegistry(), now);
  const { made } = await searchParams;
  const todo = whatToDo(health, zone, now);
  const words = (at: string) => momentInWords(at, zone, now);
  return (
    <div className="sheet stack">
      <PageHead
        title="Safe keeping"
        kind="Registry"
        mark={<Icon name="jar" size={32} />}
        figure={<LastBackup health={health} words={words} />}
        actions={
          <form action={backUpNow}>
            <BackUpButton />
          </form>
        }
      />
      {made ? <Notice title="Made">The backup stands below, checked.</Notice> : null}
      <Section id="to-do" title="What to do now">
        {todo.length === 0 ? <p className="measure">Nothing. The registry is well kept.</p> : null}
        <ul className="stack-near">
          {todo.map(({ id, words: sentence }) => (
            <li key={id} className="measure">
              {sentence}
            </li>
          ))}
        </ul>
      </Section>
      <Section
        id="backups"
        title="Backups"
        aside={health.backups.length > 0 ? counted(health.backups.length, "backup") : undefined}
      >
        <p className="measure">
          One is made each day while Kinrow runs, and made up for when the machine was off. The last seven days stay,
          the last twelve months, every year, and the last seven that were made by hand. Each holds the whole registry
          with its history, every record as plain spreadsheet files, and the photos; not the demonstration, nor the keys
          by which devices know this machine.
        </p>
        {health.backups.length > 0 ? <Backups health={health} words={words} /> : null}
        <p className="measure">
          To bring one back, end Kinrow and run <code>npm run restore -- NAME</code>. It is checked first, and what
          stands here now is kept aside. They lie in <span className="counts">{health.backupsFolder}</span>.
        </p>
      </Section>
      <Section id="state" title="Space, check and version">
        <dl className="stack-near">
          <div>
            <dt>Space</dt>
            <dd className="counts">{spaceOf(health)}</dd>
          </div>
          <div>
            <dt>Last check</dt>
            <dd>
              {health.verified
                ? `${words(health.verified.at)}: ${health.verified.faults === 0 ? "sound" : counted(health.verified.faults, "fault")}`
                : "none yet; each backup is checked"}
            </dd>
          </div>
          <div>
            <dt>Version</dt>
            <dd className="counts">
              {health.release}, {health.engine === "sqlite" ? "one file" : "PostgreSQL"}
            </dd>
          </div>
        </dl>
      </Section>
    </div>
  );
}

function LastBackup({ health, words }: { health: Health; words: (at: string) => string }) {
  const { newest, nextAt, concerns } = health;
  const late = concerns.includes("backup-old") || concerns.includes("backup-failed");
  if (!newest)
    return (
      <Figure value="No backup yet" waiting={late}>
        The next is due {words(nextAt)}.
      </Figure>
    );
  return (
    <Figure value={sentenceCase(words(newest.at))} waiting={late}>
      the last backup was made{newest.sound ? ", and found sound" : ", and what it holds contradicts itself"}. The next
      is due {words(nextAt)}.
    </Figure>
  );
}

function sentenceCase(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}

function Backups({ health, words }: { health: Health; words: (at: string) => string }) {
  return (
    <SimpleTable
      entries
      columns={[
        { key: "at", name: "made" },
        { key: "name", name: "name" },
        { key: "kept", name: "stays as" },
        { key: "sound", name: "check" },
        { key: "size", name: "size", kind: "count" },
      ]}
      rows={health.backups.map((backup) => ({
        id: backup.name,
        cells: {
          at: sentenceCase(words(backup.at)),
          name: <span className="counts">{backup.name}</span>,
          kept: keptInWords(backup.keptAs),
          sound: backup.sound ? "sound" : "faults",
          size: bytesInWords(backup.bytes),
        },
      }))}
    />
  );
}
