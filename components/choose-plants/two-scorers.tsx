"use client";

import { ExplainedHere } from "@/components/numbers/explained-here";
import { SimpleTable } from "@/components/tables/simple-table";
import type { Explanation } from "@/lib/display/explanation";
import { percent, plainNumber, wholeNumber } from "@/lib/display/numbers";
import { counted, listed } from "@/lib/display/plurals";
import { traitDifference } from "@/lib/display/trait-difference";
import type { ChoiceGround, TraitToWeigh } from "@/lib/schemas/plants/choice-ground";
import { type BothScored, bothScored, cellsOfMixedScorers } from "@/lib/schemas/plants/scored-as";
import { kappaInterval } from "@/lib/science/scoring/kappa-interval";
import { type ScorerAgreement, scorerAgreement } from "@/lib/science/scoring/scorer-agreement";
import type { ChoiceOfPlants } from "@/lib/science/selection/choice-of-plants";
import styles from "./choose-plants.module.css";
import type { Setting } from "./setting";
import { choiceBy, scoredBy } from "./worked";

/** Where several people scored: how far they agree on the plants that both saw, what that does to the choice, and whose scores count. */
export function TwoScorers({
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
  const nameOf = (id: string | null) => ground.people.find((person) => person.id === id)?.name ?? "somebody";
  const both = bothScored(ground);
  const mixed = setting.scoresOf === "all" ? cellsOfMixedScorers(ground) : [];
  return (
    <div className="stack-near">
      <fieldset className={styles.pollen}>
        <legend>Whose scores count</legend>
        <label>
          <input
            type="radio"
            name="scores"
            checked={setting.scoresOf === "all"}
            onChange={() => change({ scoresOf: "all" })}
          />
          the mean of all who scored a plant
        </label>
        {ground.people.map(({ id, name }) => (
          <label key={id ?? ""}>
            <input
              type="radio"
              name="scores"
              checked={setting.scoresOf !== "all" && setting.scoresOf.person === id}
              onChange={() => change({ scoresOf: { person: id } })}
            />
            those of {name} alone
          </label>
        ))}
      </fieldset>
      {mixed.length > 0 ? (
        <p className="waits">
          In {mixed.length === 1 ? "cell" : "cells"} {listed(mixed.slice(0, 6))}
          {mixed.length > 6 ? " and others" : ""} not all plants were scored by the same people: what sets them apart
          may be the scorers.
        </p>
      ) : null}
      {both.length === 0 ? (
        <p className="quiet">
          No plant was scored by two of them, so nobody can say how far they agree. Twenty plants scored by both would
          tell.
        </p>
      ) : (
        <>
          <SimpleTable
            entries
            columns={[
              { key: "trait", name: "Trait" },
              { key: "by", name: "By" },
              { key: "plants", name: "Plants", kind: "count" },
              { key: "same", name: "Same score", kind: "count" },
              { key: "near", name: "Within one", kind: "count" },
              { key: "apart", name: "Second less first", kind: "count" },
              { key: "kappa", name: "Beyond chance", kind: "count" },
            ]}
            rows={both.map((pair) => agreementRow(pair, ground, nameOf))}
          />
          <ByEach ground={ground} setting={setting} choice={choice} nameOf={nameOf} />
        </>
      )}
    </div>
  );
}

function agreementRow(pair: BothScored, ground: ChoiceGround, nameOf: (id: string | null) => string) {
  const trait = ground.traits.find(({ key }) => key === pair.trait) as TraitToWeigh;
  const by = `${nameOf(pair.first)}, ${nameOf(pair.second)}`;
  const cells = { trait: trait.name, by, plants: wholeNumber(pair.pairs.length) };
  const id = `${pair.trait} ${pair.first} ${pair.second}`;
  const mean = pair.pairs.reduce((sum, [a, b]) => sum + b - a, 0) / pair.pairs.length;
  const agreement =
    trait.scale === null ? null : scorerAgreement({ scale: trait.scale, pairs: pair.pairs, weights: "quadratic" });
  if (!agreement?.ok) {
    const same = pair.pairs.filter(([a, b]) => a === b).length / pair.pairs.length;
    return {
      id,
      cells: {
        ...cells,
        same: percent(same, 0),
        near: "–",
        apart: traitDifference(mean, trait),
        kappa: "only of a scale",
      },
    };
  }
  const { exact, withinOne, meanDifference } = agreement.value;
  return {
    id,
    cells: {
      ...cells,
      same: percent(exact, 0),
      near: percent(withinOne, 0),
      apart: traitDifference(meanDifference, trait),
      kappa: (
        <ExplainedHere explanation={explainAgreement(trait, pair, agreement.value, by)}>
          {kappaInWords(agreement.value, pair.pairs.length)}
        </ExplainedHere>
      ),
    },
  };
}

function kappaInWords({ kappa, standardError }: ScorerAgreement, plants: number): string {
  if (kappa === null || standardError === null) return plants < 20 ? "too few plants" : "always one score";
  const { low, high } = kappaInterval(kappa, standardError);
  return `${plainNumber(kappa, 2, true)} (${plainNumber(low, 2, true)} to ${plainNumber(high, 2, true)})`;
}

function explainAgreement(
  trait: TraitToWeigh,
  { pairs }: BothScored,
  agreement: ScorerAgreement,
  by: string,
): Explanation {
  return {
    title: `how far two scorers agree in ${trait.name}`,
    answer: kappaInWords(agreement, pairs.length),
    formula: "κ = (Po − Pe)/(1 − Pe), scores as far apart as the square of their distance; ± 1.96 standard errors",
    inputs: [
      { name: "scorers", value: by },
      { name: "plants that both scored", value: counted(pairs.length, "plant") },
      { name: "scale", value: (trait.scale ?? []).join(" to ") },
    ],
    assumed: [],
    unsure:
      "1 is full agreement, 0 what chance alone would give. It says nothing of whether both are right. Below 20 plants it is not worked out.",
    sources: ["Cohen 1968, Psychol. Bull. 70:213", "Fleiss, Cohen & Everitt 1969, Psychol. Bull. 72:323"],
    calc: `echo '${JSON.stringify({ scale: trait.scale, pairs, weights: "quadratic" })}' | npm run --silent calc -- scorer-agreement`,
  };
}

/** What the difference means for the ranking: how many of those kept now would be kept by each one's scores alone. */
function ByEach({
  ground,
  setting,
  choice,
  nameOf,
}: {
  ground: ChoiceGround;
  setting: Setting;
  choice: ChoiceOfPlants;
  nameOf: (id: string | null) => string;
}) {
  const kept = new Set(choice.kept);
  const told = ground.people.flatMap(({ id }) => {
    const alone = choiceBy(ground, { ...setting, scoresOf: { person: id } }, scoredBy(ground, { person: id }));
    if (!alone.ok || alone.value.rankable === 0) return [];
    const shared = alone.value.kept.filter((plant) => kept.has(plant)).length;
    const seen = alone.value.ranked.filter(({ rank }) => rank !== null).length;
    return [`${shared} (${nameOf(id)}, who scored ${counted(seen, "plant")})`];
  });
  if (told.length === 0) return null;
  return (
    <p className="measure">
      What it means here: of the {counted(choice.kept.length, "plant")} kept now, a choice by one person’s scores alone
      would still hold {listed(told)}. Plants that only one of them would keep stand beside the cut: look at those
      again.
    </p>
  );
}
