import { beforeEach, expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { endGrowOut, endOfOutcome } from "@/lib/registry/grow-outs/end-grow-out";
import { correctPlotDates, putOnPlot, takeOffPlot } from "@/lib/registry/grow-outs/put-on-plot";
import type { EndGrowOutInput } from "@/lib/schemas/grow-outs/end-grow-out";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { aLot } from "../lots/lots-in-tests";
import { aGrowOut, on } from "./a-grow-out";

const owner = ownerHere();
let db: Database;
let id: string;

beforeEach(async () => {
  db = await emptyRegistry();
  id = await aGrowOut(db, { cropKey: "carrot", name: "Cray 2026" });
});

const nowhere = { plot: null, newPlot: null, place: null, areaM2: null, fromOn: null, toOn: null, leftOn: null };
const codes = (outcome: { ok: boolean; refusals?: readonly { code: string; path: readonly unknown[] }[] }) =>
  (outcome.refusals ?? []).map(({ code, path }) => [code, path.join(".")]);
const stands = async () =>
  (
    await db.read.growOutPlot.findMany({ where: { growOutId: id }, include: { plot: true }, orderBy: { id: "asc" } })
  ).map(({ plot, fromOn, toOn }) => [plot.name, fromOn, toOn]);

it("roots that are replanted stand on a second plot, and left the first", async () => {
  granted(await putOnPlot(db, owner, id, { ...nowhere, newPlot: "Low bed", fromOn: on("2026-05-01") }));
  const second = { ...nowhere, newPlot: "Wall bed", place: "Cray", leftOn: on("2026-10-20"), fromOn: on("2027-03") };
  granted(await putOnPlot(db, owner, id, second));
  expect(await stands()).toEqual([
    ["Low bed", "2026-05-01", "2026-10-20"],
    ["Wall bed", "2027-03", null],
  ]);
});

it("a plot is named, is not stood on twice, and days keep their order", async () => {
  expect(codes(await putOnPlot(db, owner, id, nowhere))).toEqual([["missing", "plot"]]);
  const first = granted(await putOnPlot(db, owner, id, { ...nowhere, newPlot: "Low bed" })).value;
  const [plot] = await db.read.plot.findMany();
  expect(codes(await putOnPlot(db, owner, id, { ...nowhere, plot: plot?.id ?? "" }))).toEqual([
    ["on-it-already", "plot"],
  ]);
  expect(codes(await putOnPlot(db, owner, id, { ...nowhere, newPlot: "low  bed" }))).toEqual([
    ["name-taken", "newPlot"],
  ]);
  expect(codes(await putOnPlot(db, owner, id, { ...nowhere, plot: plot?.id ?? "", newPlot: "x" }))).toEqual([
    ["two-plots", "newPlot"],
  ]);
  const back = { ...nowhere, newPlot: "Wall bed", fromOn: on("2026-09-01"), leftOn: on("2026-10-20") };
  expect(codes(await putOnPlot(db, owner, id, back))).toEqual([["out-of-order", "leftOn"]]);
  const days = { fromOn: on("2026-06-01"), toOn: on("2026-05-01") };
  expect(codes(await correctPlotDates(db, owner, first.growOutPlotId, days))).toEqual([["out-of-order", "toOn"]]);
  granted(await correctPlotDates(db, owner, first.growOutPlotId, { fromOn: on("2026-05"), toOn: null }));
  expect(await stands()).toEqual([["Low bed", "2026-05", null]]);
  // Nothing of a refused entry was stored.
  expect(await db.read.plot.count()).toBe(1);
  granted(await takeOffPlot(db, owner, first.growOutPlotId));
  expect(await stands()).toEqual([]);
  expect(await db.read.plot.count()).toBe(1);
});

const end = (input: Partial<EndGrowOutInput>) =>
  endGrowOut(db, owner, id, { end: "failed", endedOn: null, cause: null, ...input });
const written = () => db.read.growOut.findUniqueOrThrow({ where: { id }, select: { outcome: true, endedOn: true } });

it("a failure is kept with its cause, and can be said to stand again", async () => {
  expect(codes(await end({}))).toEqual([["missing", "cause"]]);
  granted(await end({ cause: "hail, all of it", endedOn: on("2026-07") }));
  expect(await written()).toEqual({ outcome: "failed: hail, all of it", endedOn: "2026-07" });
  expect(endOfOutcome((await written()).outcome)).toEqual({ end: "failed", cause: "hail, all of it" });
  granted(await end({ end: "stands" }));
  expect(await written()).toEqual({ outcome: null, endedOn: null });
  expect(codes(await end({ end: "stands" }))).toEqual([["not-over", "end"]]);
});

it("one that gave seed ends on a day, with nothing to say of why none came", async () => {
  expect(codes(await end({ end: "seed kept" }))).toEqual([["missing", "endedOn"]]);
  const bare = granted(await end({ end: "seed kept", endedOn: on("2027-10-01") })).value;
  expect(bare.warnings.map(({ code }) => code)).toEqual(["no-lot"]);
  expect(await written()).toEqual({ outcome: null, endedOn: "2027-10-01" });
  const { varietyId } = await db.read.growOut.findUniqueOrThrow({ where: { id } });
  await aLot(db, varietyId, { number: "Cray 1", kind: "harvest", growOutId: id });
  expect(granted(await end({ end: "seed kept", endedOn: on("2027-10-01") })).value.warnings).toEqual([]);
  expect(granted(await end({ cause: "rust" })).value.warnings.map(({ code }) => code)).toEqual(["lots-stand"]);
});

it("does not end before it was sown, and was sown if it was", async () => {
  expect(codes(await end({ cause: "hail", endedOn: on("2026-04-30") }))).toEqual([["out-of-order", "endedOn"]]);
  granted(await end({ cause: "hail", endedOn: on("2026") }));
  expect(codes(await end({ end: "not sown", cause: "no room" }))).toEqual([["was-sown", "end"]]);
});

it("an outcome in a notebook's other words stays as it is", () => {
  expect(endOfOutcome("eaten by deer")).toBeNull();
  expect(endOfOutcome("failed; frost")).toEqual({ end: "failed", cause: "frost" });
  expect(endOfOutcome(null)).toBeNull();
});
