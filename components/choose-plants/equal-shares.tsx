"use client";

import { useId } from "react";
import { wholeNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import type { ChoiceGround } from "@/lib/schemas/plants/choice-ground";
import { seedsOfEach } from "./choice-words";
import styles from "./choose-plants.module.css";
import type { Setting } from "./setting";

/** How many seeds to take of each plant, so that all give alike. */
export function EqualShares({
  ground,
  setting,
  kept,
  change,
}: {
  ground: ChoiceGround;
  setting: Setting;
  kept: number;
  change: (part: Partial<Setting>) => void;
}) {
  const id = useId();
  const wanted = setting.seeds ?? ground.seeds?.count ?? null;
  return (
    <div className="stack-near">
      <p className={styles.seeds}>
        <label htmlFor={id}>Seeds wanted in all</label>
        <input
          id={id}
          key={String(setting.seeds)}
          type="text"
          inputMode="numeric"
          autoComplete="off"
          defaultValue={wanted === null ? "" : String(wanted)}
          onChange={(event) => {
            const typed = event.target.value.replace(/[\s,]/g, "");
            if (typed === "") change({ seeds: null });
          }}
          onBlur={(event) => {
            const typed = event.target.value.replace(/[\s,]/g, "");
            if (/^[1-9]\d{0,8}$/.test(typed)) change({ seeds: Number(typed) });
          }}
        />
      </p>
      <p className="quiet measure">
        {setting.seeds !== null
          ? "As said here."
          : ground.seeds === null
            ? "Nothing on record tells how many the next sowing needs: write a number."
            : `What the next sowing needs for the plants that are wanted, as lot ${ground.seeds.from} came up in its last test.`}
      </p>
      {wanted === null || kept === 0 ? null : (
        <p className={styles.advice} role="status">
          Take <b>{counted(seedsOfEach(wanted, kept), "seed")}</b> from each of the {counted(kept, "plant")}: the same
          number, not the whole bag. That is {wholeNumber(seedsOfEach(wanted, kept) * kept)} in all. A plant that gives
          less gives all it has.
        </p>
      )}
    </div>
  );
}
