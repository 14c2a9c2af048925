"use client";

import { type ReactNode, useState } from "react";
import { type Coat, type CoatColour, coatColours, coatFromName, coatPatterns, SeedCoat } from "@/components/seed-coat";
import { Button, ButtonLink } from "@/components/ui";
import styles from "./mark-picker.module.css";

/** Chooses a seed-coat mark: the pattern and its two colours, each shown as it would look. */
export function MarkPicker({
  name,
  crop,
  chosen,
  action,
  back,
}: {
  name: string;
  crop: string;
  chosen: Coat | null;
  action: (form: FormData) => Promise<void>;
  back: string;
}) {
  const [coat, setCoat] = useState<Coat>(chosen ?? coatFromName(name));
  return (
    <form action={action} className={styles.picker}>
      <div className={styles.shown}>
        <SeedCoat
          name={name}
          crop={crop}
          coat={coat}
          size={96}
          label={`${coat.pattern}, ${coat.second} on ${coat.ground}`}
        />
        <p aria-live="polite">
          {coat.pattern === "plain" ? `plain ${coat.ground}` : `${coat.pattern}, ${coat.second} on ${coat.ground}`}
        </p>
      </div>
      <fieldset className={styles.group}>
        <legend>Pattern</legend>
        {coatPatterns.map((pattern) => (
          <label key={pattern} className={styles.choice}>
            <input
              type="radio"
              name="pattern"
              value={pattern}
              checked={coat.pattern === pattern}
              onChange={() => setCoat({ ...coat, pattern })}
            />
            <SeedCoat name={name} crop={crop} coat={{ ...coat, pattern }} size={44} />
            <span>{pattern}</span>
          </label>
        ))}
      </fieldset>
      <Colours
        legend="Ground"
        name="ground"
        value={coat.ground}
        choose={(ground) => setCoat({ ...coat, ground })}
        seed={(ground) => <SeedCoat name={name} crop={crop} coat={{ ...coat, ground }} size={32} />}
      />
      <Colours
        legend="Pattern’s colour"
        name="second"
        value={coat.second}
        choose={(second) => setCoat({ ...coat, second })}
        seed={(second) => <SeedCoat name={name} crop={crop} coat={{ ...coat, second }} size={32} />}
      />
      <div className={styles.actions}>
        <Button type="submit" kind="chief">
          Keep this mark
        </Button>
        {chosen ? (
          <Button type="submit" name="drawn" value="yes">
            Draw it from the name again
          </Button>
        ) : null}
        <ButtonLink href={back} kind="quiet">
          Leave it as it is
        </ButtonLink>
      </div>
    </form>
  );
}

function Colours({
  legend,
  name,
  value,
  choose,
  seed,
}: {
  legend: string;
  name: string;
  value: CoatColour;
  choose: (colour: CoatColour) => void;
  seed: (colour: CoatColour) => ReactNode;
}) {
  return (
    <fieldset className={styles.group}>
      <legend>{legend}</legend>
      {coatColours.map((colour) => (
        <label key={colour} className={styles.choice}>
          <input type="radio" name={name} value={colour} checked={value === colour} onChange={() => choose(colour)} />
          {seed(colour)}
          <span>{colour}</span>
        </label>
      ))}
    </fieldset>
  );
}
