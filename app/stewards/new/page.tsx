import type { Metadata } from "next";
import { PageHead } from "@/components/frame";
import { current } from "../../_session/current";
import { RecordForm } from "../../varieties/_forms/record-form";
import { storeSteward } from "../_actions/store";
import { stewardFields } from "../_words/steward-fields";

export const metadata: Metadata = { title: "A new steward" };

export default async function NewSteward() {
  await current("desk");
  return (
    <div className="sheet stack">
      <PageHead title="A new steward" kind="Steward">
        <p className="measure">
          The name is kept apart from what they hold: a person can be erased, and “a steward” stays.
        </p>
      </PageHead>
      <RecordForm
        fields={stewardFields()}
        action={storeSteward}
        confirm="Record the steward"
        back={{ href: "/stewards", words: "Back to the stewards" }}
      />
    </div>
  );
}
