import { Figure } from "@/components/numbers";
import { dateInWords } from "@/lib/display/dates";
import { effectiveSize, wholeNumber } from "@/lib/display/numbers";
import { counted, listed } from "@/lib/display/plurals";
import type { LifeOfGrowOut } from "@/lib/registry/grow-outs/life-of-grow-out";
import type { GrowOutRead } from "@/lib/registry/grow-outs/read-grow-out";
import { sizeSoFar } from "@/lib/registry/grow-outs/size-so-far";
import { sizeExplanation } from "../../_words/size-explanation";
import { sizeSoFarExplanation } from "../../_words/size-so-far-explanation";
import { sizeWords } from "../../_words/size-so-far-words";
import { fieldOfPage } from "../read";

/** The effective size and what it means; for a crop kept by division, why there is none. */
export function SizeFigure({ read, life }: { read: GrowOutRead; life: LifeOfGrowOut }) {
  const { growOut, harvested, variety } = read;
  if (life.stands.stage === "planned") return <PlannedFigure read={read} />;
  const sown = growOut.sown === null ? "" : `Sown ${dateInWords(growOut.sown)}. `;
  if (variety.crop.clonal) {
    return (
      <Figure value={growOut.plantsStanding === null ? "unknown" : wholeNumber(growOut.plantsStanding)}>
        plants stood. {sown}The crop is kept by division, so no seed mixed them and there is no effective size.
      </Figure>
    );
  }
  if (harvested.length === 0 && life.stands.stage === "standing") return <StandingFigure read={read} />;
  if (harvested.length === 0) {
    return (
      <Figure value="no seed">
        came of it on record. {sown}
        {growOut.outcome === null ? "Nobody wrote why." : `Its outcome: ${growOut.outcome}.`}
      </Figure>
    );
  }
  const size = harvested[0]?.figures?.effectiveSize ?? null;
  if (size === null) return <SizeByRecords read={read} />;
  const floor = variety.crop.plantsMin;
  const narrow = floor !== null && size < floor;
  const against =
    floor === null
      ? ""
      : narrow
        ? ` The crop’s floor is ${floor}: it was a bottleneck.`
        : ` The crop’s floor is ${floor}.`;
  return (
    <Figure value={effectiveSize(size)} waiting={narrow} explanation={sizeExplanation(read)}>
      plants that all gave alike would have passed on as much. {sown}
      {against}
    </Figure>
  );
}

/** Where the lot has no figure: what the records bound, and what they do not. */
async function SizeByRecords({ read: { growOut } }: { read: GrowOutRead }) {
  const field = await fieldOfPage(growOut.id);
  const sown = growOut.sown === null ? "" : ` Sown ${dateInWords(growOut.sown)}.`;
  if (!field) return null;
  const size = sizeSoFar(field.size);
  const words = sizeWords(size, field.size);
  const explanation = sizeSoFarExplanation(size, field.size) ?? undefined;
  return (
    <Figure value={words.figure} waiting={words.narrow} explanation={explanation}>
      {words.sentence}
      {sown} {words.floor}
    </Figure>
  );
}

/** What the plan asks for. */
function PlannedFigure({ read: { growOut, parents, plots } }: { read: GrowOutRead }) {
  const { plantsPlanned, seedParentsPlanned } = growOut;
  const lots =
    parents.length === 0
      ? "Which lot to sow is not said yet."
      : `From lot ${listed(parents.map((lot) => lot.number))}.`;
  const where = plots[0] ? ` On ${plots[0].name}.` : "";
  const kept = seedParentsPlanned === null ? "" : `, seed to be kept from ${wholeNumber(seedParentsPlanned)}`;
  return plantsPlanned === null ? (
    <Figure value="Planned">
      and not sown. How many plants it wants is not said yet. {lots}
      {where}
    </Figure>
  ) : (
    <Figure value={counted(plantsPlanned, "plant")}>
      are planned{kept}. {lots}
      {where}
    </Figure>
  );
}

/** What stands, before any seed came of it. */
function StandingFigure({ read: { growOut, events } }: { read: GrowOutRead }) {
  const sown = growOut.sown === null ? "When it was sown is not known." : `Sown ${dateInWords(growOut.sown)}.`;
  const last = events.findLast((event) => event.kind === "count" && event.plants !== null);
  const wanted = growOut.plantsPlanned === null ? "" : ` The plan wants ${wholeNumber(growOut.plantsPlanned)}.`;
  if (growOut.plantsStanding !== null) {
    const pulled = growOut.roguedBeforePollen ?? 0;
    const rogued =
      pulled === 0
        ? ""
        : ` ${counted(pulled, "rogue")} of them ${pulled === 1 ? "was" : "were"} pulled before pollen shed.`;
    return (
      <Figure value={counted(growOut.plantsStanding, "plant")}>
        stood when they were counted.{rogued} {sown}
        {wanted}
      </Figure>
    );
  }
  if (last?.plants != null) {
    return (
      <Figure value={counted(last.plants, "plant")}>
        {last.what === "up" ? "had come up" : `were counted (${last.what})`}
        {last.on === null ? "" : `, ${dateInWords(last.on)}`}. {sown}
        {wanted}
      </Figure>
    );
  }
  const seeds = growOut.seedsSown === null ? "" : ` ${counted(growOut.seedsSown, "seed")} went into the ground.`;
  return (
    <Figure value="Not counted">
      yet, how many plants stand. {sown}
      {seeds}
      {wanted}
    </Figure>
  );
}
