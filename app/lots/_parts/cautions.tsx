import { Notice } from "@/components/ui";
import type { LotHead } from "@/lib/registry/lots/read-head";

const harms = /toxic|poison|bitter|unsafe|burn|irritat|aflatoxin|ergot|favism|cyanogenic|gloves|children|saponin/i;
const cucurbits = /^(squash|gourd|luffa|melon|cucumber|watermelon|bitter-gourd)/;
const rawBeans = /^bean-(common|runner|lima)$/;

/** What can hurt about this very seed: the usual care, always below local rules. Nothing where nothing is known to. */
export function CautionsOfLot({ lot }: { lot: LotHead }) {
  return (
    <>
      <Treated treatment={lot.treatment} substance={lot.treatmentSubstance} />
      {lot.varietyCautions ? (
        <Notice kind="caution" title={`Care with ${lot.variety}`}>
          <p>{lot.varietyCautions}</p>
        </Notice>
      ) : null}
    </>
  );
}

/** What can hurt about any seed of its crop. */
export function CautionsOfCrop({ lot }: { lot: LotHead }) {
  const { crop } = lot;
  const bitter = cucurbits.test(crop.cropKey);
  const listed = crop.cropCautions !== null && harms.test(crop.cropCautions) && !bitter;
  return (
    <>
      {bitter ? (
        <Notice kind="caution" title="Bitter fruit">
          <p>
            Touch the tongue to every fruit that gives seed, and spit it out. A bitter one can poison, and cooking or
            sugar does not mend it: it ends this lot for seed and for food, and those who have seed of it are told. The
            taste clears the plant, not its seed: taste again in the next grow-out. Your local food rules stand above
            this.
          </p>
        </Notice>
      ) : null}
      {rawBeans.test(crop.cropKey) ? (
        <Notice kind="caution" title="A seed jar is no food jar">
          <p>
            Raw or half-cooked beans of this kind make ill, a few are enough: label the jar as seed. Cooking advice and
            your local food rules decide about eating.
          </p>
        </Notice>
      ) : listed ? (
        <Notice kind="caution" title={`Care with ${crop.commonName}`}>
          <p>
            The crop list says: {crop.cropCautions}. Keep it labelled and out of children's reach; your local rules
            stand above this.
          </p>
        </Notice>
      ) : null}
    </>
  );
}

function Treated({ treatment, substance }: { treatment: string | null; substance: string | null }) {
  if (treatment !== "chemical" && treatment !== "unknown") return null;
  return (
    <Notice
      kind="caution"
      title={
        treatment === "chemical"
          ? `Treated seed${substance ? `: ${substance}` : ""}`
          : "Perhaps treated, nobody knows with what"
      }
    >
      <p>
        Not food, not feed, not for the compost, and never on a shelf where others help themselves. Wear gloves, raise
        no dust, write it on the jar and on every packet. Your local rules say where it goes when it is discarded.
      </p>
    </Notice>
  );
}
