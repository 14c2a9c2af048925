"use client";

import { LotForm } from "../../../_form/lot-form";
import { tell } from "../actions";
import { ClaimFields, claimLabels } from "../claim-fields";

/** What is told of where a lot is from. */
export function TellForm({ lotId, founder }: { lotId: string; founder: boolean }) {
  return (
    <LotForm
      draft={`lot:${lotId}:claim`}
      deed={tell.bind(null, lotId)}
      start={{}}
      labels={claimLabels}
      submit="Write it down"
      back={`/lots/${lotId}#lineage`}
      standing="It stands open beside whatever else is told, and no figure counts it. It can be put right; what was said before stays to be read."
    >
      {(field) => <ClaimFields field={field} founder={founder} />}
    </LotForm>
  );
}
