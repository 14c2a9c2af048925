"use client";

import { useCallback, useDeferredValue, useEffect, useMemo, useState } from "react";
import { Section } from "@/components/frame/section";
import type { Option } from "@/components/ui/select";
import { counted, listed } from "@/lib/display/plurals";
import { refusalSentence } from "@/lib/display/refusals";
import type { ChoiceGround } from "@/lib/schemas/plants/choice-ground";
import type { ChoiceOfPlants } from "@/lib/science/selection/choice-of-plants";
import { CellMap } from "./cell-map";
import styles from "./choose-plants.module.css";
import { CutPanel } from "./cut-panel";
import { EqualShares } from "./equal-shares";
import { KeepThese, type StoreChoice } from "./keep-these";
import { type Deeds, RankedList } from "./ranked-list";
import { mayBeKept, pollenOf, type Setting, settingInAddress } from "./setting";
import { TwoScorers } from "./two-scorers";
import { Weights } from "./weights";
import { WhatItBrings } from "./what-it-brings";
import { type CellOfChoice, cellsOfChoice, choiceBy, scoredBy, sizesOfCuts } from "./worked";

/**
 * The choice of seed parents among scored plants, worked out where it is shown: over plain data, so that it serves at the desk and in the field. `moved` hears the setting
 * as an address at each change; `store` writes the marks, and where there is none the choice is looked at only. `today` null: the day and the hand are not
 * asked, for the phone knows both.
 */
export function ChoosePlants({
  ground,
  start,
  moved,
  store,
  today,
  people = [],
}: {
  ground: ChoiceGround;
  start: Setting;
  moved?: (address: string) => void;
  store?: StoreChoice;
  today: string | null;
  people?: readonly Option[];
}) {
  const [setting, setSetting] = useState(start);
  const change = useCallback((part: Partial<Setting>) => setSetting((before) => ({ ...before, ...part })), []);
  const address = settingInAddress(setting);
  useEffect(() => {
    if (!moved) return;
    const later = setTimeout(() => moved(address), 200);
    return () => clearTimeout(later);
  }, [moved, address]);
  const scored = useMemo(() => scoredBy(ground, setting.scoresOf), [ground, setting.scoresOf]);
  const outcome = useMemo(() => choiceBy(ground, setting, scored), [ground, setting, scored]);
  const pollen = pollenOf(setting, ground);
  const sizes = useMemo(() => sizesOfCuts(ground, pollen, mayBeKept(ground)), [ground, pollen]);
  const weigh = useCallback(
    (key: string, weight: number) =>
      setSetting((before) => ({ ...before, weights: { ...before.weights, [key]: weight } })),
    [],
  );
  const deeds = useDeeds(setSetting);
  return (
    <div className={styles.ground}>
      <div className={styles.choice}>
        <div className={styles.what}>
          <Section id="weights" title="What counts">
            <Weights ground={ground} setting={setting} weigh={weigh} />
            <label className={styles.tick}>
              <input
                type="checkbox"
                checked={setting.withinCells}
                onChange={(event) => change({ withinCells: event.target.checked })}
              />
              Compare plants with their neighbours in the same cell, not over the whole field
            </label>
            {setting.withinCells && ground.plants.every(({ cell }) => cell === null) ? (
              <p className="waits">
                Of no plant it is written in which cell it stands, so none can be compared with its neighbours. Write
                the cells, or compare over the whole field.
              </p>
            ) : null}
          </Section>
        </div>
        {outcome.ok ? (
          <Worked
            ground={ground}
            setting={setting}
            choice={outcome.value}
            sizes={sizes}
            change={change}
            deeds={deeds}
            store={store}
            today={today}
            people={people}
          />
        ) : (
          <p className="waits">No ranking: {outcome.refusals.map(refusalSentence).join(" ")}</p>
        )}
      </div>
    </div>
  );
}

/** What a hand does with single plants; made once, so that rows that did not change are not drawn anew. */
function useDeeds(setSetting: (next: (before: Setting) => Setting) => void): Deeds {
  return useMemo(() => {
    const without = (record: Readonly<Record<string, string>>, name: string) => {
      const { [name]: _gone, ...rest } = record;
      return rest;
    };
    return {
      leaveOut: (name, reason) =>
        setSetting((before) => ({
          ...before,
          leftOut: { ...before.leftOut, [name]: reason },
          taken: before.taken.filter((each) => each !== name),
        })),
      putBack: (name) => setSetting((before) => ({ ...before, leftOut: without(before.leftOut, name) })),
      take: (name) => setSetting((before) => ({ ...before, taken: [...before.taken, name] })),
      byRank: (name) => setSetting((before) => ({ ...before, taken: before.taken.filter((each) => each !== name) })),
    };
  }, [setSetting]);
}

function Worked({
  ground,
  setting,
  choice,
  sizes,
  change,
  deeds,
  store,
  today,
  people,
}: {
  ground: ChoiceGround;
  setting: Setting;
  choice: ChoiceOfPlants;
  sizes: ReturnType<typeof sizesOfCuts>;
  change: (part: Partial<Setting>) => void;
  deeds: Deeds;
  store: StoreChoice | undefined;
  today: string | null;
  people: readonly Option[];
}) {
  // The list is long, and so is what is drawn and compared below it: they may come a moment after the figures.
  const listed = useDeferredValue(choice);
  const listedSetting = useDeferredValue(setting);
  const kept = useMemo(() => new Set(listed.kept), [listed.kept]);
  const cells = useMemo(() => cellsOfChoice(ground, kept), [ground, kept]);
  const standings = useMemo(() => new Map(listed.ranked.map(({ id, standing }) => [id, standing])), [listed.ranked]);
  const list = useMemo(
    () => <RankedList ground={ground} setting={listedSetting} choice={listed} deeds={deeds} />,
    [ground, listedSetting, listed, deeds],
  );
  const spreadAndGain = useMemo(
    () => (
      <>
        <Section id="spread" title="Where they stand">
          <div className="stack-near">
            <p className="measure">{spreadInWords(cells, listed.kept.length)}</p>
            <CellMap cells={cells} standings={standings} />
          </div>
        </Section>
        <Section id="brings" title="What it may bring">
          <WhatItBrings ground={ground} setting={listedSetting} choice={listed} change={change} />
        </Section>
      </>
    ),
    [ground, cells, standings, listed, listedSetting, change],
  );
  const scorers = useMemo(
    () =>
      ground.people.length > 1 ? (
        <Section id="scorers" title="Who scored">
          <TwoScorers ground={ground} setting={listedSetting} choice={listed} change={change} />
        </Section>
      ) : null,
    [ground, listed, listedSetting, change],
  );
  return (
    <>
      <div className={styles.cut}>
        <Section id="cut" title="How many">
          <CutPanel ground={ground} setting={setting} choice={choice} sizes={sizes} change={change} />
        </Section>
      </div>
      <div className={styles.plants}>
        <Section id="plants" title="The plants, ranked">
          {list}
        </Section>
      </div>
      <div className={styles.rest}>
        {spreadAndGain}
        <Section id="shares" title="Alike from each">
          <EqualShares ground={ground} setting={setting} kept={choice.kept.length} change={change} />
        </Section>
        {scorers}
        {store ? (
          <Section id="keep" title="Keep these">
            <KeepThese ground={ground} setting={setting} choice={choice} store={store} today={today} people={people} />
          </Section>
        ) : null}
      </div>
    </>
  );
}

/** How those to be kept are spread, and whether a corner gives most of them. */
function spreadInWords(cells: readonly CellOfChoice[], kept: number): string {
  const named = cells.filter(({ cell }) => cell !== null);
  if (named.length < 2)
    return "All stand in one cell, or nobody wrote in which: whether they are the best, or the best fed, cannot be told apart.";
  const used = named.filter((cell) => cell.kept > 0);
  const most = used.reduce(
    (best, each) => (each.kept > best.kept ? each : best),
    used[0] ?? (named[0] as CellOfChoice),
  );
  const heavy = kept >= 4 && most.kept * 2 > kept;
  const empty = named.filter((cell) => cell.kept === 0).map(({ cell }) => cell ?? "");
  return [
    `The kept stand in ${used.length} of ${counted(named.length, "cell")}.`,
    heavy ? `More than half of them stand in cell ${most.cell}: neighbours may be kin and share the soil.` : "",
    empty.length > 0 && empty.length <= 6 ? `None is kept in ${listed(empty)}.` : "",
  ]
    .filter(Boolean)
    .join(" ");
}
