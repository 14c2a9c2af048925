import { beforeEach, expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { changeContainer, recordContainer } from "@/lib/registry/containers/record-container";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { containerSchema } from "@/lib/schemas/lots/record-container";
import { checkLabelCode } from "@/lib/science/codes/label-code";
import { emptyRegistry, granted } from "../../setup/registry";
import { aLot, aVariety } from "../lots/lots-in-tests";

const owner = ownerHere();
let db: Database;
let lotId: string;

beforeEach(async () => {
  db = await emptyRegistry();
  lotId = await aLot(db, await aVariety(db), { number: "Ham 3" });
});

const typed = (fields: Record<string, string>) =>
  granted(parseForm(containerSchema("north"), { unit: "g", ...fields }));

test("a container gets a code and its place; the ledger is not touched", async () => {
  const fields = { kind: "jar", place: "Loft shelf", placeKind: "cupboard", amount: "80", sealedOn: "2024-11" };
  const { value } = granted(await recordContainer(db, owner, lotId, typed(fields)));
  expect(checkLabelCode(value.code).ok).toBe(true);
  const container = await db.read.container.findUniqueOrThrow({
    where: { id: value.containerId },
    include: { place: true },
  });
  expect(container).toMatchObject({ kind: "jar", amount: 80, sealedOn: "2024-11", place: { name: "Loft shelf" } });
  expect(await db.read.ledgerEntry.count()).toBe(0);
});

test("a second container in the same place makes no second place", async () => {
  granted(await recordContainer(db, owner, lotId, typed({ place: "Loft shelf" })));
  granted(await recordContainer(db, owner, lotId, typed({ place: "loft  shelf" })));
  expect(await db.read.place.count()).toBe(1);
});

test("a code stands on one container", async () => {
  granted(await recordContainer(db, owner, lotId, typed({ code: "tin 4" })));
  const outcome = await recordContainer(db, owner, lotId, typed({ code: "tin 4" }));
  expect(outcome.ok ? [] : outcome.refusals.map((each) => each.sentence)).toEqual([
    '"tin 4" is written on a container of lot Ham 3; write another, or leave it empty for a new code',
  ]);
});

test("a container that moved keeps its code and its history", async () => {
  const { value } = granted(await recordContainer(db, owner, lotId, typed({ place: "Loft shelf", amount: "80" })));
  granted(await changeContainer(db, owner, value.containerId, typed({ place: "Cellar", amount: "60" })));
  const container = await db.read.container.findUniqueOrThrow({
    where: { id: value.containerId },
    include: { place: true },
  });
  expect([container.code, container.place?.name, container.amount]).toEqual([value.code, "Cellar", 60]);
  expect(await db.read.change.count({ where: { recordId: value.containerId } })).toBe(2);
});

test("packets and ears are counted whole", async () => {
  const outcome = await recordContainer(db, owner, lotId, typed({ unit: "packets", amount: "2.5" }));
  expect(outcome.ok ? [] : outcome.refusals.map((each) => each.path)).toEqual([["amount"]]);
});
