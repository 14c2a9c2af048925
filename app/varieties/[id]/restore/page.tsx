import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead, Section } from "@/components/frame";
import { Figure } from "@/components/numbers";
import { SeedCoat } from "@/components/seed-coat";
import { ButtonLink, Notice } from "@/components/ui";
import { percent, wholeNumber } from "@/lib/display/numbers";
import { counted, listed } from "@/lib/display/plurals";
import { type LotToRestoreWith, type RestoreGround, readRestore } from "@/lib/registry/varieties/read-restore";
import { keptOutByForeignAlone, type RestoreAdvice, restoreAdvice } from "@/lib/registry/varieties/restore-advice";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../../_session/current";
import { unitsOf } from "../../../lots/_words/units-of";
import { whyNotKept } from "../../_words/kept-words";
import { Ways } from "../_components/ways";
import { varietyOfPage } from "../read";
import { KinshipTable, mostInTable } from "./_components/kinship-table";
import { LeftOut } from "./_components/left-out";
import { WhoToAsk } from "./_components/who-to-ask";
import { type RestoreAsked, restoreAsked } from "./_words/asked";
import { adviceExplanation, nothingInWords } from "./_words/explain-advice";

export const metadata: Metadata = { title: "Restoring it" };

type Parameters = {
  params: Promise<{ id: string }>;
  searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
};

export default async function RestorePage({ params, searchParams }: Parameters) {
  const { db, settings, today } = await current();
  const { id } = await params;
  const read = await varietyOfPage(id);
  if (!read) notFound();
  const { variety, crop } = read;
  const ground = crop.clonal ? null : await readRestore(db, read, { settings, today });
  const asked = ground && restoreAsked(await searchParams, ground);
  const lots = asked && asked.although !== "" ? asked.also : new Set<string>();
  const advice = ground && asked ? restoreAdvice(ground, asked.seeds, { lots, foreign: asked.foreign }) : null;
  const none = whyNone(ground);
  return (
    <div className="sheet stack">
      <PageHead
        title="Restoring it"
        kind={<Link href={`/varieties/${id}`}>{variety.name}</Link>}
        mark={<SeedCoat name={variety.name} crop={crop.key} coat={storedSeedCoat(variety.seedCoat)} size={56} />}
        figure={
          none || !ground || !advice ? (
            <Figure value={none?.value ?? "No such figure"}>{none?.sentence ?? whyNotKept("clonal")}</Figure>
          ) : (
            <AdviceFigure advice={advice} ground={ground} />
          )
        }
      />
      <Ways varietyId={id} here="restore" />
      {!none && ground && advice && asked ? (
        <Body varietyId={id} ground={ground} advice={advice} asked={asked} units={unitsOf(settings)} />
      ) : null}
    </div>
  );
}

/** Why nothing can be advised of the whole variety. */
function whyNone(ground: RestoreGround | null): { value: string; sentence: string } | null {
  if (ground === null) return null;
  if (ground.lots.length === 0)
    return { value: "No seed", sentence: "of it is left on record. Enter the jar that you have, or ask for seed." };
  const all = (standing: LotToRestoreWith["standing"]) => ground.lots.every((lot) => lot.standing === standing);
  if (all("uniform")) return { value: "Uniform", sentence: `${whyNotKept("uniform")} A blend would restore nothing.` };
  if (all("lines not known")) return { value: "Unknown", sentence: whyNotKept("lines not known") ?? "" };
  return null;
}

function AdviceFigure({ advice, ground }: { advice: RestoreAdvice; ground: RestoreGround }) {
  const { nothing, best, kept, parts, seeds } = advice;
  if (nothing !== null)
    return (
      <Figure value="No mix helps" waiting={nothing === "no lot can be used"}>
        {nothingInWords(nothing, best?.lot ?? null)}
        {best ? ` Lot ${best.lot.number} alone keeps ${percent(best.kept)}.` : ""}
      </Figure>
    );
  const few = best?.lot.canGive ?? 0;
  const own = advice.among.some(({ foreign }) => foreign) ? "variety’s own" : "founders’";
  return (
    <Figure value={percent(kept)} explanation={adviceExplanation(advice, ground)}>
      of the {own} diversity would be in a mix of {counted(parts.length, "lot")}. Lot {best?.lot.number} alone, the best
      of them, keeps {percent(best?.kept ?? null)}
      {best && few < seeds ? `, but can give no more than ${counted(few, "living seed")}.` : "."}
    </Figure>
  );
}

function Body({
  varietyId,
  ground,
  advice,
  asked,
  units,
}: {
  varietyId: string;
  ground: RestoreGround;
  advice: RestoreAdvice;
  asked: RestoreAsked;
  units: ReturnType<typeof unitsOf>;
}) {
  const { parts, among, near, seeds, mostSeeds, nothing } = advice;
  const inMix = new Set(parts.map(({ lot }) => lot.id));
  const shown = [...among].sort((a, b) => Number(inMix.has(b.id)) - Number(inMix.has(a.id))).slice(0, mostInTable);
  const brought = among.filter(({ against }) =>
    against.some(({ code }) => code !== "foreign-pollen" || !asked.foreign),
  );
  const crossed = asked.foreign ? [] : keptOutByForeignAlone(ground.lots);
  const founders = [...new Set(among.flatMap((lot) => lot.founders))];
  return (
    <>
      {brought.length > 0 ? (
        <Notice kind="waiting" title="Against what stands there">
          {brought.map((lot) => (
            <p key={lot.id}>
              Lot {lot.number} {listed(lot.against.map(({ words }) => words))}. It is taken all the same:{" "}
              {asked.although}.
            </p>
          ))}
        </Notice>
      ) : null}
      {crossed.length > 0 ? (
        <Notice
          title="Left out for foreign pollen"
          actions={<ButtonLink href="?foreign=yes">Compare {crossed.length === 1 ? "it" : "them"}, too</ButtonLink>}
        >
          <p>
            {counted(crossed.length, "lot")} had foreign pollen somewhere up the line and nothing else against{" "}
            {crossed.length === 1 ? "it" : "them"}. Foreign genes make kin look strange, so such lots are compared by
            their native genes alone.
          </p>
        </Notice>
      ) : null}
      {nothing === null ? <WhoToAsk advice={advice} varietyId={varietyId} units={units} /> : null}
      {nothing === null && seeds < asked.seeds ? (
        <p>
          Together they can give {wholeNumber(mostSeeds)} living seeds above what their holders keep back, not{" "}
          {wholeNumber(asked.seeds)}: the mix is reckoned for these.
        </p>
      ) : null}
      {shown.length > 1 && near ? (
        <Section id="kinship" title="Kinship">
          <div className="stack">
            <KinshipTable lots={shown} among={among} near={near} />
            {among.length > shown.length ? (
              <p className="quiet">{among.length - shown.length} more were compared.</p>
            ) : null}
            {founders.length > 1 ? (
              <p>
                Lots of different founders ({listed(founders)}) look far from each other. If these founders were kin,
                such a mix adds less than it says: write down how near they are where somebody knows.
              </p>
            ) : null}
          </div>
        </Section>
      ) : null}
      <Section id="among" title="Chosen among">
        <div className="stack">
          <p>
            {among.length === 0
              ? "No lot is left to choose among."
              : `${listed(among.map(({ number }) => number))}: ${amongWords(among, brought.length > 0)}.`}
            {ground.leftOut > 0 ? ` ${counted(ground.leftOut, "older lot")} were not compared.` : ""}
          </p>
          <LeftOut lots={ground.lots} asked={asked} />
        </div>
      </Section>
    </>
  );
}

/** Why these lots can be chosen among. */
function amongWords(among: RestoreAdvice["among"], overruled: boolean): string {
  const tested = among.every(({ lifeAssumed }) => !lifeAssumed) ? "tested, weighed" : "weighed";
  const them = among.length === 1 ? "it" : "them";
  const foreign = among.some((lot) => lot.foreign) ? " but foreign pollen up the line" : "";
  return `${tested}, and nothing${foreign} stands against ${them}${overruled ? " that was not overruled" : ""}`;
}
