import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { Cautions } from "@/components/cautions";
import type { SearchParameters } from "@/components/tables";
import { isEmpty } from "@/lib/registry/transfers/after-giving";
import { readGiving, readStewardsToGiveTo } from "@/lib/registry/transfers/read-giving";
import { whatToSay } from "@/lib/registry/transfers/what-to-say";
import { givingKinds } from "@/lib/schemas/transfers/transfer";
import { current } from "../../../_session/current";
import { LotPageHead } from "../../_parts/lot-page-head";
import { NothingInIt } from "../../_parts/nothing-in-it";
import { untilInWords } from "../../_words/explain-keeping";
import { unitsOf } from "../../_words/units-of";
import { GiveForm } from "./give-form";

export const metadata: Metadata = { title: "Give, lend, deposit" };

export default async function Give({
  params,
  searchParams,
}: {
  params: Promise<{ id: string }>;
  searchParams: Promise<SearchParameters>;
}) {
  const { db, settings, today } = await current("desk");
  const read = await readGiving(db, (await params).id, { settings, today });
  if (!read) notFound();
  const { kind, to } = await searchParams;
  const { jar, give, ground } = read;
  const { lot, reserve } = jar;
  if (isEmpty(ground.grams, lot.thousandSeedGrams)) {
    return (
      <div className="sheet stack">
        <LotPageHead lot={lot} title="Give, lend, deposit" />
        <NothingInIt lot={lot} act="give" />
      </div>
    );
  }
  const stewards = await readStewardsToGiveTo(db.read);
  const known = stewards.find((steward) => steward.id === to)?.name;
  const start = { kind: givingKinds.find((each) => each === kind) ?? "", on: today, unit: "g", holder: known ?? "" };
  const { thousandSeedGrams, crop } = lot;
  return (
    <div className="sheet stack">
      <LotPageHead lot={lot} title="Give, lend, deposit">
        What leaves the jar, into whose hand, and what was said with it. Before you pour: see what stays.{" "}
        <Link href={`/lots/${lot.id}#reserve`}>What is kept back, and why</Link>
      </LotPageHead>
      <Cautions step="share" {...read.toTell.seed} />
      <GiveForm
        lotId={lot.id}
        number={lot.number}
        holder={lot.holder}
        start={start}
        units={unitsOf(settings)}
        stewards={stewards}
        sayings={whatToSay(read.toTell)}
        ground={{
          ...ground,
          lot: {
            number: lot.number,
            kind: lot.kind,
            origin: lot.origin,
            status: lot.status,
            statusReason: lot.statusReason,
            treatment: lot.treatment,
            treatmentSubstance: lot.treatmentSubstance,
            tested: ground.lot.tested,
            openWarnings: ground.lot.openWarnings,
          },
        }}
        jar={{ grams: ground.grams, seeds: jar.seeds, live: jar.live, thousandSeedGrams, free: give.free }}
        seedsPerGram={{ min: crop.seedsPerGramMin, max: crop.seedsPerGramMax }}
        reserved={give.keptBack ?? (reserve.good.length <= 1 ? ground.reserveSeeds : null)}
        until={untilInWords(jar.keeping)}
      />
    </div>
  );
}
