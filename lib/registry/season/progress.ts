import { mayHoldSeed } from "../varieties/holders";
import type { SeasonRecords } from "./records";
import { overdueOf } from "./rules/test-overdue";

/** How far a piece of the season's work has come, with the records that are left. */
export interface SeasonProgress {
  readonly key: "tests" | "places" | "holders" | "balances";
  readonly done: number;
  readonly of: number;
  /** those that are left, and of them those that are overdue */
  readonly left: readonly string[];
  readonly overdue: readonly string[];
}

/**
 * The season's progress: lots tested (of those that may hold seed and are not clonal; overdue by the rule of tests), varieties in two places
 * or more, stewards' holdings confirmed, lots whose balance is known. `left` and `overdue` are ids: of lots, varieties, or variety/steward.
 */
export function seasonProgress(records: SeasonRecords): SeasonProgress[] {
  const { lots, varieties, holders, today } = records;
  const holding = lots.filter(mayHoldSeed);
  const cropOf = (varietyId: string) => varieties.get(varietyId)?.crop;
  const testable = holding.filter((lot) => !cropOf(lot.varietyId)?.clonal);
  const untested = testable.filter((lot) => lot.lastTest === null);
  const overdue = testable.filter((lot) => overdueOf(lot, cropOf(lot.varietyId), today) !== null);
  const held = [...varieties.keys()].filter((id) => (holders.get(id) ?? []).length > 0);
  const single = held.filter(
    (id) => (holders.get(id) ?? []).reduce((sum, each) => sum + (each.confirmed ? each.places : 0), 0) < 2,
  );
  const holdings = held.flatMap((id) =>
    (holders.get(id) ?? [])
      .filter((each) => each.stewardId !== null)
      .map((each) => ({ id: `${id}/${each.stewardId}`, each })),
  );
  const unconfirmed = holdings.filter(({ each }) => !each.confirmed);
  const unknown = holding.filter((lot) => lot.gramsOnHand === null && lot.entries === 0);
  const ids = (some: readonly { id: string }[]) => some.map(({ id }) => id);
  const progress = (key: SeasonProgress["key"], of: number, left: string[], late: string[] = []) => ({
    key,
    done: of - left.length,
    of,
    left,
    overdue: late,
  });
  return [
    progress("tests", testable.length, ids(untested), ids(overdue)),
    progress("balances", holding.length, ids(unknown)),
    progress("places", held.length, single),
    progress("holders", holdings.length, ids(unconfirmed)),
  ];
}
