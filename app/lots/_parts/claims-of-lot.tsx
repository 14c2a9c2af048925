import Link from "next/link";
import { Way } from "@/components/ui/offered";
import { counted } from "@/lib/display/plurals";
import type { StandingClaim } from "@/lib/registry/claims/read-claims";
import type { LotRead } from "@/lib/registry/lots/read-lot";
import { claimInShort, standsInWords, toldBy } from "../_words/claim-words";
import styles from "./claims.module.css";

/** What is told of where a lot is from, beside what is on record: rival claims stand side by side, those set aside last. */
export function ClaimsOfLot({ read: { lot, claims } }: { read: LotRead }) {
  const own = claims.filter(({ of }) => of === "this lot");
  const others = claims.filter(({ of }) => of === "another");
  return (
    <section className="stack" aria-labelledby="claims-title">
      <h3 id="claims-title" className={styles.title}>
        What is told of where it is from
      </h3>
      {own.length === 0 ? (
        <p className="quiet">
          {lot.kind === "founder"
            ? "Nobody has told where it was before, nor that nothing is known before here."
            : "Nobody has told anything beside the records."}
        </p>
      ) : (
        <>
          <p className="measure quiet">
            {own.length > 1 ? "They stand side by side until somebody can tell. " : ""}
            No figure counts what is only told.
          </p>
          <ul className={styles.claims}>
            {own.map((claim) => (
              <li key={claim.id} id={`claim-${claim.id}`} className={styles.claim} data-standing={claim.standing}>
                <Claim claim={claim} />
              </li>
            ))}
          </ul>
        </>
      )}
      {others.length > 0 ? (
        <ul className="stack-near">
          {others.map((claim) => (
            <li key={claim.id}>
              Of lot <Link href={`/lots/${claim.lotId}#claim-${claim.id}`}>{claim.lot}</Link> it is told that{" "}
              {claim.kind === "same as" ? "it is the same seed as this" : "it descends from this one"} ({claim.standing}
              ).
            </li>
          ))}
        </ul>
      ) : null}
      <p className="not-on-paper">
        <Way href={`/lots/${lot.id}/claims/new`}>Write down what is told of it</Way>
      </p>
    </section>
  );
}

function Claim({ claim }: { claim: StandingClaim }) {
  return (
    <>
      <p className={styles.short}>
        {claim.parentLotId ? (
          <Link href={`/lots/${claim.parentLotId}`}>{claimInShort(claim)}</Link>
        ) : (
          claimInShort(claim)
        )}
      </p>
      <blockquote>{claim.words}</blockquote>
      {claim.story ? <p className="told">{claim.story}</p> : null}
      <p className="counts quiet">{toldBy(claim)}</p>
      <p className="counts">
        {standsInWords(claim)}{" "}
        <Way className="not-on-paper" href={`/lots/${claim.lotId}/claims/${claim.id}`}>
          judge it or put it right
        </Way>
      </p>
      {claim.before.length > 0 ? (
        <details className="whole-on-paper">
          <summary>put right {counted(claim.before.length, "time")}; said before</summary>
          {claim.before.map((before) => (
            <p key={before.id} className="quiet">
              {claimInShort(before)}: “{before.words}”, {toldBy(before)}
            </p>
          ))}
        </details>
      ) : null}
    </>
  );
}
