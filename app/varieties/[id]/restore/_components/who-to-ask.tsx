import Link from "next/link";
import { Section } from "@/components/frame";
import { Measured } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { ButtonLink } from "@/components/ui";
import { percent, wholeNumber } from "@/lib/display/numbers";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { RestoreAdvice } from "@/lib/registry/varieties/restore-advice";

/** Which lot gives how much, in whose hands it is, and the ways on: to mix them, or to ask for them. */
export function WhoToAsk({
  advice: { parts },
  varietyId,
  units,
}: {
  advice: RestoreAdvice;
  varietyId: string;
  units: UnitSettings;
}) {
  const holders = new Set(parts.map(({ lot }) => lot.holder));
  const sum = parts.reduce((all, { seeds }) => all + seeds, 0);
  return (
    <Section id="ask" title={holders.size > 1 ? "Whom to ask, and for how much" : "What goes in"}>
      <div className="stack">
        <SimpleTable
          entries
          columns={[
            { key: "lot", name: "Lot" },
            { key: "holder", name: "Holder" },
            { key: "share", name: "Of the mix", kind: "count" },
            { key: "seeds", name: "Living seeds", kind: "count" },
            { key: "grams", name: "Weigh out", kind: "count" },
            { key: "left", name: "It can give", kind: "count" },
          ]}
          rows={parts.map(({ lot, share, seeds, grams }) => ({
            id: lot.id,
            cells: {
              lot: <Link href={`/lots/${lot.id}`}>{lot.number}</Link>,
              holder: lot.holder ?? "not written",
              share: percent(share, 0),
              seeds: lot.lifeAssumed ? <Measured value={wholeNumber(seeds)} grade="assumed" /> : wholeNumber(seeds),
              grams: grams === null ? "unknown" : weight(grams, units),
              left: `${wholeNumber(lot.canGive ?? 0)}${lot.keeps === "half" ? " (half of it)" : ""}`,
            },
          }))}
          foot={{ lot: "Together", share: "100 %", seeds: wholeNumber(sum) }}
        />
        <p className="row not-on-paper">
          <ButtonLink kind="chief" href={blendAddress(parts)}>
            Blend these lots
          </ButtonLink>
          <ButtonLink href={`/sharing/holders/${varietyId}`}>Ask their holders</ButtonLink>
        </p>
        <p className="quiet">
          Nothing is mixed or asked for yet: a blend is never parted again, and each holder decides.
        </p>
      </div>
    </Section>
  );
}

/** The page on which lots are blended, with these lots and their grams filled in. */
export function blendAddress(parts: RestoreAdvice["parts"]): string {
  const query = new URLSearchParams({ lots: parts.map(({ lot }) => lot.id).join(",") });
  query.set("grams", parts.map(({ grams }) => (grams === null ? "" : String(Number(grams.toPrecision(3))))).join(","));
  return `/lots/blend?${query.toString().replaceAll("%2C", ",")}`;
}
