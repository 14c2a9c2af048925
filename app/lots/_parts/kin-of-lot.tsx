import Link from "next/link";
import { LineageDrawing, type LineageLot } from "@/components/lineage";
import { dateInWords } from "@/lib/display/dates";
import { percent } from "@/lib/display/numbers";
import { listed } from "@/lib/display/plurals";
import type { KinOfLot, Kinship } from "@/lib/registry/lots/read-kin";
import type { LotRead } from "@/lib/registry/lots/read-lot";

const parentage: ReadonlySet<Kinship> = new Set(["sown for it", "mixed into it", "split from"]);

const words: Readonly<Record<Kinship, string>> = {
  "sown for it": "Grown from",
  "mixed into it": "Blended from",
  "split from": "Split from",
  "same harvest": "Of the same harvest",
  "grown from it": "Sown, and it gave",
  "blended from it": "Went into",
  "split off it": "Parted with",
};

const order: readonly Kinship[] = [
  "sown for it",
  "mixed into it",
  "split from",
  "same harvest",
  "grown from it",
  "blended from it",
  "split off it",
];

/** Where a lot comes from and what came of it: drawn, and as a list with the grow-outs between. */
export function KinOfLotPart({ read }: { read: LotRead }) {
  const { kin, lot } = read;
  const groups = order.flatMap((kinship) => {
    const own = kin.filter((each) => each.kinship === kinship);
    return own.length > 0 ? [{ kinship, own }] : [];
  });
  const parents = kin.filter((each) => each.kinship === "sown for it");
  const sown = [...new Set(parents.map((each) => each.variety))];
  const gave = (role: string) =>
    listed(parents.filter((each) => each.role === role).map((each) => `${each.number ?? "a lot"} of ${each.variety}`));
  return (
    <div className="stack">
      {kin.length > 0 ? <LineageDrawing lots={lotsToDraw(read)} title={`Lineage of lot ${lot.number}`} /> : null}
      <dl className="particulars">
        {read.lot.kind === "founder" ? (
          <>
            <dt>Comes from</dt>
            <dd>parents not on record: a founder lot</dd>
          </>
        ) : null}
        {parents.some(({ role }) => role !== null) ? (
          <>
            <dt>A cross</dt>
            <dd>
              {gave("seed parent")} gave the seed, {gave("pollen parent")} the pollen: half of the genes each.
            </dd>
          </>
        ) : sown.length > 1 ? (
          <>
            <dt>A cross</dt>
            <dd>
              of {listed(sown)}: they were sown in one grow-out. Which of them gave seed and which pollen alone is not
              on record.
            </dd>
          </>
        ) : null}
        {groups.map(({ kinship, own }) => (
          <Group key={kinship} kinship={kinship} own={own} varietyId={lot.varietyId} />
        ))}
      </dl>
    </div>
  );
}

function Group({ kinship, own, varietyId }: { kinship: Kinship; own: readonly KinOfLot[]; varietyId: string }) {
  return (
    <>
      <dt>{words[kinship]}</dt>
      {own.map((each) => (
        <dd key={`${each.growOutId ?? ""}:${each.lotId ?? ""}`}>
          <One kin={each} varietyId={varietyId} />
        </dd>
      ))}
    </>
  );
}

function One({ kin, varietyId }: { kin: KinOfLot; varietyId: string }) {
  const share = kin.share !== null && kin.share < 1 ? `, ${percent(kin.share)}` : "";
  return (
    <>
      {kin.lotId ? <Link href={`/lots/${kin.lotId}`}>{kin.number}</Link> : "no seed"}
      {kin.year ? `, ${dateInWords(kin.year)}` : ""}
      {parentage.has(kin.kinship) ? share : ""}
      {kin.varietyId === varietyId ? null : (
        <>
          , of <Link href={`/varieties/${kin.varietyId}`}>{kin.variety}</Link>
        </>
      )}
      {kin.growOutId ? (
        <>
          , grow-out <Link href={`/grow-outs/${kin.growOutId}`}>{kin.growOut}</Link>
        </>
      ) : null}
      {kin.lotId === null && kin.outcome ? `: ${kin.outcome}` : ""}
    </>
  );
}

/** The lot with its nearest kin, as far as they are lots. */
function lotsToDraw({ lot, kin, effectiveSizes }: LotRead): LineageLot[] {
  const parents = kin.filter((each) => parentage.has(each.kinship));
  const children = kin.filter((each) => !parentage.has(each.kinship) && each.kinship !== "same harvest");
  const sizeOf = (id: string) => {
    const size = effectiveSizes.get(id) ?? null;
    return size === null ? null : { low: size, high: size };
  };
  const drawn = (each: KinOfLot, from: LineageLot["parents"]): LineageLot[] =>
    each.lotId === null || each.number === null
      ? []
      : [
          {
            id: each.lotId,
            name: each.number,
            years: yearsOf(each.yearFirst, each.yearLast),
            parents: from,
            parentsLeftOut: kindOf(each.kind) !== "founder",
            kind: kindOf(each.kind),
            effectiveSize: sizeOf(each.lotId),
            href: `/lots/${each.lotId}`,
          },
        ];
  const own: LineageLot = {
    id: lot.id,
    name: lot.number,
    years: yearsOf(lot.yearFirst, lot.yearLast),
    parents: parents.flatMap((each) => (each.lotId ? [{ id: each.lotId, share: each.share }] : [])),
    kind: kindOf(lot.kind),
    effectiveSize: sizeOf(lot.id),
  };
  const all = [
    ...parents.flatMap((each) => drawn(each, [])),
    own,
    ...children.flatMap((each) => drawn(each, [{ id: lot.id, share: each.share }])),
  ];
  return [...new Map(all.map((each) => [each.id, each])).values()];
}

function yearsOf(first: string | null, last: string | null): LineageLot["years"] {
  return first === null || last === null ? null : { first: Number(first.slice(0, 4)), last: Number(last.slice(0, 4)) };
}

function kindOf(kind: string | null): LineageLot["kind"] {
  return kind === "harvest" || kind === "blend" || kind === "split" ? kind : "founder";
}
