import { expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { claimIsolation } from "@/lib/registry/neighbours/claim-isolation";
import { readNeighbours } from "@/lib/registry/neighbours/read-neighbours";
import { recordIsolationMethod } from "@/lib/registry/neighbours/record-isolation-method";
import { recordLook } from "@/lib/registry/neighbours/record-look";
import { recordNeighbour } from "@/lib/registry/neighbours/record-neighbour";
import { recordNeighbourFlowering } from "@/lib/registry/neighbours/record-neighbour-flowering";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted } from "@/tests/setup/registry";
import { cropId, day, neighbour } from "../../neighbours/with-grow-out";

const owner = ownerHere();
const today = "2026-11-24";
const encoder = new TextEncoder();
const csv = (files: Readonly<Record<string, string>>) =>
  new Map(Object.entries(files).map(([name, text]) => [name, encoder.encode(text)]));
const texts = (files: ReadonlyMap<string, Uint8Array>) =>
  Object.fromEntries([...files].map(([name, bytes]) => [name, new TextDecoder().decode(bytes)]));

const base = csv({
  "stewards.csv": "steward\nOsk Tarn\n",
  "varieties.csv": "variety,crop\nSallow Flint,maize-field\n",
  "grow_outs.csv": "grow_out,variety,steward,plot,parents\nK1,Sallow Flint,Osk Tarn,Low strip,M 1\n",
  "lots.csv": "lot,variety,kind,from\nM 1,Sallow Flint,founder,\nM 2,Sallow Flint,harvest,K1\n",
});

onEveryEngine("what was written of neighbours", (fresh) => {
  it("goes out and comes in again: two sources alike keep their own flowering, and a note that was put right stays out", async () => {
    const first = await fresh();
    granted(await importFolder(first, owner, base));
    const growOut = await first.read.growOut.findFirstOrThrow();
    const plot = await first.read.plot.findFirstOrThrow();
    const lot = await first.read.lot.findFirstOrThrow({ where: { number: "M 2" } });
    const crop = await cropId(first, "maize-sweet");
    const notes = { organ: "pollen" as const, note: null };
    for (const [distanceMetres, on] of [
      [60, "2026-07-20"],
      [300, "2026-08-09"],
    ] as const) {
      const more = { crop, distanceMetres, bearing: "W" as const, plot: plot.id, howSure: "seen" as const };
      const { neighbourId } = granted(
        await recordNeighbour(first, owner, growOut.id, neighbour("sweet maize", more)),
      ).value;
      const saw = { ...notes, moment: "first" as const, on: day(on) };
      granted(await recordNeighbourFlowering(first, owner, neighbourId, { ...saw, on: day("2026-07") }, today));
      granted(await recordNeighbourFlowering(first, owner, neighbourId, saw, today, true));
    }
    granted(await recordLook(first, owner, growOut.id, { on: day("2026-06-12"), noneFound: false }, today));
    const method = {
      method: "barrier" as const,
      evidence: "seen" as const,
      fromOn: null,
      toOn: null,
      note: "two rows",
    };
    granted(await recordIsolationMethod(first, owner, growOut.id, method));
    const claim = { grade: "open" as const, reasons: "one source too close", lotIds: [lot.id] };
    granted(await claimIsolation(first, owner, growOut.id, claim));

    const out = await exportFolder(first);
    const written = texts(out);
    expect(written["neighbour_flowering.csv"]?.split("\r\n").slice(0, 3)).toEqual([
      "grow_out,neighbour_plot,neighbour,neighbour_number,organ,moment,on,steward,note",
      "K1,,sweet maize,1,pollen,first,2026-07-20,,",
      "K1,,sweet maize,2,pollen,first,2026-08-09,,",
    ]);

    const second = await fresh();
    granted(await importFolder(second, owner, out));
    expect(texts(await exportFolder(second))).toEqual(written);
    expect(granted(await importFolder(second, owner, out)).value.nothingNew).toBe(true);
    const again = await readNeighbours(second, (await second.read.growOut.findFirstOrThrow()).id);
    const flowering = again?.neighbours.map(({ id, distanceMetres, plot: from }) => [
      distanceMetres,
      from,
      again.notes.filter((note) => note.neighbourId === id).map((note) => note.on),
    ]);
    expect(flowering).toEqual([
      [60, "Low strip", ["2026-07-20"]],
      [300, "Low strip", ["2026-08-09"]],
    ]);
    expect([again?.ground.neighboursLookedOn, again?.methods.length]).toEqual(["2026-06-12", 1]);
    expect(again?.lots[0]).toMatchObject({ isolationGrade: "open", isolationReasons: "one source too close" });
  });

  it("a flowering note of a neighbour that nobody wrote down is refused at its row", async () => {
    const db = await fresh();
    const wrong = new Map([
      ...base,
      ...csv({
        "neighbours.csv": "grow_out,what\nK1,sweet maize\n",
        "neighbour_flowering.csv":
          "grow_out,neighbour,neighbour_number,organ,moment,on\nK1,sweet maize,1,pollen,first,2026-07-20\nK1,sweet maize,2,pollen,last,2026-07-29\n",
      }),
    ]);
    const outcome = await importFolder(db, owner, wrong);
    expect(outcome.ok ? [] : outcome.refusals.map(({ path }) => path.slice(0, 2).join(":"))).toEqual([
      "neighbour_flowering.csv:3",
    ]);
    expect(await db.read.neighbourSource.count()).toBe(0);
  });
});
