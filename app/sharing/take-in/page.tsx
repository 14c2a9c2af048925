import type { Metadata } from "next";
import { Cautions } from "@/components/cautions";
import { PageHead } from "@/components/frame";
import type { SearchParameters } from "@/components/tables";
import { readTakingIn } from "@/lib/registry/transfers/read-taking-in";
import { takingKinds } from "@/lib/schemas/transfers/transfer";
import { current } from "../../_session/current";
import { OfRecord } from "../../_session/of-record";
import { unitsOf } from "../../lots/_words/units-of";
import { TakeInForm } from "./take-in-form";

export const metadata: Metadata = { title: "Take seed in" };

export default async function TakeIn({ searchParams }: { searchParams: Promise<SearchParameters> }) {
  const { db, settings, today } = await current("desk");
  const asked = await searchParams;
  const one = (name: string) => (typeof asked[name] === "string" ? asked[name] : null);
  const read = await readTakingIn(db, { answers: one("answers"), exchange: one("exchange"), variety: one("variety") });
  const { answered, start } = read;
  const kind = takingKinds.find((each) => each === one("kind")) ?? (answered ? "return" : "");
  const page = (
    <div className="sheet stack">
      <PageHead title="Take seed in">
        <p className="measure">
          While the giver is here and talking: write the story down at once, in their words. The seed gets a number of
          its own and stands in quarantine: never into the home jar on day one. It is grown apart and compared, then you
          decide.
        </p>
      </PageHead>
      <Cautions step="jar" treatment="unknown" />
      <TakeInForm
        key={answered?.id ?? start.variety}
        start={{ kind, on: today, unit: "g", keepsPromise: answered ? "yes" : "", ...start }}
        answered={answered}
        varieties={read.varieties}
        stewards={read.stewards}
        weightUnit={unitsOf(settings).weight}
      />
    </div>
  );
  const transferId = one("answers") ?? one("exchange");
  return transferId === null ? (
    page
  ) : (
    <OfRecord page="/sharing/[id]" id={transferId}>
      {page}
    </OfRecord>
  );
}
