import { uuidv7 } from "uuidv7";
import type { GrowOutRow } from "@/lib/schemas/notebook/rows";
import type { ChangeWriter } from "../change-set/writer";
import { foldName, sameName } from "../names/fold-name";
import type { TableDifference } from "./difference";
import { type Ids, idIfKnown, idOf, stated, storedExtra } from "./ids";

/** Grow-outs with their plots. Their parents follow when the lots stand (see apply-lots). */
export async function applyGrowOuts(
  change: ChangeWriter,
  { added, changed }: TableDifference<"growOuts">,
  ids: Ids,
): Promise<void> {
  const made = added.map((row) => ({ row, id: uuidv7() }));
  await change.createAll(
    "GrowOut",
    made.map(({ row, id }) => ({
      id,
      name: sameName(row.cells.grow_out),
      nameKey: foldName(row.cells.grow_out),
      ...fieldsOf(row, ids),
    })),
  );
  for (const { row, id } of made) ids.growOuts.set(sameName(row.cells.grow_out), id);
  await change.updateMany(
    "GrowOut",
    changed.map(({ row, id }) => ({ id, patch: restated(fieldsOf(row, ids)) })),
  );
  await applyPlots(change, [...made, ...changed], ids);
}

function fieldsOf({ cells, extra }: GrowOutRow, ids: Ids) {
  const shares = cells.seed_shares;
  return {
    varietyId: idOf(ids.varieties, cells.variety),
    stewardId: idIfKnown(ids.stewards, cells.steward),
    sown: cells.sown?.text ?? null,
    sownFirst: cells.sown?.first ?? null,
    sownLast: cells.sown?.last ?? null,
    seedsSown: cells.seeds_sown,
    plantsStanding: cells.plants_standing,
    malesStanding: cells.males_standing,
    roguedBeforePollen: cells.rogued_before_pollen,
    roguedAfterPollen: cells.rogued_after_pollen,
    seedParents: cells.seed_parents,
    seedShares: typeof shares === "object" && shares !== null ? "cv" : shares,
    seedSharesCv: typeof shares === "object" && shares !== null ? shares.cv : null,
    selfingRate: cells.selfing_rate,
    foreignPollen: cells.foreign_pollen,
    outcome: cells.outcome,
    extra: storedExtra(extra),
  };
}

/** A new way of sharing takes its coefficient with it, also where it has none. */
function restated(fields: ReturnType<typeof fieldsOf>) {
  return { ...stated(fields), ...(fields.seedShares === null ? {} : { seedSharesCv: fields.seedSharesCv }) };
}

/** A plot is known by its steward and name. */
async function applyPlots(
  change: ChangeWriter,
  rows: readonly { row: GrowOutRow; id: string }[],
  ids: Ids,
): Promise<void> {
  const keyOf = (stewardId: string | null, name: string) => `${stewardId ?? ""} ${foldName(name)}`;
  const plots = new Map((await change.tx.plot.findMany()).map((plot) => [keyOf(plot.stewardId, plot.name), plot.id]));
  const stands = await change.tx.growOutPlot.findMany({
    select: { id: true, growOutId: true, plotId: true },
    orderBy: { id: "asc" },
  });
  const made: { id: string; name: string; nameKey: string; stewardId: string | null }[] = [];
  const links: { id: string; growOutId: string; plotId: string }[] = [];
  const moved: { id: string; patch: { plotId: string } }[] = [];
  for (const { row, id } of rows) {
    const name = row.cells.plot;
    if (name === null) continue;
    const stewardId = idIfKnown(ids.stewards, row.cells.steward);
    const key = keyOf(stewardId, name);
    let plotId = plots.get(key);
    if (!plotId) {
      plotId = uuidv7();
      plots.set(key, plotId);
      made.push({ id: plotId, name: sameName(name), nameKey: foldName(name), stewardId });
    }
    const own = stands.filter((each) => each.growOutId === id);
    const [standing] = own;
    if (own.some((each) => each.plotId === plotId)) continue;
    if (!standing) links.push({ id: uuidv7(), growOutId: id, plotId });
    else moved.push({ id: standing.id, patch: { plotId } });
  }
  await change.createAll("Plot", made);
  await change.createAll("GrowOutPlot", links);
  await change.updateMany("GrowOutPlot", moved);
}
