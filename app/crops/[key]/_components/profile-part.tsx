import { Section } from "@/components/frame";
import { plainNumber } from "@/lib/display/numbers";
import type { CropFieldRead, CropRead } from "@/lib/registry/crops/read-crop";
import { dropOwnValue } from "../../_actions/own-value";
import { MarkedSource, ValuesWithOwn, ValueWithOwn } from "../../_parts/value-with-own";
import { cropFieldWords } from "../../_words/crop-words";

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
      <ValuesWithOwn>
        {fields.map((field) => (
          <ProfileField key={field.field} crop={crop} read={field} />
        ))}
      </ValuesWithOwn>
    </Section>
  );
}

function ProfileField({ crop, read }: { crop: CropRead; read: CropFieldRead }) {
  const { name, unit } = cropFieldWords[read.field];
  const shown = (value: string | number) =>
    typeof value === "number" ? `${plainNumber(value, 3)}${unit ? `\u00a0${unit}` : ""}` : value;
  return (
    <ValueWithOwn
      id={read.field}
      name={name}
      by="list"
      published={read.listed === null ? null : shown(read.listed)}
      own={read.own ? { ...read.own, value: shown(read.own.value) } : null}
      sources={read.sources.map((source) => (
        <MarkedSource
          key={`${source.code}:${source.detail ?? ""}`}
          words={`${source.citation}${source.detail ? ` (${source.detail})` : ""}`}
          mark={source.mark}
        />
      ))}
      href={`/crops/${encodeURIComponent(crop.key)}/own/${read.field}`}
      drop={dropOwnValue.bind(null, read.own?.id ?? "", crop.key)}
    />
  );
}
