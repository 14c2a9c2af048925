import type { ReactNode } from "react";
import { Jar } from "@/components/jar";
import { Explained } from "@/components/numbers";
import { Button, NumberField } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import type { Explanation } from "@/lib/display/explanation";
import { kOfN, percent } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { LastTest } from "@/lib/registry/figures/read-figures";
import type { LotRead } from "@/lib/registry/lots/read-lot";
import { isEmpty } from "@/lib/registry/transfers/after-giving";
import type { Settings } from "@/lib/schemas/settings";
import {
  keepingExplanation,
  keptInWords,
  noForecastInWords,
  untilInWords,
  untilSpan,
  wouldTellInWords,
} from "../_words/explain-keeping";
import { sowExplanation } from "../_words/explain-reserve";
import { liveExplanation, onHandExplanation } from "../_words/explain-seeds";
import { neverTestedInWords } from "../_words/give-in-words";
import { seedsInJar, seedsInWords, seedsOfRule } from "../_words/seeds-in-words";
import styles from "./answers.module.css";

/** The jar, and what it answers: what is left, what of it lives, until when it is good, what to sow. */
export function JarAnswers({
  read,
  settings,
  units,
  today,
}: {
  read: LotRead;
  settings: Settings;
  units: UnitSettings;
  today: string;
}) {
  const { figures, seeds, live, give, reserve } = read;
  const lastTest = figures?.lastTest ?? null;
  const empty = isEmpty(figures?.gramsOnHand ?? null, read.lot.thousandSeedGrams);
  return (
    <div className="beside even">
      <div className={styles.jar}>
        <Jar
          grams={figures?.gramsOnHand ?? null}
          seeds={seedsInJar(seeds)}
          alive={seedsInJar(live)}
          reserved={give.keptBack ?? (reserve.good.length <= 1 ? (reserve.reserve?.seeds ?? null) : null)}
          free={seedsInJar(give.free)}
          until={empty ? undefined : untilInWords(read.keeping)}
        />
      </div>
      <div className={styles.answers}>
        <Answer question="What is left?" explanation={onHandExplanation(read, units)}>
          {weight(figures?.gramsOnHand ?? null, units)}
          {seeds === null || seeds.high === 0 ? null : `, ${seedsInWords(seeds)}`}
        </Answer>
        {empty ? (
          <p>The jar is empty; where its seed went stands in the ledger. Its tests, its lineage and its story stay.</p>
        ) : (
          <>
            <Answer
              question="What of it lives?"
              explanation={liveExplanation(read, units)}
              after={<p>{lastTest ? livingSentence(lastTest, read.aged) : sentence(neverTestedInWords(read))}</p>}
            >
              {live === null ? "unknown" : seedsInWords(live)}
            </Answer>
            <UntilWhen read={read} settings={settings} today={today} />
            <WhatToSow read={read} units={units} />
          </>
        )}
      </div>
    </div>
  );
}

function livingSentence({ normal, sown, date }: LastTest, aged: boolean): string {
  const tested = `By the test of ${dateInWords(date)}: ${kOfN(normal, sown)}.`;
  return aged ? `${tested} That is longer ago than its seed usually lives: test it again.` : tested;
}

/** That what would have to be sown is not in the jar. */
function moreThanThereIs({ sow, seeds }: LotRead): string {
  if (!sow?.sowing || seeds === null || sow.sowing.seeds <= seeds.high) return "";
  return " That is more than the jar holds: sow another lot with it, or ask for fewer plants.";
}

function sentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}

/** A question to the jar, its answer, and how that came about. */
export function Answer({
  question,
  explanation,
  children,
  after,
}: {
  question: string;
  explanation: Explanation | null;
  children: ReactNode;
  after?: ReactNode;
}) {
  const figure = <span className={styles.figure}>{children}</span>;
  return (
    <div className={styles.answer}>
      <h3 className={styles.question}>{question}</h3>
      {explanation ? <Explained explanation={explanation}>{figure}</Explained> : figure}
      {after}
    </div>
  );
}

function UntilWhen({ read, settings, today }: { read: LotRead; settings: Settings; today: string }) {
  const { keeping } = read;
  const question = "Until when is it good?";
  if ("why" in keeping) {
    return (
      <Answer question={question} explanation={null} after={<p>{noForecastInWords(keeping.why)}</p>}>
        unknown
      </Answer>
    );
  }
  const line = percent(settings.renewalPlan, 0);
  const year = keeping.until.likely.slice(0, 4);
  const past = keeping.until.likely < today;
  const own = keeping.used.length > 0;
  return (
    <Answer
      question={question}
      explanation={keepingExplanation(read, keeping, settings)}
      after={
        <p>
          {past
            ? `By then it has likely passed ${line}, the line for renewing (setting): test it.`
            : `Then it is likely to pass ${line}, the line for renewing (setting).`}{" "}
          {own
            ? null
            : keeping.kept
              ? "No test of its own: this is how such seed lives where it is kept."
              : "No test of its own: this is the usual life of its kind speaking."}{" "}
          {keptInWords(keeping)} {wouldTellInWords(keeping)}
        </p>
      }
    >
      {past ? `past since about ${year}` : `about ${year}`}, {untilSpan(keeping)}
    </Answer>
  );
}

function WhatToSow({ read, units }: { read: LotRead; units: UnitSettings }) {
  const { sow: asked } = read;
  // By the calculation some hundred thousand seeds of which none came up would do; nobody sows them.
  const none = read.figures?.lastTest?.normal === 0;
  const sow = asked && none ? { ...asked, sowing: null, grams: null } : asked;
  const from = { variety: "the variety wants", crop: "the crop wants at least", asked: "you asked for" };
  return (
    <Answer
      question="What do I sow?"
      explanation={none ? null : sowExplanation(read)}
      after={
        <>
          {sow ? (
            <p>
              {sow.sowing === null
                ? none
                  ? "Nothing came up in the last test: sow another lot."
                  : read.figures?.lastTest
                    ? "So few came up in the last test that no number of seeds can promise it."
                    : `${sentence(neverTestedInWords(read))} Lay out twenty seeds first.`
                : `For ${counted(sow.plants, "plant")} (${from[sow.from]} that), enough in 9 of 10 sowings.${moreThanThereIs(read)}`}
            </p>
          ) : (
            <p>How many plants this crop wants is not known; ask for a number.</p>
          )}
          <form className={styles.plants}>
            <NumberField
              name="plants"
              label="For how many plants"
              whole
              value={sow ? String(sow.plants) : ""}
              required
            />
            <Button type="submit">Work it out</Button>
          </form>
          <p>
            <Way href={`/grow-outs/new?variety=${read.lot.varietyId}&lot=${read.lot.id}`}>Plan a grow-out from it</Way>
          </p>
        </>
      }
    >
      {sow?.sowing ? seedsOfRule(sow.sowing.seeds) : "unknown"}
      {sow?.grams ? `, ${weight(sow.grams, units)}` : null}
    </Answer>
  );
}
