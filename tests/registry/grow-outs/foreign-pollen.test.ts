import { beforeEach, expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { recordForeignPollen } from "@/lib/registry/grow-outs/record-foreign-pollen";
import { ForeignPollenSchema } from "@/lib/schemas/grow-outs/foreign-pollen";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { Outcome } from "@/lib/science/outcome";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aGrowOut } from "./a-grow-out";

const owner = ownerHere();
const faultsOf = (outcome: Outcome<unknown>) =>
  outcome.ok ? [] : outcome.refusals.map((each) => `${each.code} at ${each.path.join(".")}`);
const kernels = { finding: "kernels of another colour counted", sampled: "400", found: "6" };

onEveryEngine("foreign pollen in a grow-out", (fresh) => {
  let db: Database;
  let id: string;
  const say = (typed: Record<string, string>) =>
    recordForeignPollen(db, owner, id, granted(parseForm(ForeignPollenSchema, typed)));
  const stands = async () => {
    const { foreignPollen, foreignPollenHow } = await db.read.growOut.findUniqueOrThrow({ where: { id } });
    return [foreignPollen, foreignPollenHow];
  };

  beforeEach(async () => {
    db = await fresh();
    id = await aGrowOut(db);
  });

  test("is worked out of what was counted, and says how it was found", async () => {
    granted(await say({ ...kernels, words: "the yellow ones by the road" }));
    expect(await stands()).toEqual([
      ...[0.015, "kernels of another colour counted: 6 of 400; the yellow ones by the road"],
    ]);
  });

  test("counts for more where only some of that pollen carries the mark", async () => {
    granted(await say({ ...kernels, carrying: "50 %" }));
    expect(await stands()).toEqual([
      ...[0.03, "kernels of another colour counted: 6 of 400, 50 % of that pollen carries the mark"],
    ]);
  });

  test("may be told, none among it; put right with a reason, and taken back to what stood before", async () => {
    granted(await say({ finding: "a guess", percent: "0" }));
    expect(await stands()).toEqual([0, "a guess"]);
    expect(faultsOf(await say(kernels))).toEqual(["reason-missing at why"]);
    const right = granted(await say({ ...kernels, why: "the ears were looked at" }));
    expect(await stands()).toEqual([0.015, "kernels of another colour counted: 6 of 400"]);
    granted(await undoChangeSet(db, owner, right.changeSetId ?? ""));
    expect(await stands()).toEqual([0, "a guess"]);
    expect(faultsOf(await say({ finding: "a guess", percent: "0", why: "x" }))).toEqual(["as-it-is at percent"]);
  });

  test("is refused where it is told twice, not at all, or cannot be", async () => {
    expect(faultsOf(await say({ finding: "a test" }))).toEqual(["missing at percent"]);
    expect(faultsOf(await say({ ...kernels, percent: "2" }))).toEqual(["told-twice at percent"]);
    expect(faultsOf(await say({ ...kernels, found: "" }))).toEqual(["missing at found"]);
    expect(faultsOf(await say({ ...kernels, sampled: "" }))).toEqual(["missing at sampled"]);
    expect(faultsOf(await say({ ...kernels, found: "500" }))).toEqual(["more-found-than-sampled at found"]);
    expect(faultsOf(await say({ ...kernels, found: "300", carrying: "50" }))).toEqual(["more-than-possible at found"]);
    expect(faultsOf(parseForm(ForeignPollenSchema, { percent: "120" }))).toEqual([
      "too-large at percent",
      "missing at finding",
    ]);
    expect(
      faultsOf(await recordForeignPollen(db, owner, "none", granted(parseForm(ForeignPollenSchema, kernels)))),
    ).toEqual(["unknown at growOut"]);
  });
});
