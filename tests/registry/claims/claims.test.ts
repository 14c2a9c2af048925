import { uuidv7 } from "uuidv7";
import { beforeEach, expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { correctClaim } from "@/lib/registry/claims/correct-claim";
import { judgeClaim } from "@/lib/registry/claims/judge-claim";
import { readClaims } from "@/lib/registry/claims/read-claims";
import { tellClaim } from "@/lib/registry/claims/tell-claim";
import { figuresOfAll } from "@/lib/registry/figures/read-figures";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { claimSchema, correctClaimSchema, JudgeClaimSchema } from "@/lib/schemas/lots/lineage-claims";
import type { Outcome } from "@/lib/science/outcome";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aLot, aVariety } from "../lots/lots-in-tests";

const owner = ownerHere();
const today = "2026-11-27";
const faultsOf = (outcome: Outcome<unknown>) =>
  outcome.ok ? [] : outcome.refusals.map((each) => `${each.code} at ${each.path.join(".")}`);
const usual = { kind: "descends from", words: "from the mill’s own sack" };

onEveryEngine("what is told of where a lot is from", (fresh) => {
  let db: Database;
  let varietyId: string;
  let old: string;
  let jar: string;
  const told = (more: Record<string, string> = {}) => granted(parseForm(claimSchema("north"), { ...usual, ...more }));
  const tell = (lotId: string, more: Record<string, string> = {}) => tellClaim(db, owner, lotId, told(more), today);
  const judge = (claimId: string, standing: string, reason?: string) =>
    judgeClaim(db, owner, claimId, granted(parseForm(JudgeClaimSchema, { standing, reason })));
  const correct = (claimId: string, more: Record<string, string>) =>
    correctClaim(db, owner, claimId, granted(parseForm(correctClaimSchema("north"), { ...usual, ...more })), today);

  beforeEach(async () => {
    db = await fresh();
    varietyId = await aVariety(db);
    old = await aLot(db, varietyId, { number: "Ham 1", year: "1978" });
    jar = await aLot(db, varietyId, { number: "Ham 9", year: "2020" });
  });

  test("stands open beside its rival, with its teller and its story, and no figure counts it", async () => {
    const before = (await figuresOfAll(db)).get(jar);
    const whole = { parent: "ham 1", generationsFirst: "2", generationsLast: "4", teller: "Ana Quernby" };
    granted(await tell(jar, { ...whole, toldOn: "1999", howSure: "told by another", story: "It hung by the stove." }));
    granted(await tell(jar, { kind: "unknown before", words: "nobody knows" }));
    const claims = await readClaims(db, jar);
    expect(claims.map((each) => [each.kind, each.parent, each.standing, each.generationsLast, each.story])).toEqual([
      ["descends from", "Ham 1", "open", 4, "It hung by the stove."],
      ["unknown before", null, "open", null, null],
    ]);
    expect(await readClaims(db, old)).toMatchObject([{ of: "another", lot: "Ham 9", parentLotId: old }]);
    expect((await figuresOfAll(db)).get(jar)).toEqual(before);
  });

  test("put right it points to what was said before, which stays to be read, and its standing goes on", async () => {
    const { claimId } = granted(
      await tell(jar, { parent: "Ham 1", generationsFirst: "2", story: "by the stove" }),
    ).value;
    granted(await judge(claimId, "believed", "the same grey eye"));
    const again = { parent: "Ham 1", generationsFirst: "3", story: "by the stove", why: "she counted again" };
    const { claimId: later } = granted(await correct(claimId, again)).value;
    const [claim, ...rest] = await readClaims(db, jar);
    expect(rest).toEqual([]);
    expect([claim?.id, claim?.generationsFirst, claim?.standing, claim?.standingReason]).toEqual([
      ...[later, 3, "believed", "the same grey eye"],
    ]);
    expect(claim?.before.map((each) => [each.id, each.generationsFirst, each.generationsLast])).toEqual([
      [claimId, 2, 2],
    ]);
    expect(await db.read.story.count()).toBe(1);
    expect(faultsOf(await correct(claimId, again))).toEqual(["corrected-already at claim"]);
  });

  test("is judged with a reason, and judged anew; taking it back brings back how it stood", async () => {
    const { claimId } = granted(await tell(jar, { parent: "Ham 1" })).value;
    expect(faultsOf(await judge(claimId, "set aside"))).toEqual(["missing at reason"]);
    expect(faultsOf(await judge(claimId, "open"))).toEqual(["as-it-is at standing"]);
    const aside = granted(await judge(claimId, "set aside", "another grain"));
    expect((await readClaims(db, jar))[0]).toMatchObject({ standing: "set aside", standingReason: "another grain" });
    granted(await undoChangeSet(db, owner, aside.changeSetId ?? ""));
    expect((await readClaims(db, jar))[0]).toMatchObject({ standing: "open", standingReason: null });
  });

  test("by which a lot would be its own ancestor is refused with the names on the way", async () => {
    granted(await tell(jar, { parent: "Ham 1" }));
    const outcome = await tell(old, { parent: "Ham 9" });
    expect(faultsOf(outcome)).toEqual(["cycle at parent"]);
    expect(outcome.ok ? "" : outcome.refusals[0]?.sentence).toContain("Ham 9 from Ham 1");
    expect(faultsOf(await tell(old, { kind: "same as", parent: "Ham 9" }))).toEqual(["cycle at parent"]);
  });

  test("a way on record counts, too, and a claim that is set aside does not until it is taken up again", async () => {
    const part = await aLot(db, varietyId, { number: "Ham 9 b", kind: "split" });
    await db.write.lotParent.create({ data: { id: uuidv7(), lotId: part, parentLotId: jar, share: 1 } });
    expect(faultsOf(await tell(jar, { parent: "Ham 9 b" }))).toEqual(["cycle at parent"]);
    const { claimId } = granted(await tell(jar, { parent: "Ham 1" })).value;
    granted(await judge(claimId, "set aside", "no"));
    granted(await tell(old, { parent: "Ham 9 b" }));
    expect(faultsOf(await judge(claimId, "believed", "yes after all"))).toEqual(["cycle at standing"]);
  });

  test("is refused for what cannot be said", async () => {
    const pea = await aVariety(db, "Mere Pea", "pea");
    await aLot(db, pea, { number: "Pea 1" });
    const harvest = await aLot(db, varietyId, { number: "Ham 2", kind: "split" });
    expect(faultsOf(await tell(jar, { parent: "Ham 77" }))).toEqual(["unknown-lot at parent"]);
    expect(faultsOf(await tell(jar, { parent: "Ham 9" }))).toEqual(["of-itself at parent"]);
    expect(faultsOf(await tell(jar, { parent: "Pea 1" }))).toEqual(["other-crop at parent"]);
    expect(faultsOf(await tell(jar, { kind: "same as" }))).toEqual(["missing at parent"]);
    expect(faultsOf(await tell(harvest, { kind: "unknown before" }))).toEqual(["parents-on-record at kind"]);
    expect(faultsOf(await tell(jar, { kind: "unknown before", parent: "Ham 1" }))).toEqual([
      "no-parent-wanted at parent",
    ]);
    expect(faultsOf(await tell(jar, { generationsFirst: "4", generationsLast: "2" }))).toEqual([
      "range-crossed at generationsLast",
    ]);
    expect(faultsOf(await tell(jar, { toldOn: "2030" }))).toEqual(["in-the-future at toldOn"]);
    expect(faultsOf(await tell("nobody"))).toEqual(["unknown at lot"]);
    expect(faultsOf(parseForm(claimSchema("north"), { kind: "hearsay" }))).toEqual([
      "not-one-of at kind",
      "missing at words",
    ]);
  });
});
