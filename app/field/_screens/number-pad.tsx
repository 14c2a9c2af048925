import { useState } from "react";
import controls from "./controls.module.css";
import styles from "./screens.module.css";

const keys = ["1", "2", "3", "4", "5", "6", "7", "8", "9"];

/**
 * Figures for a thumb: large keys in the page, so that the phone's own keyboard does not cover what is looked at. A keyboard of a desk types into
 * the field as well.
 */
export function NumberPad({
  label,
  unit,
  decimals = false,
  first = "",
  least = 0,
  confirm,
  onConfirm,
  onType,
}: {
  label: string;
  unit?: string | null;
  decimals?: boolean;
  first?: string;
  least?: number;
  /** the word on the button that takes the figure */
  confirm: string;
  onConfirm: (value: number) => void;
  /** what is typed so far, for a screen that keeps it */
  onType?: (typed: string) => void;
}) {
  const [typed, setTyped] = useState(first);
  const set = (next: string) => {
    const clean = next
      .replace(",", ".")
      .replace(decimals ? /[^\d.]/g : /\D/g, "")
      .slice(0, 9);
    if ((clean.match(/\./g) ?? []).length > 1) return;
    setTyped(clean);
    onType?.(clean);
  };
  const value = typed === "" || typed === "." ? null : Number(typed);
  const right = value !== null && value >= least;
  return (
    <form
      className={controls.pad}
      onSubmit={(event) => {
        event.preventDefault();
        if (right) onConfirm(value);
      }}
    >
      <div className={controls.padShown}>
        <input
          className={controls.padInput}
          inputMode="none"
          autoComplete="off"
          aria-label={unit ? `${label}, in ${unit}` : label}
          value={typed}
          onChange={(event) => set(event.currentTarget.value)}
        />
        {unit ? <span className={controls.padUnit}>{unit}</span> : null}
      </div>
      <div className={controls.grid} data-columns="3">
        {keys.map((key) => (
          <Key key={key} words={key} onTap={() => set(typed + key)} />
        ))}
        {decimals ? <Key words="." onTap={() => set(`${typed}.`)} /> : <span />}
        <Key words="0" onTap={() => set(`${typed}0`)} />
        <Key words="⌫" label="Take the last figure off" onTap={() => set(typed.slice(0, -1))} />
      </div>
      <button type="submit" className={styles.confirm} disabled={!right}>
        {confirm}
      </button>
    </form>
  );
}

function Key({ words, label, onTap }: { words: string; label?: string; onTap: () => void }) {
  return (
    <button type="button" data-step className={controls.choice} aria-label={label} onClick={onTap}>
      {words}
    </button>
  );
}
