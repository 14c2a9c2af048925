import { dateInWords } from "@/lib/display/dates";
import type { TestOfLot } from "@/lib/registry/germination-tests/tests-of-lot";
import type { TransferRead } from "@/lib/registry/transfers/read-transfer";
import { groupedLabelCode } from "@/lib/science/codes/label-code";

/** What stands on a slip. No name of a person, no contact, no exact place. */
export interface SlipWords {
  readonly number: string;
  /** the lot that it is part of; null where it kept its number */
  readonly was: string | null;
  readonly code: string;
  readonly harvest: string;
  /** seeds in it, where it was weighed and the lot's own seed weight is known */
  readonly seeds: number | null;
  readonly test: {
    readonly sown: number;
    readonly normal: number;
    readonly on: string;
    readonly range: { readonly low: number; readonly high: number } | null;
  } | null;
  readonly from: string;
  readonly told: readonly string[];
  readonly promised: readonly string[];
  /** in large: what it must never be taken for */
  readonly caution: string | null;
}

/** The words of a slip from a transfer and the tests of its lot; the last counted test stands for how it comes up. */
export function slipWords(read: TransferRead, tests: readonly TestOfLot[]): SlipWords {
  const { transfer, lot, newNumber, newCode, promises } = read;
  const last = tests.filter((test) => test.totals.counted).at(-1);
  return {
    number: newNumber ?? lot.number,
    was: newNumber === null ? null : lot.number,
    code: groupedLabelCode(newCode ?? lot.code),
    seeds:
      transfer.unit === "g" && transfer.amount !== null && lot.thousandSeedGrams !== null
        ? (transfer.amount / lot.thousandSeedGrams) * 1000
        : null,
    harvest: lot.year === null ? "year unknown" : dateInWords(lot.year),
    test: last
      ? { sown: last.totals.sown, normal: last.totals.sums.normal ?? 0, on: last.on, range: last.germination }
      : null,
    from: whereFrom(read),
    told: transfer.told?.split("\n").filter(Boolean) ?? [],
    promised: promises.map((promise) =>
      promise.due === null ? promise.words : `${promise.words} (${dateInWords(promise.due)})`,
    ),
    caution:
      lot.treatment === "chemical"
        ? "TREATED SEED: NOT FOOD, NOT FEED"
        : lot.treatment === "unknown"
          ? "PERHAPS TREATED: NOT FOOD, NOT FEED"
          : null,
  };
}

/** A library or genebank by its name, which is nobody's own; a person only as a steward of a village. */
function whereFrom({ lot, from, fromKind, fromPlace }: TransferRead): string {
  const place = fromPlace === null ? "" : `, ${fromPlace}`;
  const hand =
    from !== null && (fromKind === "library" || fromKind === "genebank") ? `${from}${place}` : `a steward${place}`;
  const origin = origins[lot.kind];
  return origin === undefined ? hand : `${hand}; ${origin}`;
}

const origins: Readonly<Record<string, string>> = {
  founder: "its parents are unknown before there",
  harvest: "harvested from a grow-out on record",
  blend: "mixed of several lots",
};
