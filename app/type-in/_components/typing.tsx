"use client";

import { useDeferredValue, useMemo, useState, useTransition } from "react";
import { DraftLine } from "@/components/drafts";
import { Section } from "@/components/frame";
import { LineageDrawing } from "@/components/lineage";
import { Button, FormRefusals } from "@/components/ui";
import { countedInWords, listed } from "@/lib/display/plurals";
import type { CropToType, LotToGoOnFrom, VarietyToGoOn } from "@/lib/registry/notebook-typing/typing-ground";
import type { NotebookBooking } from "@/lib/schemas/notebook-typing/notebook-booking";
import type { Refusal } from "@/lib/science/outcome";
import { type Booked, bookLines } from "../_actions/book";
import { bookingOfLines } from "../_lines/booking-of-lines";
import type { LinesDraft } from "../_lines/draft-of-lines";
import { drawingOfLines } from "../_lines/drawing-of-lines";
import { highestNumber, proposedNumbers, stemOf } from "../_lines/lot-numbers";
import { proposedLineage } from "../_lines/proposed-lineage";
import { readLines } from "../_lines/typed-line";
import { BookedLines } from "./booked-lines";
import { Lines } from "./lines";
import { LotsToBe } from "./lots-to-be";
import { refusalPlaces } from "./refusals-of-booking";
import styles from "./typing.module.css";
import { useLines } from "./use-lines";
import { useTakenNumbers } from "./use-taken-numbers";
import { HolderChoice, VarietyChoice } from "./variety-choice";

export interface TypingGround {
  readonly today: string;
  /** tells drafts of the own registry and the demonstration apart */
  readonly draftKey: string;
  readonly crops: readonly CropToType[];
  readonly varieties: readonly { id: string; name: string; crop: string }[];
  readonly holders: readonly string[];
  /** the variety that the lines go on with; null: named here */
  readonly variety: VarietyToGoOn | null;
}

const noLots: readonly LotToGoOnFrom[] = [];

/** A notebook typed in: lines on the left, what was understood beside them, the lineage growing at their side, and one booking. */
export function Typing({ today, draftKey, crops, varieties, holders, variety }: TypingGround) {
  const typing = useLines(draftKey);
  const { draft } = typing;
  const [refusedOf, setRefused] = useState<{
    draft: LinesDraft;
    booking: NotebookBooking;
    refusals: readonly Refusal[];
  } | null>(null);
  const [booked, setBooked] = useState<Booked | null>(null);
  const [storing, startStoring] = useTransition();

  const standing = variety?.lots ?? noLots;
  const lines = useDeferredValue(draft.lines);
  const read = useMemo(() => readLines(lines, today, standing), [lines, today, standing]);
  const lineage = useMemo(() => proposedLineage(read), [read]);
  const name = variety?.name ?? draft.variety.name;
  const stem = useDeferredValue(
    stemOf(
      name,
      standing.map((lot) => lot.number),
    ),
  );
  const taken = useTakenNumbers(stem);
  const numbers = useMemo(
    () =>
      proposedNumbers(
        lineage.lots.map((lot) => lot.name),
        draft.numbers,
        stem,
        highestNumber(stem, taken),
      ),
    [lineage, draft.numbers, stem, taken],
  );
  const cropName = draft.variety.crop.trim().toLowerCase();
  const mates = variety?.crop.mates ?? crops.find((crop) => crop.name.toLowerCase() === cropName)?.mates ?? null;
  const drawn = useMemo(
    () => drawingOfLines(lineage, numbers, standing.map(asDrawn), mates),
    [lineage, numbers, standing, mates],
  );
  const lots = [
    ...lineage.lots.map((lot) => ({ value: lot.name, words: numbers[lot.name] ?? lot.name })),
    ...standing.map((lot) => ({ value: `lot:${lot.id}`, words: lot.number })),
  ];
  // What was refused is said until something is changed.
  const refused = refusedOf?.draft === draft ? refusedOf : null;
  const places = refusalPlaces(refused?.booking ?? null, refused?.refusals ?? []);
  const empty = draft.lines.every((line) => line.words.trim() === "");

  const store = () => {
    const booking = bookingOfLines({
      variety: variety
        ? { id: variety.id }
        : { ...draft.variety, name: draft.variety.name.trim(), crop: draft.variety.crop.trim() },
      holder: draft.holder.trim() || null,
      lines: readLines(draft.lines, today, standing),
      numbers,
    });
    startStoring(async () => {
      const stored = await bookLines(booking);
      if (!stored.ok) return setRefused({ draft, booking, refusals: stored.refusals });
      setRefused(null);
      setBooked(stored.value);
      typing.forget();
    });
  };

  if (booked) {
    return (
      <BookedLines
        booked={booked}
        onTakenBack={() => {
          setBooked(null);
          typing.keep();
        }}
        onAnother={() => {
          setBooked(null);
          typing.afresh();
        }}
      />
    );
  }
  return (
    <div className={styles.typing}>
      <FormRefusals refusals={places.summary} />
      {variety ? (
        <div className={styles.choice}>
          <HolderChoice
            holder={draft.holder}
            holders={holders}
            refusals={places.ofField.holder ?? []}
            onHolder={typing.setHolder}
          />
        </div>
      ) : (
        <VarietyChoice
          typed={draft.variety}
          holder={draft.holder}
          crops={crops.map(({ key, name: commonName }) => ({ key, commonName }))}
          varieties={varieties}
          holders={holders}
          refusals={places.ofField}
          onTyped={typing.setVariety}
          onHolder={typing.setHolder}
        />
      )}
      <div className={styles.sides}>
        <div className="stack">
          <Lines typing={typing} read={read} lots={lots} refusals={places.ofLine} />
          <DraftLine kept={typing.kept} restored={typing.restored} again={typing.afresh} />
        </div>
        <aside className={styles.aside} aria-label="The lineage so far">
          {drawn.length > 0 ? (
            <LineageDrawing lots={drawn} title="The lineage so far" />
          ) : (
            <p className="quiet">The lineage grows here as you type.</p>
          )}
        </aside>
      </div>
      <LotsToBe lineage={lineage} numbers={numbers} refusals={places.ofLot} onNumber={typing.setNumber} />
      <Section id="book" title="Book these lines">
        <div className="stack-near">
          <p>{whatIsBooked(lineage)} One entry of the history takes all of it back.</p>
          <Button kind="chief" disabled={storing || empty} onClick={store}>
            {storing ? "Booking" : "Book these lines"}
          </Button>
        </div>
      </Section>
    </div>
  );
}

function whatIsBooked({ lots, growOuts, tests }: ReturnType<typeof proposedLineage>): string {
  const parts = [
    ...(lots.length > 0 ? [countedInWords(lots.length, "lot")] : []),
    ...(growOuts.length > 0 ? [countedInWords(growOuts.length, "grow-out")] : []),
    ...(tests.length > 0 ? [countedInWords(tests.length, "germination test")] : []),
    "the words of every line",
  ];
  const text = listed(parts);
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

function asDrawn({ id, number, years, parents, kind, effectiveSize }: LotToGoOnFrom) {
  const size = effectiveSize === null ? null : { low: effectiveSize, high: effectiveSize };
  return { id, name: number, years, parents, kind, effectiveSize: size, href: `/lots/${id}` };
}
