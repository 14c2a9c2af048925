import { expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { correctGrowOut } from "@/lib/registry/grow-outs/correct-grow-out";
import { planGrowOut } from "@/lib/registry/grow-outs/plan-grow-out";
import { putOnPlot, takeOffPlot } from "@/lib/registry/grow-outs/put-on-plot";
import { parseDate } from "@/lib/science/dates/parse-date";
import { emptyRegistry, granted } from "@/tests/setup/registry";

const owner = ownerHere();
const encoder = new TextEncoder();
const base = new Map(
  Object.entries({
    "stewards.csv": "steward\nHalda Morrow\nOsk Tarn\n",
    "varieties.csv": "variety,crop\nGrey Morrow,carrot\n",
    "grow_outs.csv": "grow_out,variety,steward,plot,parents\nK1,Grey Morrow,Halda Morrow,Low strip,M 1\n",
    "lots.csv": "lot,variety,holder,kind\nM 1,Grey Morrow,Halda Morrow,founder\nM 2,Grey Morrow,Halda Morrow,founder\n",
  }).map(([name, text]) => [name, encoder.encode(text)]),
);

/** A plan of Osk's on Halda's plot, replanted on one of his own, from two lots in unknown shares. */
async function withPlan(): Promise<Database> {
  const db = await emptyRegistry();
  granted(await importFolder(db, owner, base));
  const variety = await db.read.variety.findFirstOrThrow();
  const lots = await db.read.lot.findMany({ orderBy: { number: "asc" } });
  const plot = await db.read.plot.findFirstOrThrow();
  const plan = {
    ...{ name: "Grey 2027", purpose: "renew" as const, steward: "Osk Tarn", plantsPlanned: 90, seedParentsPlanned: 60 },
    parents: lots.map(({ id }) => ({ lot: id, share: null })),
    ...{ plot: plot.id, newPlot: null, place: null, note: "wet ground" },
  };
  const { growOutId } = granted(await planGrowOut(db, owner, variety.id, plan)).value;
  const days = { leftOn: granted(parseDate("2027-10")), fromOn: granted(parseDate("2028-03-12")), toOn: null };
  const second = { plot: null, newPlot: "Wall bed", place: "Cray", areaM2: 12, ...days };
  granted(await putOnPlot(db, owner, growOutId, second));
  return db;
}

const plotsOf = async (db: Database) =>
  (
    await db.read.growOutPlot.findMany({
      where: { growOut: { name: "Grey 2027" } },
      include: { plot: { include: { steward: { include: { person: true } } } } },
      orderBy: { id: "asc" },
    })
  ).map(({ plot, fromOn, toOn }) => [plot.name, plot.steward?.person?.name, fromOn, toOn]);

it("a plan goes out and comes in with another's plot, its own, the days on each, and lots of unknown shares", async () => {
  const first = await withPlan();
  const out = await exportFolder(first);
  const second = await emptyRegistry();
  granted(await importFolder(second, owner, out));
  const plots = [
    ["Low strip", "Halda Morrow", null, "2027-10"],
    ["Wall bed", "Osk Tarn", "2028-03-12", null],
  ];
  expect(await plotsOf(first)).toEqual(plots);
  expect(await plotsOf(second)).toEqual(plots);
  expect(await second.read.plot.count()).toBe(2);
  const parents = await second.read.growOutParent.findMany({ where: { growOut: { name: "Grey 2027" } } });
  expect(parents.map(({ share }) => share)).toEqual([null, null]);
  expect(await second.read.growOut.findUniqueOrThrow({ where: { name: "Grey 2027" } })).toMatchObject({
    ...{ plantsPlanned: 90, seedParentsPlanned: 60, purpose: "renew", note: "wet ground", sown: null },
  });
  expect(granted(await importFolder(second, owner, out)).value.nothingNew).toBe(true);
});

it("plots and parents that came later than those of a later grow-out go out in an order that comes back to the same bytes", async () => {
  const db = await withPlan();
  const [earlier, lot] = [
    await db.read.growOut.findUniqueOrThrow({ where: { name: "K1" } }),
    await db.read.lot.findFirstOrThrow({ where: { number: "M 2" } }),
  ];
  const days = { leftOn: null, fromOn: granted(parseDate("2031-04")), toOn: null };
  granted(
    await putOnPlot(db, owner, earlier.id, { plot: null, newPlot: "Top bed", place: null, areaM2: null, ...days }),
  );
  const nothing = { purpose: null, plantsPlanned: null, seedParentsPlanned: null, place: null, note: null };
  const plan = { ...nothing, name: "Later", steward: "Osk Tarn", parents: [{ lot: lot.id, share: 1 }] };
  for (const newPlot of ["Alone", "Bed of it"])
    granted(
      await planGrowOut(db, owner, earlier.varietyId, { ...plan, name: `Later ${newPlot}`, plot: null, newPlot }),
    );
  const stand = await db.read.growOutPlot.findFirstOrThrow({ where: { plot: { name: "Alone" } } });
  granted(await takeOffPlot(db, owner, stand.id));
  const sown = { parents: [{ lot: lot.id, share: null, role: "pollen parent" as const }] };
  const cross = { ...nothing, ...sown, name: "K1", steward: "Halda Morrow", sown: null, seedsSown: null, reason: "x" };
  const first = await db.read.lot.findFirstOrThrow({ where: { number: "M 1" } });
  const parents = [{ lot: first.id, share: null, role: "seed parent" as const }, ...sown.parents];
  granted(await correctGrowOut(db, owner, earlier.id, { ...cross, parents }));
  const out = await exportFolder(db);
  const second = await emptyRegistry();
  granted(await importFolder(second, owner, out));
  const again = await exportFolder(second);
  const text = (file: Uint8Array | undefined) => new TextDecoder().decode(file);
  for (const [name, file] of out) expect(text(again.get(name)), name).toBe(text(file));
});
