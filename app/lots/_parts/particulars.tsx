import Link from "next/link";
import type { ReactNode } from "react";
import { dateInWords } from "@/lib/display/dates";
import { plainNumber } from "@/lib/display/numbers";
import type { LotHead } from "@/lib/registry/lots/read-head";
import { groupedLabelCode } from "@/lib/science/codes/label-code";
import {
  identityOptions,
  isolationOptions,
  lineOptions,
  originOptions,
  statusOptions,
  treatmentOptions,
} from "../_words/choices";

/** What is written of a lot itself, as on the label of a herbarium sheet. */
export function Particulars({ lot }: { lot: LotHead }) {
  const rows: [string, ReactNode][] = [
    ["Lot number", lot.number],
    [
      "Label code",
      <span key="code" className="counts">
        {groupedLabelCode(lot.code)}
      </span>,
    ],
    [
      "Variety",
      <Link key="variety" href={`/varieties/${lot.varietyId}`}>
        {lot.variety}
      </Link>,
    ],
    [
      "Crop",
      <Link key="crop" href={`/crops/${lot.crop.cropKey}`}>
        {lot.crop.commonName}
      </Link>,
    ],
    ["Strain", lot.strain],
    ["Holder", lot.holder ?? "not known"],
    ["Harvest", lot.year === null ? "year not known" : dateInWords(lot.year)],
    ["As it was told", lot.yearWords],
    ["Where from", originOf(lot)],
    ["One line or many", wordsOf(lineOptions, lot.founderLines)],
    ["Inbreeding, as worked out", lot.inbreeding === null ? null : plainNumber(lot.inbreeding, 3)],
    ["Giver's number", lot.donorNumber],
    ["How sure the name is", wordsOf(identityOptions, lot.identityGrade)],
    ["How it stands", statusOf(lot)],
    ["Treated", treatmentOf(lot)],
    ["Isolation", isolationOf(lot)],
    ["Crop list says", lot.crop.cropCautions],
  ];
  return (
    <dl className="particulars">
      {rows.map(([name, value]) =>
        value === null || value === undefined || value === "" ? null : (
          <Row key={name} name={name}>
            {value}
          </Row>
        ),
      )}
    </dl>
  );
}

function Row({ name, children }: { name: string; children: ReactNode }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </>
  );
}

function originOf(lot: LotHead): ReactNode {
  if (lot.growOutId) {
    return (
      <>
        harvested from grow-out <Link href={`/grow-outs/${lot.growOutId}`}>{lot.growOut}</Link>
      </>
    );
  }
  if (lot.kind === "blend") return "blended from lots on record";
  if (lot.kind === "split") return "split from a lot on record";
  const told = originOptions.find((option) => option.value === lot.origin)?.words ?? lot.origin;
  return told ? `${told}; parents not on record` : "a founder lot: parents not on record";
}

function statusOf({ status, statusReason }: LotHead): string | null {
  const words = wordsOf(statusOptions, status);
  return words && statusReason ? `${words}: ${statusReason}` : words;
}

function treatmentOf({ treatment, treatmentSubstance }: LotHead): string | null {
  const words = wordsOf(treatmentOptions, treatment);
  return words && treatmentSubstance ? `${words}: ${treatmentSubstance}` : words;
}

/** What the lot claims, why, and the neighbours that it was judged by, where they are on record. */
function isolationOf({ isolationGrade, isolationReasons, growOutId }: LotHead): ReactNode {
  const words = wordsOf(isolationOptions, isolationGrade);
  const neighbours = growOutId ? (
    <Link href={`/grow-outs/${growOutId}/neighbours`}>neighbours of its grow-out</Link>
  ) : null;
  if (!words) return neighbours === null ? null : <>nothing claimed yet; see the {neighbours}</>;
  return (
    <>
      {words}
      {isolationReasons ? `. ${isolationReasons}` : ""}
      {neighbours ? <> See the {neighbours}.</> : null}
    </>
  );
}

function wordsOf(options: readonly { value: string; words: string }[], value: string | null): string | null {
  return value === null ? null : (options.find((option) => option.value === value)?.words ?? value);
}
