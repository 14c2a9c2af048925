import { beforeEach, describe, expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { decideLot } from "@/lib/registry/lots/decide-lot";
import { moveLot } from "@/lib/registry/lots/move-lot";
import { moveFaults, movesOf } from "@/lib/registry/lots/status-moves";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { decideSchema, moveLotSchema } from "@/lib/schemas/lots/lot-moves";
import type { Outcome } from "@/lib/science/outcome";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aLot, anEntry, aTest, aVariety } from "./lots-in-tests";

const owner = ownerHere();
const today = "2026-11-24";
const faultsOf = (outcome: Outcome<unknown>) =>
  outcome.ok ? [] : outcome.refusals.map((each) => `${each.code} at ${each.path.join(".")}`);

describe("the life of a lot", () => {
  const lot = { status: "quarantine", lastTest: null, grams: 40 };

  test("goes on from quarantine; finished wants an empty jar, dead a test in which nothing came up", () => {
    expect(movesOf(lot)).toEqual([
      ...["usable", "share freely", "circle only", "closed", "hold", "not for seed", "discarded"],
    ]);
    expect(movesOf({ ...lot, grams: 0.4 })).toContain("finished");
    expect(movesOf({ ...lot, grams: null })).toContain("finished");
    expect(movesOf({ ...lot, lastTest: { sown: 50, normal: 0 } })).toContain("dead");
    expect(movesOf({ ...lot, lastTest: { sown: 50, normal: 1 } })).not.toContain("dead");
  });

  test("never goes on from discarded", () => {
    expect(movesOf({ ...lot, status: "discarded" })).toEqual([]);
    expect(moveFaults({ ...lot, status: "discarded" }, "hold", "found again").map((each) => each.code)).toEqual([
      "discarded-for-good",
    ]);
  });
});

onEveryEngine("a lot that goes on in its life", (fresh) => {
  let db: Database;
  let varietyId: string;
  let lotId: string;

  beforeEach(async () => {
    db = await fresh();
    varietyId = await aVariety(db);
    lotId = await aLot(db, varietyId, { number: "Ham 3", status: "quarantine", statusReason: "came back" });
    await anEntry(db, lotId, "received", 40, "2024-10-01");
  });

  const move = (typed: Readonly<Record<string, string>>) => {
    const input = granted(parseForm(moveLotSchema("north"), { on: "2026-11-20", reason: "Oda looked", ...typed }));
    return moveLot(db, owner, lotId, input, today);
  };
  const decide = (typed: Readonly<Record<string, string | string[]>>) => {
    const start = { on: "2026-11-20", how: "stood beside ours, 30 plants", grownUnrecorded: "yes" };
    return decideLot(db, owner, lotId, granted(parseForm(decideSchema("north"), { ...start, ...typed })), today);
  };
  const lot = () => db.read.lot.findUniqueOrThrow({ where: { id: lotId }, include: { observations: true } });

  test("has day, person and reason with it, and is taken back as an entry", async () => {
    const done = granted(await move({ status: "hold" }));
    expect(await lot()).toMatchObject({
      ...{ status: "hold", statusReason: "Oda looked" },
      observations: [{ on: "2026-11-20", words: "From quarantine to hold: Oda looked" }],
    });
    granted(await undoChangeSet(db, owner, done.changeSetId ?? ""));
    expect(await lot()).toMatchObject({ status: "quarantine", statusReason: "came back", observations: [] });
  });

  test("is refused as it is, in the future, as finished with seed left, as dead untested, and out of discarded", async () => {
    expect(faultsOf(await move({ status: "quarantine" }))).toEqual(["as-it-is at status"]);
    expect(faultsOf(await move({ status: "usable", on: "2027" }))).toEqual(["in-the-future at on"]);
    expect(faultsOf(await move({ status: "finished" }))).toEqual(["not-empty at status"]);
    expect(faultsOf(await move({ status: "dead" }))).toEqual(["dead-untested at status"]);
    await aTest(db, lotId, "T1", "2026-02", 50, 3);
    expect(faultsOf(await move({ status: "dead" }))).toEqual(["dead-came-up at status"]);
    await aTest(db, lotId, "T2", "2026-03", 50, 0);
    granted(await move({ status: "dead" }));
    granted(await move({ status: "discarded" }));
    expect(faultsOf(await move({ status: "usable" }))).toEqual(["discarded-for-good at status"]);
  });

  test("found the same may blend: it is usable, its name is sure, and what was asked is answered", async () => {
    const asked = { id: "q1", kind: "name", sentence: "is it ours?", lotId, raisedAt: "2026-01-01" };
    await db.write.question.create({ data: asked });
    await db.write.question.create({ data: { ...asked, id: "q2", sentence: "how much is it?" } });
    granted(await decide({ found: "same", status: "share freely", answers: ["q1"] }));
    expect(await lot()).toMatchObject({
      ...{ status: "share freely", identityGrade: "grown true and seen by the steward", strainId: null },
      statusReason: "compared on 2026-11-20: the same. stood beside ours, 30 plants",
    });
    const questions = await db.read.question.findMany({ orderBy: { id: "asc" } });
    expect(questions.map((each) => each.answer)).toEqual(["stood beside ours, 30 plants", null]);
  });

  test("of a strain of its own is kept under that strain", async () => {
    expect(faultsOf(await decide({ found: "own strain" }))).toEqual(["missing at strain"]);
    granted(await decide({ found: "own strain", strain: "Hill keeping", difference: "a week earlier" }));
    const strain = await db.read.strain.findFirstOrThrow();
    expect([strain.name, strain.difference, (await lot()).strainId]).toEqual([
      "Hill keeping",
      "a week earlier",
      strain.id,
    ]);
    expect((await lot()).status).toBe("usable");
  });

  test("found different is on hold, and under which name it is kept is asked", async () => {
    granted(await decide({ found: "different" }));
    expect((await lot()).status).toBe("hold");
    expect((await db.read.question.findFirstOrThrow()).sentence).toContain("found different: under which name");
  });

  test("found spoiled is discarded with what was left of it, without growing it; the mistaken record comes back", async () => {
    const done = granted(await decide({ found: "spoiled", grownUnrecorded: "", how: "weevils in every seed" }));
    expect((await lot()).status).toBe("discarded");
    const out = await db.read.ledgerEntry.findFirstOrThrow({ where: { lotId, kind: "discarded" } });
    expect([out.amount, out.unit, out.notes]).toEqual([40, "g", "weevils in every seed"]);
    granted(await undoChangeSet(db, owner, done.changeSetId ?? ""));
    expect(await db.read.ledgerEntry.count({ where: { lotId } })).toBe(1);
  });

  test("is not decided about before it was grown, outside of quarantine, in the future, or with a question of another lot", async () => {
    expect(faultsOf(await decide({ found: "same", grownUnrecorded: "" }))).toEqual(["not-grown at found"]);
    expect(faultsOf(await decide({ found: "same", on: "2027" }))).toEqual(["in-the-future at on"]);
    expect(faultsOf(await decide({ found: "same", answers: ["q9"] }))).toEqual(["unknown at answers"]);
    const growOut = {
      id: "g",
      name: "K1",
      nameKey: "k1",
      varietyId,
      parents: { create: { id: "p", lotId, share: 1 } },
    };
    await db.write.growOut.create({ data: growOut });
    granted(await decide({ found: "same", grownUnrecorded: "" }));
    expect(faultsOf(await decide({ found: "same" }))).toEqual(["not-in-quarantine at found"]);
  });
});
