import { Section } from "@/components/frame";
import { GrowOutLine } from "@/components/grow-out-line";
import type { LifeOfGrowOut } from "@/lib/registry/grow-outs/life-of-grow-out";
import type { GrowOutRead } from "@/lib/registry/grow-outs/read-grow-out";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { dayNought, lifeCycleInWords, stageInWords, withoutDays } from "../../_words/life-words";

/** The line of a grow-out's life, and what the life cycle of its crop asks. */
export function LifeSection({
  read: { growOut, variety },
  life,
  today,
}: {
  read: GrowOutRead;
  life: LifeOfGrowOut;
  today: CivilDay;
}) {
  const asks = lifeCycleInWords(variety.crop);
  const relative = withoutDays(life.stages);
  const expected = life.stages.some((stage) => stage.grade === "assumed");
  return (
    <Section id="life" title="The line of its life" aside={variety.crop.lifeCycle ?? undefined}>
      <div className="stack">
        <GrowOutLine
          stages={life.stages.map((stage) => stageInWords(stage, relative))}
          today={today}
          origin={relative ? dayNought : null}
          open={life.stands.stage !== "over"}
          label={`The life of ${growOut.name}`}
        />
        {asks ? <p className="measure">{asks}</p> : null}
        {expected ? (
          <p className="quiet measure">
            What is expected is worked out from the day of sowing by the days that{" "}
            <a href={`/crops/${encodeURIComponent(variety.crop.key)}`}>{variety.crop.commonName}</a> usually takes. A
            cold spring adds weeks.
          </p>
        ) : null}
      </div>
    </Section>
  );
}
