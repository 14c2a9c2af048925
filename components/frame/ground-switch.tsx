"use client";

import { useState } from "react";
import styles from "./frame.module.css";
import { type Ground, grounds, groundWords } from "./ground";
import { keepGround } from "./keep-ground";

/** Chooses the ground: at once on this page, and kept in a cookie for the next. */
export function GroundSwitch({ ground }: { ground: Ground }) {
  const [chosen, choose] = useState(ground);
  function take(next: Ground) {
    choose(next);
    keepGround(next);
  }
  return (
    <fieldset className={styles.grounds}>
      <legend>Light</legend>
      {grounds.map((each) => (
        <label key={each} className={styles.ground}>
          <input type="radio" name="ground" value={each} checked={chosen === each} onChange={() => take(each)} />
          {groundWords[each]}
        </label>
      ))}
    </fieldset>
  );
}
