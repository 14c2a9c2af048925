"use client";

import { type ReactNode, useEffect, useRef, useState } from "react";
import { Choice, DateField, NumberField, TextField } from "@/components/ui";
import { Refusals } from "@/components/ui/field";
import type { UnitSettings } from "@/lib/display/units";
import { evennessOf } from "@/lib/registry/harvests/evenness-of-harvest";
import type { PlantForHarvest } from "@/lib/registry/harvests/read-harvests";
import type { PlotOfHarvest } from "@/lib/registry/harvests/size-of-harvest";
import { mostParentsInForm } from "@/lib/schemas/harvests/harvest-entry";
import { textsOf } from "../../lots/_form/form-answer";
import { FieldGroup, Seldom, SideBySide } from "../../lots/_form/lot-form";
import type { FieldOf } from "../../lots/_form/use-form-answer";
import { EqualTakings, EvennessView } from "./evenness-view";
import { bulkedOptions, eachOptions, toldOptions } from "./harvest-choices";
import { type SeedRow, SeedRows } from "./seed-rows";
import { TakeSome } from "./take-some";
import { type LiveHarvest, liveHarvest, type Texts } from "./typed-harvest";

/** What the form of a harvest knows of its grow-out. */
export interface HarvestGround {
  readonly plot: PlotOfHarvest;
  readonly plants: readonly PlantForHarvest[];
  /** tassels can be taken: male and female flowers on one plant, apart */
  readonly tassels: boolean;
  readonly units: UnitSettings;
}

/** The steps of a harvest, one idea each; what it makes of the seed is worked out as it is typed. */
export function HarvestFields({
  field,
  ground,
  start,
  children,
}: {
  field: FieldOf;
  ground: HarvestGround;
  /** what stands in the form before anything is typed */
  start: Texts;
  /** the last step: the lot, or the reason of a correction */
  children: ReactNode;
}) {
  const { box, typed } = useTexts(start);
  const { plants, units } = ground;
  const of = typed.told === "plants" ? "plants" : "bags";
  const live = liveHarvest(typed, units);
  const weightUnit = units.weight;
  const unit = typed.each === "seeds" ? "seeds" : weightUnit;
  const measured = typed.each !== "nothing";
  const bags = bagRows(typed, live);
  return (
    <div ref={box} className="stack">
      <FieldGroup title="1. Which plants gave seed">
        {plants.length > 0 ? <Choice {...field("told")} label="Known as" options={toldOptions} /> : null}
        {plants.length === 0 ? <input type="hidden" name="told" value="count" /> : null}
        <div hidden={of === "plants"}>
          <NumberField
            {...field("seedParents")}
            id={of === "plants" ? "field-count" : undefined}
            label="How many plants gave seed that is kept"
            unit="plants"
            whole
            required
          />
        </div>
        {of === "plants" ? (
          <div id="field-seedParents" tabIndex={-1}>
            <p className="quiet measure">Say in the rows below whose seed is kept, and what was lost.</p>
            <Refusals id="seed-parents-refusal" refusals={field("seedParents").refusals} />
          </div>
        ) : null}
      </FieldGroup>
      <FieldGroup title="2. What each gave">
        <Choice {...field("each")} label="You know of each" options={eachOptions} />
        <div hidden={of !== "plants"}>
          <SeedRows rows={plantRows(plants)} of="plants" field={field} unit={unit} measured={measured} />
        </div>
        <div hidden={of !== "bags" || !measured}>
          {bags.length > 0 ? (
            <SeedRows rows={bags} of="bags" field={field} unit={unit} measured={measured} />
          ) : (
            <p className="quiet">Say how many they were, and there is a row for each bag.</p>
          )}
        </div>
      </FieldGroup>
      <LiveEvenness live={live} typed={typed} ground={ground} />
      <FieldGroup title="3. How the seed is put together">
        <Choice {...field("bulked")} label="The lot is" options={bulkedOptions} required />
      </FieldGroup>
      <FieldGroup title="4. What lies there in all">
        <SideBySide>
          <NumberField {...field("grams")} label="It weighs" unit={weightUnit} hint={wholeHint(live, typed)} />
          <NumberField {...field("seeds")} label="and is" unit="seeds" whole hint="both give the seed weight" />
        </SideBySide>
        <NumberField {...field("mouldyPercent")} label="Mouldy" unit="%" hint="0: looked, and found none" />
      </FieldGroup>
      {ground.tassels ? (
        <Seldom
          title="Tassels that were taken"
          open={["detasselled", "seedParentsDetasselled"].some(
            (name) => field(name).refusals.length > 0 || field(name).value !== "",
          )}
        >
          <SideBySide>
            <NumberField
              {...field("detasselled")}
              label="Plants of the whole grow-out without their tassels"
              unit="plants"
              whole
            />
            <NumberField
              {...field("seedParentsDetasselled")}
              label="of them seed parents of this harvest"
              unit="plants"
              whole
            />
          </SideBySide>
        </Seldom>
      ) : null}
      <FieldGroup title="5. The lot">
        <DateField {...field("on")} label="When it was harvested" required />
        {children}
        <TextField {...field("note")} label="Note" lines={2} />
      </FieldGroup>
    </div>
  );
}

/** What stands in the form around an element, followed as it is typed. */
function useTexts(start: Texts) {
  const box = useRef<HTMLDivElement>(null);
  const [typed, setTyped] = useState<Texts>(start);
  useEffect(() => {
    const form = box.current?.closest("form");
    if (!form) return;
    const look = () => setTyped(textsOf(new FormData(form)));
    look();
    form.addEventListener("input", look);
    return () => form.removeEventListener("input", look);
  }, []);
  return { box, typed };
}

function plantRows(plants: readonly PlantForHarvest[]): SeedRow[] {
  return plants.map(({ id, name, tag, cell, intent }, row) => ({
    row,
    plantId: id,
    name: `plant ${name}`,
    told: [tag && tag !== name ? `tag ${tag}` : "", cell ? `in ${cell}` : "", intent ? `to ${intent}` : ""]
      .filter(Boolean)
      .join(", "),
  }));
}

/** As many bags as were said, and never fewer than something was typed in. */
function bagRows(typed: Texts, { seedParents }: LiveHarvest): SeedRow[] {
  const last = Object.entries(typed).reduce((most, [name, text]) => {
    const [group, row, column] = name.split(".");
    return group === "bags" && column === "amount" && text !== "" ? Math.max(most, Number(row) + 1) : most;
  }, 0);
  const rows = Math.min(mostParentsInForm, Math.max(last, typed.told === "plants" ? 0 : seedParents));
  return Array.from({ length: rows }, (_, row) => ({ row, plantId: null, name: `bag ${row + 1}`, told: "" }));
}

function wholeHint(live: LiveHarvest, typed: Texts): string {
  const complete = live.amounts.length > 0 && live.amounts.length === live.seedParents;
  const asItIs = typed.bulked === "all together" || typed.bulked === "kept apart";
  return complete && asItIs ? "left empty: what the bags come to" : "as the scales say";
}

function LiveEvenness({ live, typed, ground }: { live: LiveHarvest; typed: Texts; ground: HarvestGround }) {
  const { plot, plants, units } = ground;
  const without = Number(typed.seedParentsDetasselled ?? "");
  const detasselled = typed.seedParentsDetasselled && Number.isInteger(without) ? without : null;
  const ofAll = Number(typed.detasselled ?? "");
  const here = typed.detasselled && Number.isInteger(ofAll) ? { ...plot, detasselled: ofAll } : plot;
  const even = evennessOf(
    live.amounts.map(({ amount }) => amount),
    here,
    detasselled,
  );
  if (!even) return null;
  const nameOf = (row: number) => (typed.told === "plants" ? `plant ${plants[row]?.name ?? ""}` : `bag ${row + 1}`);
  const named = live.amounts.map(({ row, amount }) => ({ name: nameOf(row), amount }));
  const unit = { unit: live.unit, units };
  const unmeasured = Math.max(0, live.seedParents - live.amounts.length);
  const equal = typed.bulked === "equal weight" || typed.bulked === "equal seeds";
  return (
    <section aria-label="What that makes of the seed" aria-live="polite" className="stack-near">
      <EvennessView
        even={even}
        named={named}
        unit={unit}
        done={false}
        inbreeding={plot.inbreeding}
        unmeasured={unmeasured}
      />
      <EqualTakings even={even} unit={unit} />
      {equal ? null : (
        <details>
          <summary>Another amount of seed</summary>
          <TakeSome named={named} plot={here} detasselled={detasselled} unit={unit} />
        </details>
      )}
    </section>
  );
}
