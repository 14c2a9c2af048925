import Link from "next/link";
import { PageHead } from "@/components/frame";
import { Figure } from "@/components/numbers";
import { SeedCoat } from "@/components/seed-coat";
import { dateInWords } from "@/lib/display/dates";
import { plainNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import type { ReadTest } from "@/lib/registry/germination-tests/read-germination-test";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { betweenInAHundred, standardInWords, upWord } from "../../_words/reading-in-words";
import { germinationExplanation } from "./explanations";

/** The test, its lot, and its one figure with its sentence. */
export function TestHead({ read }: { read: ReadTest }) {
  const { test, lot, result, totals } = read;
  const { variety } = lot;
  return (
    <PageHead
      kind={
        <>
          Germination test of <Link href={`/varieties/${variety.id}`}>{variety.name}</Link>, lot{" "}
          <Link href={`/lots/${lot.id}`}>{lot.number}</Link>
        </>
      }
      title={test.name}
      mark={<SeedCoat name={variety.name} coat={storedSeedCoat(variety.seedCoat)} crop={variety.crop.key} size={44} />}
      figure={
        result ? (
          <Figure
            value={`${plainNumber(result.normal)} of ${plainNumber(result.sown)}`}
            explanation={germinationExplanation(read, result)}
          >
            {upWord(test.basis)}
            {totals.stage === "running" ? " so far" : ""}: {betweenInAHundred(result.exact)}.{" "}
            {totals.stage === "final" && result.standard ? standardInWords(result.standard) : ""}
          </Figure>
        ) : (
          <Figure value="not counted yet" waiting>
            {counted(totals.sown, "seed")} laid out {dateInWords(test.on)}.
          </Figure>
        )
      }
    >
      <p className="quiet">
        Set up {dateInWords(test.on)}. A home test; it is not an official one, and nobody else’s rule is met by it.
      </p>
    </PageHead>
  );
}
