"use client";

import { useId, useMemo } from "react";
import { Explained } from "@/components/numbers";
import { Button, NumberField } from "@/components/ui";
import { percent, seedsAbout, wholeNumber } from "@/lib/display/numbers";
import { listed } from "@/lib/display/plurals";
import { refusalSentence } from "@/lib/display/refusals";
import type { BlendGround } from "@/lib/registry/lots/read-blend-ground";
import { decimal } from "@/lib/schemas/lots/form-fields";
import type { ActFormParts } from "../../_form/act-form";
import { amountsFor, mostLivingSeeds, type WantedShare } from "../_mix/fill-amounts";
import { adviceFor, advisable, isForeign, keptOfMix, standingOfMix } from "../_mix/kept-of-mix";
import { livingOf, type PartOfForm, type ReadingOfForm, type Texts } from "../_mix/mix-of-form";
import { adviceExplanation } from "../_words/explain-mix";
import type { AboutBlend } from "./blending";
import styles from "./blending.module.css";

const smallestShares = [0, 0.05, 0.1, 0.2] as const;
const usualSmallestShare = 0.1;

/** Ways to fill in the amounts: the same number of living seeds of each, or the mix that keeps most. */
export function Advice({
  form,
  ground,
  about,
  reading,
  parts,
}: {
  form: ActFormParts;
  ground: BlendGround;
  about: AboutBlend;
  reading: ReadingOfForm;
  parts: readonly PartOfForm[];
}) {
  const equal = parts.flatMap(({ lot, living }) => (living ? [{ lot, living, share: 1 / parts.length }] : []));
  const whole = equal.length === parts.length && parts.length >= 2;
  const half = whole ? mostLivingSeeds(equal, 0.5) : null;
  const most = whole ? mostLivingSeeds(equal, 1) : null;
  const asked = askedFor(form.values);
  const seeds = asked ?? half;
  return (
    <>
      <div className={styles.advice}>
        <div className={styles.fills}>
          <NumberField
            {...form.field("total")}
            label="Living seeds of the mix"
            hint={
              half === null || most === null
                ? "left empty, half of the jar that is used up first is taken"
                : `${wholeNumber(Math.floor(half))} leave half of every jar at least, ${wholeNumber(Math.floor(most))} are the most in equal parts`
            }
            whole
          />
          <Button
            disabled={!whole || seeds === null}
            onClick={() => seeds !== null && form.fill(amountsFor(equal, seeds, reading.units))}
          >
            Equal living seeds of each
          </Button>
        </div>
      </div>
      <Best form={form} ground={ground} about={about} reading={reading} asked={asked} />
    </>
  );
}

/** "lot Ham 3 (36 % of the living seeds)", "lot Ham 9 (64 %)" */
function inShares(
  { lot, share }: { readonly lot: { readonly number: string }; readonly share: number },
  place: number,
): string {
  return `lot ${lot.number} (${percent(share, 0)}${place === 0 ? " of the living seeds" : ""})`;
}

/** How many living seeds the mix is to hold, where a person says so. */
function askedFor(values: Texts): number | null {
  const read = decimal({ above: 0 })(values.total ?? "");
  return read.ok ? read.value : null;
}

function Best({
  form,
  ground,
  about,
  reading,
  asked,
}: {
  form: ActFormParts;
  ground: BlendGround;
  about: AboutBlend;
  reading: ReadingOfForm;
  asked: number | null;
}) {
  const { field, values } = form;
  const foreignToo = values.foreignToo === "yes";
  const minShare = smallestShares.find((share) => String(share) === values.minShare) ?? usualSmallestShare;
  const id = useId();
  const among = useMemo(() => advisable(ground.lots, foreignToo), [ground, foreignToo]);
  const advice = useMemo(() => adviceFor(ground, among, minShare), [ground, among, minShare]);
  const foreign = useMemo(() => advisable(ground.lots, true).filter(isForeign).length, [ground]);
  const standing = standingOfMix(ground, among, about.matingSystem);
  if ((advice === null && foreign === 0) || (among.length > 0 && standing !== "counted")) return null;
  const foreignTick =
    foreign > 0 ? (
      <label className={styles.quick}>
        <input type="checkbox" name="foreignToo" value="yes" defaultChecked={field("foreignToo").value === "yes"} />
        also {foreign === 1 ? "a lot" : `${foreign} lots`} with foreign pollen, which only seems to add
      </label>
    ) : null;
  if (advice === null)
    return (
      <div className={styles.advice}>
        <h3>The mix that keeps most</h3>
        <p>
          Nothing to choose among: fewer than two lots are tested, weighed, free of foreign pollen and not set aside.
        </p>
        {foreignTick}
      </div>
    );
  const chosen = advice.ok ? advice.value : [];
  const wanted: WantedShare[] = chosen.flatMap(({ lot, share }) => {
    const living = livingOf(lot, {}, reading);
    return living ? [{ lot, living, share }] : [];
  });
  const seeds = asked ?? mostLivingSeeds(wanted, 0.5);
  const shareOf = new Map(chosen.map(({ lot, share }) => [lot.id, share]));
  const kept = keptOfMix(
    ground,
    (lot) => shareOf.get(lot.id) ?? 0,
    chosen.some(({ lot }) => isForeign(lot)),
  );
  const take = () => {
    if (seeds === null) return;
    const cleared = Object.fromEntries(
      ground.lots.flatMap((lot) => [
        [`in.${lot.id}`, ""],
        [`amount.${lot.id}`, ""],
      ]),
    );
    form.fill({ ...cleared, ...amountsFor(wanted, seeds, reading.units) });
  };
  return (
    <div className={styles.advice}>
      <h3>The mix that keeps most</h3>
      {!advice.ok ? (
        <p>{advice.refusals.map(refusalSentence).join(" ")}</p>
      ) : chosen.length === 1 ? (
        <p>
          None: lot {chosen[0]?.lot.number} alone holds {percent(kept?.share ?? null, 1)}, and no other lot adds to it.
        </p>
      ) : (
        <p>
          A mix of {listed(chosen.map(inShares))} would hold {percent(kept?.share ?? null, 1)}
          {seeds === null
            ? ""
            : `; ${seedsAbout(seeds)} living can be had${asked === null ? " with half of each jar left" : ""}`}
          . It looks at kinship alone, not at vigour, age or trueness to type
          {foreignToo ? "; foreign pollen makes kin look strange" : ""}.
        </p>
      )}
      {advice.ok ? (
        <Explained explanation={adviceExplanation(ground, { chosen, among, minShare, kept })}>
          <span>
            {percent(kept?.share ?? null, 1)} of {kept?.native ? "the variety’s own" : "the founders’"} diversity
          </span>
        </Explained>
      ) : null}
      <div className={styles.fills}>
        {chosen.length > 1 ? (
          <Button disabled={seeds === null} onClick={take}>
            Take these lots and amounts
          </Button>
        ) : null}
        <label htmlFor={id} className={styles.quick}>
          Smallest share of a lot
          <select id={id} name="minShare" defaultValue={field("minShare").value || usualSmallestShare}>
            {smallestShares.map((share) => (
              <option key={share} value={share}>
                {share === 0 ? "none" : percent(share, 0)}
              </option>
            ))}
          </select>
        </label>
        {foreignTick}
      </div>
    </div>
  );
}
