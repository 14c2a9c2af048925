import Link from "next/link";
import { Section } from "@/components/frame";
import { Explained } from "@/components/numbers";
import { ButtonLink } from "@/components/ui";
import { gradeExplanation } from "../../_neighbours/explain-grade";
import { gradeFigure, gradeSentence, gradeWaits } from "../../_neighbours/grade-words";
import { reasonWords, verdictNames } from "../../_neighbours/verdict-words";
import { neighboursOfPage } from "../neighbours/read";
import type { SectionOfGrowOut } from "./section-of-grow-out";

/** Other plantings and wild stands that could send pollen, and what the seed may claim for it. */
export async function NeighboursOfGrowOut({ read: { growOut }, units }: SectionOfGrowOut) {
  const found = await neighboursOfPage(growOut.id, "stewardship");
  if (!found) return null;
  const { read, assessment } = found;
  const at = `/grow-outs/${growOut.id}/neighbours`;
  return (
    <Section id="neighbours" title="Neighbours" aside={<Link href={at}>plot plan, flowering, methods</Link>}>
      <div className="stack">
        <Explained explanation={gradeExplanation(read, assessment, units)}>
          <p>
            <b className={gradeWaits(assessment) ? "waits" : undefined}>{gradeFigure(assessment)}</b>{" "}
            {gradeSentence(read, assessment, units)}
          </p>
        </Explained>
        {assessment.neighbours.length > 0 ? (
          <ul className="stack-near">
            {assessment.neighbours.map((each) => (
              <li key={each.neighbour.id}>
                <Link href={`${at}#sources`}>{each.neighbour.what}</Link>:{" "}
                <b className={each.verdict === "too-close" ? "waits" : undefined}>{verdictNames[each.verdict]}</b>,{" "}
                {reasonWords(each, assessment, read.ground, units).join("; ")}
              </li>
            ))}
          </ul>
        ) : null}
        <div className="row">
          <ButtonLink href={`${at}/new`}>One more neighbour</ButtonLink>
          <ButtonLink href={`${at}/looked`}>Somebody looked</ButtonLink>
        </div>
      </div>
    </Section>
  );
}
