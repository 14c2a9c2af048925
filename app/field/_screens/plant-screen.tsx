import { useRef, useState } from "react";
import { dayOf, momentNow, newId } from "@/lib/field/new-record";
import type { PlantShown } from "@/lib/field/screen-state";
import type { TraitInField } from "@/lib/schemas/field/field-pack";
import type { PlantInField } from "@/lib/schemas/field/field-records";
import { type Intent, intents } from "@/lib/schemas/plants/plant-cells";
import { go, goOn, placeOf } from "../_components/place";
import { placeInWords } from "../_words/plant-words";
import { scoreWords } from "../_words/score-words";
import controls from "./controls.module.css";
import { PlantPhoto } from "./plant-photo";
import { PlantPlace } from "./plant-place";
import { PlantTag } from "./plant-tag";
import { PlantWords } from "./plant-words";
import styles from "./screens.module.css";
import { Choice, type Given, TraitControl } from "./trait-control";
import type { Work } from "./work";

/** What stands under the thumb: a trait by its first version, or one of these. */
type Panel = "intent" | "next" | "tag" | "place" | "words" | "photo" | `trait ${string}`;

const intentWords: Readonly<Record<Intent, string>> = { keep: "Keep", watch: "Watch", pull: "Pull" };

/**
 * One plant: its tag large, its traits with what was scored, and under the thumb the one thing that is asked now. Each tap is stored before it is
 * shown, and leads on to the next; a plant that was not marked yet becomes one with the first tap.
 */
export function PlantScreen({ work, plantId }: { work: Work; plantId: string | null }) {
  const { growOutId, pack, state } = work;
  const found = state.plants.find((each) => each.plant.id === plantId);
  const before = state.plants.find((each) => each.touched > 0 && each.plant.id !== plantId);
  const [tag, setTag] = useState<string | null>(null);
  const [where, setWhere] = useState<Where>({
    cell: before?.plant.cell ?? null,
    row: before?.plant.row ?? null,
    position: null,
  });
  const [chosen, setChosen] = useState<Panel | null>(null);
  const storing = useRef(false);
  const plant: PlantInField = found?.plant ?? { id: plantId ?? "", name: tag ?? state.nextTag, ...where };
  const shownTag = found ? (found.tag ?? found.plant.name) : (tag ?? state.nextTag);
  const panel = chosen ?? asked(found, pack.traits);

  /** Stores one thing of this plant; a second tap while the first is being stored is none. */
  const store = async (work_: (plant: PlantInField) => Promise<boolean>, next: Panel | null) => {
    if (storing.current) return;
    storing.current = true;
    const own = found ? plant : { ...plant, id: newId() };
    const stored = await work_(own).finally(() => {
      storing.current = false;
    });
    if (!stored) return;
    setChosen(next);
    if (!found) goOn(placeOf(growOutId, "plant", own.id));
  };
  const mark = (
    change: Partial<{ intent: Intent; tag: string | null; words: string | null; plant: Partial<Where> }>,
    words: string,
  ) =>
    store(
      (own) =>
        work.record(
          "mark",
          {
            plant: { ...own, ...change.plant },
            tag: change.tag !== undefined ? change.tag : found?.mark ? found.tag : shownTag,
            intent: change.intent ?? found?.mark?.intent ?? "keep",
            words: change.words !== undefined ? change.words : (found?.mark?.words ?? null),
            fate: null,
            replaces: found?.mark?.id ?? null,
          },
          words,
        ),
      null,
    );
  const score = (trait: TraitInField, { value, text }: Given, stay: boolean) =>
    store(
      (own) =>
        work.record(
          "score",
          { plant: own, traitId: trait.id, value, text, replaces: found?.scores[trait.first]?.id ?? null },
          `${shownTag}: ${trait.name} ${scoreWords(trait, { value, text })}`,
        ),
      stay ? `trait ${trait.first}` : afterTrait(trait, found, pack.traits),
    );

  const trait = panel.startsWith("trait ") ? pack.traits.find((each) => `trait ${each.first}` === panel) : undefined;
  return (
    <>
      <div className={styles.plantHead}>
        <h1 className={styles.tag}>
          <span className={styles.tagWord}>{found ? "tag" : "next tag"}</span> {shownTag}
        </h1>
        <div className={styles.tagSide}>
          {found ? (
            <button
              type="button"
              className={controls.quietChoice}
              aria-pressed={panel === "intent"}
              onClick={() => setChosen("intent")}
            >
              {found.mark ? intentWords[found.mark.intent] : "not marked"}
            </button>
          ) : (
            <button type="button" className={controls.quietChoice} onClick={() => setChosen("tag")}>
              Another tag
            </button>
          )}
          <button
            type="button"
            className={controls.quietChoice}
            aria-pressed={panel === "place"}
            onClick={() => setChosen("place")}
          >
            {placeInWords(plant)}
          </button>
        </div>
      </div>
      {found?.fate ? <p className={styles.quietNear}>{found.fate}</p> : null}
      <ul className={styles.scores}>
        {pack.traits.map((each) => {
          const given = found?.scores[each.first];
          return (
            <li key={each.first}>
              <button
                type="button"
                className={styles.score}
                aria-pressed={panel === `trait ${each.first}`}
                onClick={() => setChosen(`trait ${each.first}`)}
              >
                <span>{each.name}</span>
                <span className={given ? styles.scored : styles.notScored}>
                  {given ? scoreWords(each, given) : "not looked"}
                </span>
              </button>
            </li>
          );
        })}
      </ul>
      {found ? (
        <div className={controls.beside}>
          <button
            type="button"
            className={controls.quietChoice}
            aria-pressed={panel === "words"}
            onClick={() => setChosen("words")}
          >
            {found.mark?.words ? "Words: written" : "Words"}
          </button>
          <button
            type="button"
            className={controls.quietChoice}
            aria-pressed={panel === "photo"}
            onClick={() => setChosen("photo")}
          >
            {found.photos === 0 ? "Photo" : found.photos === 1 ? "1 photo" : `${found.photos} photos`}
          </button>
          {found.mark ? (
            <button
              type="button"
              className={controls.quietChoice}
              aria-pressed={panel === "tag"}
              onClick={() => setChosen("tag")}
            >
              Another tag
            </button>
          ) : null}
        </div>
      ) : null}
      {found?.mark?.words && panel !== "words" ? <p className={styles.told}>{found.mark.words}</p> : null}
      <section key={panel} ref={takeUpFocus} className={styles.thumb} aria-label="What is asked now">
        {panel === "intent" ? (
          <>
            <p className={controls.asks}>What is meant with it?</p>
            <div className={controls.grid} data-columns="3">
              {intents.map((intent) => (
                <Choice
                  key={intent}
                  on={found?.mark?.intent === intent}
                  onTap={() => void mark({ intent }, `${shownTag}: ${intent}`)}
                >
                  {intentWords[intent]}
                </Choice>
              ))}
            </div>
          </>
        ) : null}
        {trait ? (
          <TraitControl
            key={trait.first}
            trait={trait}
            score={found?.scores[trait.first]}
            last={before?.scores[trait.first]}
            today={dayOf(momentNow())}
            onGive={(given, stay) => void score(trait, given, stay)}
            onSkip={() => setChosen(afterTrait(trait, found, pack.traits))}
          />
        ) : null}
        {panel === "next" ? (
          <button type="button" className={styles.confirm} onClick={() => go(placeOf(growOutId, "mark"))}>
            Next plant: tag {state.nextTag}
          </button>
        ) : null}
        {panel === "tag" ? (
          <PlantTag
            work={work}
            plantId={found?.plant.id ?? null}
            onTag={(typed) => {
              if (found) return void mark({ tag: typed }, `${shownTag}: now tag ${typed}`);
              setTag(typed);
              setChosen(null);
            }}
            onLeave={() => setChosen(null)}
          />
        ) : null}
        {panel === "place" ? (
          <PlantPlace
            where={plant}
            onWhere={(next) => {
              if (found) return void mark({ plant: next }, `${shownTag}: ${placeInWords(next)}`);
              setWhere(next);
              setChosen(null);
            }}
            onLeave={() => setChosen(null)}
          />
        ) : null}
        {panel === "words" && found ? (
          <PlantWords
            plant={found}
            onWords={(words) => void mark({ words }, `${shownTag}: words`)}
            onLeave={() => setChosen(null)}
          />
        ) : null}
        {panel === "photo" && found ? (
          <PlantPhoto growOutId={growOutId} plant={found.plant} shownTag={shownTag} onLeave={() => setChosen(null)} />
        ) : null}
      </section>
    </>
  );
}

/** What was tapped is gone from the page when the next thing is asked: a keyboard goes on from what has come in its place. */
function takeUpFocus(section: HTMLElement | null): void {
  if (document.activeElement !== document.body) return;
  section?.querySelector<HTMLElement>("button, input, textarea")?.focus({ preventScroll: true });
}

export type Where = Pick<PlantInField, "cell" | "row" | "position">;

function asked(plant: PlantShown | undefined, traits: readonly TraitInField[]): Panel {
  if (!plant?.mark) return "intent";
  const open = traits.find((each) => !plant.scores[each.first]);
  return open ? `trait ${open.first}` : "next";
}

/** The next trait that has no score, after this one; then the next plant. */
function afterTrait(trait: TraitInField, plant: PlantShown | undefined, traits: readonly TraitInField[]): Panel {
  const rest = traits.slice(traits.indexOf(trait) + 1).find((each) => !plant?.scores[each.first]);
  if (rest) return `trait ${rest.first}`;
  return plant?.mark || traits.length === 0 ? "next" : "intent";
}
