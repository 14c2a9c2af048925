"use client";

import { Choice, TextField } from "@/components/ui";
import { LotForm } from "../../../_form/lot-form";
import { standingOptions } from "../../../_words/claim-words";
import { judge, putClaimRight } from "../actions";
import { ClaimFields, claimLabels } from "../claim-fields";

interface Props {
  readonly lotId: string;
  readonly claimId: string;
  readonly start: Readonly<Record<string, string>>;
}

/** How a claim stands, and why. */
export function JudgeForm({ lotId, claimId, start }: Props) {
  return (
    <LotForm
      draft={`claim:${claimId}:judge`}
      deed={judge.bind(null, claimId)}
      start={start}
      labels={{ standing: "How it stands", reason: "Why" }}
      submit="Let it stand so"
      back={`/lots/${lotId}#lineage`}
      standing="Its rivals stay beside it, and no figure changes. It can be judged anew at any time."
    >
      {(field) => (
        <>
          <Choice {...field("standing")} label="How it stands" options={standingOptions} required />
          <TextField {...field("reason")} label="Why" hint="what speaks for it or against it" lines={2} />
        </>
      )}
    </LotForm>
  );
}

/** A claim put right by a new one in its place. */
export function CorrectClaimForm({ lotId, claimId, start, founder }: Props & { readonly founder: boolean }) {
  return (
    <LotForm
      draft={`claim:${claimId}:correct`}
      deed={putClaimRight.bind(null, claimId)}
      start={start}
      labels={{ ...claimLabels, why: "What was wrong" }}
      submit="Put it right"
      back={`/lots/${lotId}#lineage`}
      standing="What was said before stays to be read below the new words."
    >
      {(field) => (
        <>
          <ClaimFields field={field} founder={founder} />
          <TextField {...field("why")} label="What was wrong" lines={2} required />
        </>
      )}
    </LotForm>
  );
}
