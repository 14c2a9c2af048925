"use client";

import { Button } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { cropsByWord } from "@/lib/science/crops/crops-by-word";
import type { VarietyTyped } from "../_lines/draft-of-lines";
import styles from "./typing.module.css";

/** Which variety the notebook is of: its name and its crop, from the lists or new. */
export function VarietyChoice({
  typed,
  holder,
  crops,
  varieties,
  holders,
  refusals,
  onTyped,
  onHolder,
}: {
  typed: VarietyTyped;
  holder: string;
  crops: readonly { readonly key: string; readonly commonName: string }[];
  varieties: readonly { id: string; name: string; crop: string }[];
  holders: readonly string[];
  refusals: Readonly<Record<string, readonly string[]>>;
  onTyped: (typed: VarietyTyped) => void;
  onHolder: (holder: string) => void;
}) {
  const same = varieties.find((variety) => variety.name.toLowerCase() === typed.name.trim().toLowerCase());
  const cropIsOwn =
    typed.crop.trim() !== "" &&
    !crops.some((crop) => crop.commonName.toLowerCase() === typed.crop.trim().toLowerCase());
  const meant = cropIsOwn ? cropsByWord(typed.crop, crops) : [];
  const refusal = (name: string) =>
    refusals[name]?.map((sentence) => (
      <span key={sentence} className={styles.refusal} role="alert">
        {sentence}
      </span>
    ));
  return (
    <div className={styles.choice}>
      <div className={styles.field}>
        <label htmlFor="field-variety.name">Variety</label>
        <input
          id="field-variety.name"
          className={styles.control}
          list="known-varieties"
          value={typed.name}
          autoComplete="off"
          onChange={(event) => onTyped({ ...typed, name: event.target.value })}
        />
        <datalist id="known-varieties">
          {varieties.map((variety) => (
            <option key={variety.id} value={variety.name}>
              {variety.crop}
            </option>
          ))}
        </datalist>
        {same ? (
          <span className="quiet">
            {same.name} stands here already: <Way href={`/type-in/${same.id}`}>go on from its lots</Way>.
          </span>
        ) : null}
        {refusal("variety.name")}
      </div>
      <div className={styles.field}>
        <label htmlFor="field-variety.crop">Crop</label>
        <input
          id="field-variety.crop"
          className={styles.control}
          list="known-crops"
          value={typed.crop}
          autoComplete="off"
          onChange={(event) => onTyped({ ...typed, crop: event.target.value })}
        />
        <datalist id="known-crops">
          {crops.map((crop) => (
            <option key={crop.key} value={crop.commonName} />
          ))}
        </datalist>
        {meant.length > 0 ? (
          <p className={styles.meant}>
            <span className="quiet">Perhaps</span>
            {meant.map((crop) => (
              <Button key={crop.key} kind="quiet" onClick={() => onTyped({ ...typed, crop: crop.commonName })}>
                {crop.commonName}
              </Button>
            ))}
          </p>
        ) : null}
        {cropIsOwn ? (
          <label className={styles.tick}>
            <input
              type="checkbox"
              checked={typed.ownCrop}
              onChange={(event) => onTyped({ ...typed, ownCrop: event.target.checked })}
            />
            The list does not have it: make it a crop of my own
          </label>
        ) : null}
        {refusal("variety.crop")}
      </div>
      <HolderChoice holder={holder} holders={holders} refusals={refusals.holder ?? []} onHolder={onHolder} />
    </div>
  );
}

/** Who keeps the seed of the notebook; may be left open. */
export function HolderChoice({
  holder,
  holders,
  refusals,
  onHolder,
}: {
  holder: string;
  holders: readonly string[];
  refusals: readonly string[];
  onHolder: (holder: string) => void;
}) {
  if (holders.length === 0) return null;
  return (
    <div className={styles.field}>
      <label htmlFor="field-holder">
        Kept by <span className="quiet">(may be left empty)</span>
      </label>
      <input
        id="field-holder"
        className={styles.control}
        list="known-holders"
        value={holder}
        autoComplete="off"
        onChange={(event) => onHolder(event.target.value)}
      />
      <datalist id="known-holders">
        {holders.map((name) => (
          <option key={name} value={name} />
        ))}
      </datalist>
      {refusals.map((sentence) => (
        <span key={sentence} className={styles.refusal} role="alert">
          {sentence}
        </span>
      ))}
    </div>
  );
}
