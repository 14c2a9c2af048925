"use client";

import { useState } from "react";
import { Button, NumberField, type Option, Select } from "@/components/ui";
import type { UnitSettings } from "@/lib/display/units";
import {
  type LotToSow,
  moreThanInJar,
  plantsOfEach,
  proposedSowing,
  reservesAfter,
} from "@/lib/registry/grow-outs/sowing-plan";
import { parentsAtOnce } from "@/lib/schemas/grow-outs/plan-grow-out";
import { FieldGroup, SideBySide } from "../../lots/_form/lot-form";
import type { FieldOf } from "../../lots/_form/use-form-answer";
import { reserveInWords } from "../_words/reserve-words";
import styles from "./plan-fields.module.css";
import { SowingOfLot } from "./sowing-of-lot";
import { linesShown, shareTyped, type TypedParent } from "./typed-parents";

const roles: readonly Option[] = [
  { value: "seed parent", words: "seed alone: their pollen is taken" },
  { value: "pollen parent", words: "pollen alone" },
];

/** The lots to be sown, a line each, with what their jars and tests say of the plants that are wanted. */
export function ParentFields({
  field,
  live,
  lots,
  options,
  crosses,
  plants,
  units,
  title,
}: {
  field: FieldOf;
  /** what stands in the lines now */
  live: readonly TypedParent[];
  lots: readonly LotToSow[];
  options: readonly Option[];
  crosses: readonly Option[];
  /** plants that are wanted; null: no proposal is made */
  plants: number | null;
  units: UnitSettings;
  title: string;
}) {
  const [asked, setAsked] = useState(1);
  const lines = Math.min(parentsAtOnce, Math.max(linesShown(live), asked));
  const chosen = live.flatMap((parent, index) => (parent.lot === "" ? [] : [{ index, ...parent }]));
  const each = plantsOfEach(
    plants ?? 1,
    chosen.map(({ share }) => shareTyped(share)),
  );
  const proposed = chosen.flatMap((parent, place) => {
    const lot = lots.find(({ id }) => id === parent.lot);
    const sowing = lot && plants !== null ? proposedSowing(lot, each[place] ?? plants).sowing : null;
    return lot && sowing && !moreThanInJar(lot, sowing.seeds)
      ? [{ lot, taken: { amount: sowing.seeds, unit: "seeds" as const } }]
      : [];
  });
  const all = [...options, ...crosses];
  return (
    <FieldGroup title={title}>
      {Array.from({ length: lines }, (_, index) => {
        const parent = live[index];
        const lot = lots.find(({ id }) => id === parent?.lot);
        const place = chosen.findIndex((one) => one.index === index);
        const cross = crosses.find(({ value }) => value === parent?.lot);
        const name = `parents.${index}`;
        return (
          <div key={name} className={styles.parent}>
            <SideBySide>
              <Select
                {...field(`${name}.lot`)}
                label={index === 0 ? "Lot" : `Lot ${index + 1}`}
                options={all}
                empty={index === 0 ? "choose the lot" : "no further lot"}
                required={index === 0}
              />
              {lines > 1 ? <NumberField {...field(`${name}.share`)} label="share of the plants" unit="%" /> : null}
            </SideBySide>
            {lines > 1 && parent?.lot ? (
              <Select {...field(`${name}.role`)} label="its plants give" options={roles} empty="seed and pollen" />
            ) : null}
            {lot ? (
              <SowingOfLot
                lot={lot}
                units={units}
                proposed={plants === null || place < 0 ? null : proposedSowing(lot, each[place] ?? plants)}
              />
            ) : null}
            {cross ? (
              <p className="waits">
                This lot is of another variety: the grow-out is then a cross, and is followed as one.
              </p>
            ) : null}
          </div>
        );
      })}
      {reservesAfter(proposed).map((after) => {
        const { words, waits } = reserveInWords(after);
        return (
          <p key={after.reserve.holderId ?? ""} className={waits ? "waits measure" : "measure"}>
            {words}
          </p>
        );
      })}
      {chosen.some(({ role }) => role !== "") ? (
        <p className="quiet measure">
          A cross: every plant of the one side has its tassels or anthers taken before they shed, and only its seed is
          kept. Each side then gives half of the genes, however many plants it has. Write the tassels taken among the
          counts.
        </p>
      ) : null}
      {chosen.length > 1 && chosen.some(({ share }) => share.trim() === "") ? (
        <p className="quiet measure">
          Where no shares are told, each lot is taken to give as many plants as the next. Then no figure of what comes
          of it can follow its parents: write the shares, or all of them when the plants are counted.
        </p>
      ) : null}
      {lines < parentsAtOnce ? (
        <div>
          <Button kind="quiet" onClick={() => setAsked(lines + 1)}>
            One more lot
          </Button>
        </div>
      ) : null}
    </FieldGroup>
  );
}
