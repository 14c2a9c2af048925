import { describe, expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { setOwnValue } from "@/lib/registry/crops/set-own-value";
import { assessNeighbours } from "@/lib/registry/neighbours/assess-neighbours";
import { claimIsolation } from "@/lib/registry/neighbours/claim-isolation";
import { readNeighbours } from "@/lib/registry/neighbours/read-neighbours";
import {
  correctIsolationMethod,
  recordIsolationMethod,
  removeIsolationMethod,
} from "@/lib/registry/neighbours/record-isolation-method";
import { recordLook, takeLookBack } from "@/lib/registry/neighbours/record-look";
import { correctNeighbour, recordNeighbour, removeNeighbour } from "@/lib/registry/neighbours/record-neighbour";
import { recordNeighbourFlowering } from "@/lib/registry/neighbours/record-neighbour-flowering";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted } from "@/tests/setup/registry";
import { aLot, aVariety } from "../lots/lots-in-tests";
import { aGrowOut, cropId, day, neighbour } from "./with-grow-out";

const owner = ownerHere();
const today = "2026-11-24";
type Refusable = { ok: true } | { ok: false; refusals: readonly { code: string; path: readonly unknown[] }[] };
const faults = (outcome: Refusable) => (outcome.ok ? [] : outcome.refusals.map((each) => `${each.code} ${each.path}`));

async function assessed(db: Database, growOutId: string, purpose: "home" | "stewardship" = "stewardship") {
  const read = await readNeighbours(db, growOutId);
  if (!read) throw new Error("no grow-out");
  return { read, ...assessNeighbours(read, { purpose, hemisphere: "north" }) };
}

onEveryEngine("neighbours of a grow-out", (fresh) => {
  it("nobody looked is unknown; looked and none found is isolated; the look can be taken back", async () => {
    const db = await fresh();
    const { growOutId } = await aGrowOut(db);
    expect((await assessed(db, growOutId)).grade).toEqual({ grade: "unknown", reasons: ["nobody-looked"] });
    const look = { on: day("2026-06-12"), noneFound: true };
    granted(await recordLook(db, owner, growOutId, look, today));
    expect((await assessed(db, growOutId)).grade).toEqual({ grade: "isolated", reasons: ["none-found"] });
    granted(await takeLookBack(db, owner, growOutId));
    expect((await assessed(db, growOutId)).grade.grade).toBe("unknown");
    expect(faults(await recordLook(db, owner, growOutId, { on: day("2027"), noneFound: false }, today))).toEqual([
      "not-yet on",
    ]);
    expect(faults(await recordLook(db, owner, "none", look, today))).toEqual(["unknown growOut"]);
  });

  it("a sweet maize at 60 m is too close to keep field maize, marginal at home, ok with an own value", async () => {
    const db = await fresh();
    const { growOutId } = await aGrowOut(db);
    const crop = await cropId(db, "maize-sweet");
    const more = { crop, distanceMetres: 60, bearing: "NE" as const, sizeM2: 36 };
    granted(await recordNeighbour(db, owner, growOutId, neighbour("sweet maize", more)));
    granted(await recordLook(db, owner, growOutId, { on: day("2026-06"), noneFound: false }, today));
    const keep = await assessed(db, growOutId);
    expect(keep.neighbours.map(({ verdict, reasons, bearing }) => [verdict, ...reasons, bearing])).toEqual([
      ["too-close", "within-inner", "time-unknown", "NE"],
    ]);
    expect(keep.grade.grade).toBe("open");
    expect(keep.nearest?.neighbour.distanceMetres).toBe(60);
    const home = await assessed(db, growOutId, "home");
    expect([home.neighbours[0]?.verdict, home.grade.grade]).toEqual(["marginal", "partly"]);
    const ours = await cropId(db, "maize-field");
    for (const [field, value] of [
      ["isolationStewardMinM", "20"],
      ["isolationStewardMaxM", "50"],
    ] as const)
      granted(await setOwnValue(db, owner, { cropId: ours, field, value, reason: "wood all round", source: "" }));
    expect((await assessed(db, growOutId)).grade.grade).toBe("isolated");
    // a share stands beside it, for maize has a kernel: 36 m² at 60 m and our 400 m²
    expect(keep.share.ok && keep.share.value.risk.foreignShare).toBeGreaterThan(0);
  });

  it("melon beside cucumber does not cross, a crop of one's own is not assessed, the same variety is no foreign pollen", async () => {
    const db = await fresh();
    const { growOutId, varietyId } = await aGrowOut(db, "cucumber");
    const melon = await cropId(db, "melon");
    granted(await recordNeighbour(db, owner, growOutId, neighbour("melon", { crop: melon, distanceMetres: 2 })));
    granted(await recordNeighbour(db, owner, growOutId, neighbour("ours", { variety: varietyId, distanceMetres: 5 })));
    granted(await recordNeighbour(db, owner, growOutId, neighbour("some gourd", { distanceMetres: 900 })));
    granted(await recordLook(db, owner, growOutId, { on: day("2026-06-12"), noneFound: false }, today));
    const { neighbours, grade, share } = await assessed(db, growOutId);
    expect(neighbours.map((each) => each.verdict)).toEqual(["does-not-cross", "same-variety", "not-assessed"]);
    expect(grade.grade).toBe("unknown");
    expect(share.ok ? "a share" : share.refusals[0]?.code).toBe("not-assessed");
  });

  it("flowering seen on both sides parts them in time, told flowering does not, and what was seen comes before what was told", async () => {
    const db = await fresh();
    const { growOutId } = await aGrowOut(db);
    const crop = await cropId(db, "maize-pop");
    const told = { windowFirst: day("2026-08-02"), windowLast: day("2026-08-20") };
    const { neighbourId } = granted(
      await recordNeighbour(db, owner, growOutId, neighbour("popcorn", { crop, distanceMetres: 30, ...told })),
    ).value;
    for (const [organ, moment, on] of [
      ["silk", "first", "2026-07-20"],
      ["silk", "last", "2026-07-29"],
      ["pollen", "first", "2026-07-17"],
    ] as const) {
      const date = day(on);
      await db.write.floweringNote.create({
        data: { id: `${organ}${moment}`, growOutId, organ, moment, on, onFirst: date.first, onLast: date.last },
      });
    }
    const before = await assessed(db, growOutId);
    expect(before.receptive).toEqual({ least: 10, most: 10 });
    expect(before.neighbours[0]).toMatchObject({ verdict: "too-close", overlap: { least: 0, most: 0 } });
    expect(before.neighbours[0]?.reasons).toContain("apart-as-told");
    const saw = (moment: "first" | "half" | "last", on: string, correct = false) =>
      recordNeighbourFlowering(
        db,
        owner,
        neighbourId,
        { organ: "pollen", moment, on: day(on), note: null },
        today,
        correct,
      );
    granted(await saw("first", "2026-08-01"));
    // the end is as it was told until somebody sees it
    expect((await assessed(db, growOutId)).neighbours[0]).toMatchObject({
      verdict: "ok",
      window: { by: "told", from: { first: "2026-08-01" }, to: { last: "2026-08-20" } },
    });
    granted(await saw("last", "2026-08-11"));
    const apart = await assessed(db, growOutId);
    expect(apart.neighbours[0]).toMatchObject({
      verdict: "ok",
      overlap: { least: 0, most: 0 },
      window: { by: "noted" },
    });
    expect(apart.neighbours[0]?.reasons[0]).toBe("apart-in-time");
    expect(faults(await saw("first", "2026-07-29"))).toEqual(["noted-already on"]);
    expect(faults(await saw("half", "2026-08-12"))).toEqual(["out-of-order on"]);
    expect(faults(await saw("half", "2026-12-12"))).toContain("not-yet on");
    granted(await saw("first", "2026-07-29", true));
    expect((await assessed(db, growOutId)).neighbours[0]?.overlap).toEqual({ least: 1, most: 1 });
    expect(await db.read.floweringNote.count({ where: { neighbourId } })).toBe(3);
  });

  it("a neighbour is put right and taken out with its notes, and History brings both back", async () => {
    const db = await fresh();
    const { growOutId, plotId } = await aGrowOut(db);
    const crop = await cropId(db, "maize-sweet");
    const { neighbourId } = granted(await recordNeighbour(db, owner, growOutId, neighbour("sweet"))).value;
    const right = neighbour("sweet maize", { crop, plot: plotId, distanceMetres: 12.5, howSure: "told", plants: 40 });
    granted(await correctNeighbour(db, owner, neighbourId, right));
    expect((await assessed(db, growOutId)).read.neighbours[0]).toMatchObject({
      what: "sweet maize",
      cropKey: "maize-sweet",
      plot: "Ash strip",
      distanceMetres: 12.5,
      plants: 40,
      howSure: "told",
    });
    const note = { organ: "flower" as const, moment: "first" as const, on: day("2026-07-02"), note: null };
    granted(await recordNeighbourFlowering(db, owner, neighbourId, note, today));
    const { changeSetId } = granted(await removeNeighbour(db, owner, neighbourId, "mown in May"));
    expect((await assessed(db, growOutId)).neighbours).toEqual([]);
    granted(await undoChangeSet(db, owner, changeSetId as string));
    const again = await assessed(db, growOutId);
    expect(again.neighbours.map((each) => each.window?.from)).toEqual([{ first: "2026-07-02", last: "2026-07-02" }]);
    expect(faults(await removeNeighbour(db, owner, "none"))).toEqual(["unknown neighbour"]);
  });

  it("what cannot be is refused at its field", async () => {
    const db = await fresh();
    const { growOutId } = await aGrowOut(db);
    const bean = await aVariety(db, "Hamble Long", "bean-broad");
    const try_ = (more: Parameters<typeof neighbour>[1]) =>
      recordNeighbour(db, owner, growOutId, neighbour("something", more));
    expect(faults(await try_({ crop: await cropId(db, "maize-pop"), variety: bean }))).toEqual(["other-crop variety"]);
    expect(faults(await try_({ crop: "none", variety: "none", plot: "none" }))).toEqual([
      "unknown crop",
      "unknown variety",
      "unknown plot",
    ]);
    const turned = { windowFirst: day("2026-08"), windowLast: day("2026-07-31") };
    expect(faults(await try_(turned))).toEqual(["ends-before windowLast"]);
    granted(await try_({ variety: bean }));
    expect((await assessed(db, growOutId)).read.neighbours[0]?.cropKey).toBe("bean-broad");
    expect(faults(await recordLook(db, owner, growOutId, { on: day("2026-06"), noneFound: true }, today))).toEqual([
      "some-on-record noneFound",
    ]);
  });

  it("methods are written, put right and taken out; hand pollination that was seen makes the seed controlled", async () => {
    const db = await fresh();
    const { growOutId } = await aGrowOut(db, "squash-pepo");
    const method = { method: "hand pollination" as const, fromOn: day("2026-07-10"), toOn: null, note: null };
    granted(await recordIsolationMethod(db, owner, growOutId, { ...method, evidence: "assumed" }));
    const assumed = await assessed(db, growOutId);
    expect(assumed.grade.grade).toBe("unknown");
    const [row] = assumed.read.methods;
    granted(await correctIsolationMethod(db, owner, row?.id ?? "", { ...method, evidence: "seen" }));
    expect((await assessed(db, growOutId)).grade.grade).toBe("controlled");
    const turned = { ...method, evidence: null, toOn: day("2026-07-01") };
    expect(faults(await correctIsolationMethod(db, owner, row?.id ?? "", turned))).toEqual(["ends-before toOn"]);
    granted(await removeIsolationMethod(db, owner, row?.id ?? ""));
    expect((await assessed(db, growOutId)).read.methods).toEqual([]);
    expect(faults(await removeIsolationMethod(db, owner, row?.id ?? ""))).toEqual(["unknown method"]);
  });

  it("a person's claim is stored with the lots that were ticked, and with no other", async () => {
    const db = await fresh();
    const { growOutId, varietyId } = await aGrowOut(db);
    const [one, other] = [
      await aLot(db, varietyId, { number: "S 1", kind: "harvest", growOutId }),
      await aLot(db, varietyId, { number: "S 2", kind: "harvest", growOutId }),
    ];
    const elsewhere = await aLot(db, varietyId, { number: "S 0" });
    const claim = { grade: "partly" as const, reasons: "looked; the nearest that crosses stood 300 m off" };
    expect(granted(await claimIsolation(db, owner, growOutId, { ...claim, lotIds: [one] })).value.lots).toBe(1);
    expect((await assessed(db, growOutId)).read.lots).toEqual([
      { id: one, number: "S 1", isolationGrade: "partly", isolationReasons: claim.reasons },
      { id: other, number: "S 2", isolationGrade: null, isolationReasons: null },
    ]);
    expect(faults(await claimIsolation(db, owner, growOutId, { ...claim, lotIds: [] }))).toEqual(["no-lot lots"]);
    expect(faults(await claimIsolation(db, owner, growOutId, { ...claim, lotIds: [other, elsewhere] }))).toEqual([
      "not-its-lot lots",
    ]);
    expect((await assessed(db, growOutId)).read.lots[1]?.isolationGrade).toBeNull();
  });
});

describe("who may", () => {
  it("a reader writes none of it", async () => {
    const { emptyRegistry } = await import("@/tests/setup/registry");
    const db = await emptyRegistry();
    const { growOutId } = await aGrowOut(db);
    const reader = { ...owner, role: "reader" as const };
    const outcome = await recordNeighbour(db, reader, growOutId, neighbour("carrot"));
    expect(outcome.ok ? "" : outcome.refusals[0]?.code).toBe("not-allowed");
  });
});
