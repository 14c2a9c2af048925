"use client";

import { ExplainedHere } from "@/components/numbers/explained-here";
import { SimpleTable } from "@/components/tables/simple-table";
import { Button } from "@/components/ui/button";
import { plainNumber } from "@/lib/display/numbers";
import { traitDifference } from "@/lib/display/trait-difference";
import type { ChoiceGround, TraitToWeigh } from "@/lib/schemas/plants/choice-ground";
import type { ChoiceOfPlants } from "@/lib/science/selection/choice-of-plants";
import styles from "./choose-plants.module.css";
import { explainResponse, responseInWords } from "./explain";
import { pollenOf, type Setting } from "./setting";
import { heritabilityOffered, responseOf } from "./worked";

/** By trait: how far the kept stand above their own neighbours, and what of it the next generation may show. */
export function WhatItBrings({
  ground,
  setting,
  choice,
  change,
}: {
  ground: ChoiceGround;
  setting: Setting;
  choice: ChoiceOfPlants;
  change: (part: Partial<Setting>) => void;
}) {
  const traits = ground.traits.filter(({ key }) => choice.differential.has(key));
  const pollen = pollenOf(setting, ground);
  const unsaid = traits.filter((trait) => setting.heritability[trait.key] === undefined);
  const found = unsaid.some((trait) => heritabilityOffered(trait) !== null);
  return (
    <div className="stack-near">
      <SimpleTable
        entries
        columns={[
          { key: "trait", name: "Trait" },
          { key: "stands", name: "The kept stand at", kind: "count" },
          { key: "inherited", name: "Of it inherited, from and to" },
          { key: "brings", name: "Next generation", kind: "count" },
        ]}
        rows={traits.map((trait) => {
          const stands = choice.differential.get(trait.key) ?? null;
          const response = responseOf(trait.key, choice, ground, setting);
          return {
            id: trait.key,
            cells: {
              trait: trait.name,
              stands: stands === null ? "not compared" : traitDifference(stands.differential, trait),
              inherited: (
                <Heritability
                  trait={trait}
                  said={setting.heritability[trait.key]}
                  set={(ends) => {
                    const { [trait.key]: _before, ...rest } = setting.heritability;
                    change({ heritability: ends === null ? rest : { ...rest, [trait.key]: ends } });
                  }}
                />
              ),
              brings:
                stands === null || response === null ? (
                  "not known"
                ) : (
                  <ExplainedHere explanation={explainResponse(trait, stands, response, pollen)}>
                    {response.from === "unknown" ? "anywhere from " : ""}
                    {responseInWords(trait, response)}
                  </ExplainedHere>
                ),
            },
          };
        })}
      />
      {unsaid.length > 0 ? (
        <p className="measure">
          Where nobody says how much of a difference is inherited in this variety, the next generation may show none of
          it or, at the very most, {pollen === "kept" ? "all" : "the half that the seed parents give"}.{" "}
          {found
            ? "What stayed of earlier choices counts once you plan with it: it takes the variety beside it for one that had not changed. Another span"
            : "Three cycles of choosing with a check beside them would tell; a span to plan with"}{" "}
          can be written above, as 0.1 to 0.4. What was found in other varieties is not this one’s.
        </p>
      ) : null}
    </div>
  );
}

type Ends = readonly [number, number];

function isTaken(said: Ends | undefined, offered: Ends | null): boolean {
  return said !== undefined && offered !== null && said.every((end, at) => end === offered[at]);
}

/** The span that is planned with; two numbers from 0 to 1, or none. */
function Heritability({
  trait,
  said,
  set,
}: {
  trait: TraitToWeigh;
  said: Ends | undefined;
  set: (ends: Ends | null) => void;
}) {
  const offered = heritabilityOffered(trait);
  const taken = isTaken(said, offered);
  const read = (both: HTMLElement | null) => {
    const [low, high] = [...(both?.querySelectorAll("input") ?? [])].map((input) =>
      input.value.trim() === "" ? null : Number(input.value.replace(",", ".")),
    );
    if (low == null && high == null) set(null);
    else if (low != null && high != null && low >= 0 && low <= high && high <= 1) set([low, high]);
  };
  return (
    <span className={styles.heritability}>
      {(["from", "to"] as const).map((end, at) => (
        <input
          key={`${end}:${said?.[at] ?? ""}`}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          onBlur={(event) => read(event.currentTarget.parentElement)}
          aria-label={`Of ${trait.name} inherited, ${end}`}
          defaultValue={said === undefined ? "" : plainNumber(said[at] ?? 0, 3)}
          placeholder={end === "from" ? "0" : "1"}
        />
      ))}
      {taken ? null : <span className="quiet">{said ? "as said here" : offered ? "not said" : "not known"}</span>}
      {offered !== null && !taken ? (
        <span className={styles.found}>
          {`${plainNumber(offered[0], 2)} to ${plainNumber(offered[1], 2)} stayed over ${trait.heritability?.from}`}
          <Button kind="quiet" onClick={() => set(offered)}>
            Plan with that<span className="heard">, for {trait.name}</span>
          </Button>
        </span>
      ) : null}
      {taken ? <span className={styles.found}>{`as it stayed over ${trait.heritability?.from}`}</span> : null}
    </span>
  );
}
