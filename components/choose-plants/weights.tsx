"use client";

import { Way } from "@/components/ui/offered";
import { percent } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { directionInWords } from "@/lib/display/scores";
import type { ChoiceGround, TraitToWeigh } from "@/lib/schemas/plants/choice-ground";
import styles from "./choose-plants.module.css";
import { Ruler } from "./ruler";
import { mostWeight, type Setting, weightOf } from "./setting";

/** What counts: a weight a trait, in the direction that the trait says; one of which nobody said which end is good cannot be weighed. */
export function Weights({
  ground,
  setting,
  weigh,
}: {
  ground: ChoiceGround;
  setting: Setting;
  weigh: (key: string, weight: number) => void;
}) {
  const all = ground.traits.reduce((sum, trait) => sum + weightOf(setting, trait), 0);
  const [weighed, mute] = [
    ground.traits.filter(({ better }) => better !== null),
    ground.traits.filter(({ better }) => better === null),
  ];
  return (
    <>
      <div className={styles.weights}>
        {weighed.map((trait) => {
          const weight = weightOf(setting, trait);
          return (
            <Ruler
              key={trait.key}
              label={trait.name}
              value={weight}
              least={0}
              most={mostWeight}
              set={(value) => weigh(trait.key, value)}
              spoken={`${weight}, ${shareOf(weight, all)}`}
              note={`${directionInWords(trait.definition)}; ${shareOf(weight, all)}${scoredWords(trait, ground)}`}
            />
          );
        })}
      </div>
      {mute.map((trait) => (
        <p key={trait.key} className="quiet">
          {trait.name}: {directionInWords(trait.definition)}, so nothing is chosen by it.{" "}
          {trait.definition.direction === "none" ? null : <Way href={trait.href}>Say which end is good</Way>}
        </p>
      ))}
      {all === 0 && weighed.length > 0 ? (
        <p className="waits">Nothing counts: give one trait a weight above 0, and the plants are ranked by it.</p>
      ) : null}
    </>
  );
}

function shareOf(weight: number, all: number): string {
  return weight === 0 ? "not counted" : `${percent(weight / all, 0)} of what counts`;
}

function scoredWords({ key, olderVersion }: TraitToWeigh, { plants }: ChoiceGround): string {
  const scored = plants.filter(({ scores }) => scores[key] !== undefined).length;
  const some = scored < plants.length ? `; ${scored} of ${plants.length} scored` : "";
  const older =
    olderVersion > 0 ? `; ${counted(olderVersion, "plant")} by an older version, which is not compared` : "";
  return some + older;
}
