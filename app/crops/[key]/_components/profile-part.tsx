import { Section } from "@/components/frame";
import { AskTwice } from "@/components/ui";
import { Offered, Way } from "@/components/ui/offered";
import { plainNumber } from "@/lib/display/numbers";
import type { CropFieldRead, CropRead } from "@/lib/registry/crops/read-crop";
import type { SourceMark, SourceOfValue } from "@/lib/registry/crops/source-marks";
import { dropOwnValue } from "../../_actions/own-value";
import { cropFieldWords } from "../../_words/crop-words";
import styles from "./profile-part.module.css";

/** A part of a profile: each field with its value, where it comes from, and the steward's own value with its reason. */
export function ProfilePart({
  crop,
  title,
  id,
  fields,
}: {
  crop: CropRead;
  title: string;
  id: string;
  fields: readonly CropFieldRead[];
}) {
  return (
    <Section id={id} title={title}>
      <dl className={styles.fields}>
        {fields.map((field) => (
          <ProfileField key={field.field} crop={crop} read={field} />
        ))}
      </dl>
    </Section>
  );
}

function ProfileField({ crop, read }: { crop: CropRead; read: CropFieldRead }) {
  const { name, unit } = cropFieldWords[read.field];
  const shown = (value: string | number) =>
    typeof value === "number" ? `${plainNumber(value, 3)}${unit ? `\u00a0${unit}` : ""}` : value;
  const listed = read.listed === null ? null : shown(read.listed);
  return (
    <div className={styles.field} id={read.field}>
      <dt>{name}</dt>
      <dd className={styles.value}>
        {read.own ? (
          <>
            <span>{shown(read.own.value)}</span>
            <span className={styles.own}>
              Your own value: <span className="told">{read.own.reason}</span>
              {read.own.source ? ` (${read.own.source})` : ""}. The list says {listed ?? "nothing"}.
            </span>
          </>
        ) : (
          <span>{listed ?? <span className="quiet">unknown</span>}</span>
        )}
      </dd>
      <dd className={styles.source}>{listed === null ? null : <Sources sources={read.sources} />}</dd>
      <dd className={styles.change}>
        <Way href={`/crops/${encodeURIComponent(crop.key)}/own/${read.field}`}>
          {read.own ? "Change it" : "Own value"}
          <span className="heard"> for {name}</span>
        </Way>
        {read.own ? (
          <Offered deed="settings">
            <AskTwice
              button="The list’s again"
              buttonKind="quiet"
              title={`Let the list’s value hold again for “${name}”?`}
              says={<p>The list says {listed ?? "nothing"}. Your own value stays in the history.</p>}
              confirm="Let the list’s value hold"
              kind="entry"
              action={dropOwnValue.bind(null, read.own.id, crop.key)}
            />
          </Offered>
        ) : null}
      </dd>
    </div>
  );
}

const marks: Readonly<Record<SourceMark, string>> = {
  verified: "read in its source",
  "second hand": "read second hand",
  "not verified": "not verified",
};

function Sources({ sources }: { sources: readonly SourceOfValue[] }) {
  return (
    <>
      {sources.map((source) => (
        <span key={`${source.code}:${source.detail ?? ""}`} className={styles.from} data-mark={source.mark}>
          {source.citation}
          {source.detail ? ` (${source.detail})` : ""}, <b>{marks[source.mark]}</b>
        </span>
      ))}
    </>
  );
}
