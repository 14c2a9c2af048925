import { Jar } from "@/components/jar";
import { Notice, TextField } from "@/components/ui";
import { type UnitSettings, weight } from "@/lib/display/units";
import { tolerableDebtGrams } from "@/lib/registry/ledger/balance";
import type { SeedCount } from "@/lib/registry/lots/live-seeds";
import { afterGiving, type JarBefore } from "@/lib/registry/transfers/after-giving";
import type { GivingRule } from "@/lib/registry/transfers/giving-rules";
import type { FieldOf } from "../../_form/lot-form";
import { seedsInJar, seedsInWords } from "../../_words/seeds-in-words";
import styles from "./give.module.css";
import type { GivingTyped } from "./giving-typed";

/** The jar as it will be once the seed is out of it, and every rule that stands against that. */
export function WhatStays({
  jar,
  reserved,
  until,
  giving,
  rules,
  units,
  field,
}: {
  jar: JarBefore;
  reserved: number | null;
  until: string | null;
  giving: GivingTyped;
  rules: readonly GivingRule[];
  units: UnitSettings;
  field: FieldOf;
}) {
  const leaves = giving.staysWithHolder ? 0 : (giving.grams ?? 0);
  const after = afterGiving(jar, leaves);
  const typed = giving.grams !== null && !giving.staysWithHolder;
  return (
    <section className={styles.stays} aria-label="What stays in the jar">
      <div className={styles.jar}>
        <Jar
          grams={after.grams}
          seeds={seedsInJar(after.seeds)}
          alive={seedsInJar(after.live)}
          reserved={reserved}
          free={seedsInJar(after.free)}
          until={until}
        />
      </div>
      <div className={styles.says}>
        <p role="status">{staysSentence(jar, after.grams, after.seeds, typed, leaves, units)}</p>
        {giving.staysWithHolder ? (
          <p>It stays in this lot and in its ledger; a container says where it stands.</p>
        ) : null}
        <Against rules={rules} field={field} />
      </div>
    </section>
  );
}

function staysSentence(
  jar: JarBefore,
  grams: number | null,
  seeds: SeedCount | null,
  typed: boolean,
  taken: number,
  units: UnitSettings,
): string {
  if (jar.grams === null)
    return "How much is in the jar is not known: weigh it and write that into the ledger first, then see what stays.";
  if (jar.grams <= 0) return "By its ledger nothing is in the jar.";
  if (!typed) return `${weight(jar.grams, units)} are in the jar: ${seedsInWords(jar.seeds)}.`;
  if (taken > jar.grams + tolerableDebtGrams)
    return `That is more than the jar holds: ${weight(jar.grams, units)}. Weigh it in first, or give less.`;
  if (grams === 0) return "Nothing stays in the jar.";
  return `${weight(grams, units)} stay: ${seedsInWords(seeds)}.`;
}

/** Rules that a reason may overrule ask for it; the others are only said. */
function Against({ rules, field }: { rules: readonly GivingRule[]; field: FieldOf }) {
  if (rules.length === 0) return null;
  const never = rules.filter((rule) => !rule.overridable);
  return (
    <Notice kind="waiting" title={never.length > 0 ? "It is not given" : "Stop: a rule stands against it"}>
      <ul className={styles.rules}>
        {(never.length > 0 ? never : rules).map((rule) => (
          <li key={rule.code}>{sentence(rule.words)}</li>
        ))}
      </ul>
      {never.length > 0 ? (
        <p>No reason overrules this. If the record is wrong, put the lot right first.</p>
      ) : (
        <TextField
          {...field("override")}
          label="Why it is given all the same"
          hint="kept with the hand-over, for whoever asks later"
          lines={2}
          required
        />
      )}
    </Notice>
  );
}

function sentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}
