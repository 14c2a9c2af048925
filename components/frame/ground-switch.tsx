"use client";

import { useState } from "react";
import styles from "./frame.module.css";
import { type Ground, groundCookie, grounds, groundWords } from "./ground";

const aYear = 60 * 60 * 24 * 365;

/** Chooses the ground: at once on this page, and kept in a cookie for the next. */
export function GroundSwitch({ ground }: { ground: Ground }) {
  const [chosen, choose] = useState(ground);
  function take(next: Ground) {
    choose(next);
    document.documentElement.dataset.ground = next;
    const secure = location.protocol === "https:" ? "; secure" : "";
    // biome-ignore lint/suspicious/noDocumentCookie: the Cookie Store interface is missing where the page comes by plain http
    document.cookie = `${groundCookie}=${next}; path=/; max-age=${aYear}; samesite=lax${secure}`;
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
