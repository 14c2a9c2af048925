import { describe, expect, it } from "vitest";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { ownTableValues } from "@/lib/registry/tables/own-table-values";
import { removeTableValue } from "@/lib/registry/tables/remove-table-value";
import { setTableValue } from "@/lib/registry/tables/set-table-value";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { owner } from "../varieties/with-variety";

async function tables() {
  const db = await emptyRegistry();
  const set = (table: string, row: string, field: string, value: string, reason = "measured here") =>
    setTableValue(db, owner, { table, row, field, value, reason, source: "our notes" });
  return { db, set };
}

describe("an own value in a published table", () => {
  it("is kept with its reason, replaced by a second one, and taken back", async () => {
    const { db, set } = await tables();
    granted(await set("oil-content", "Oat", "oilPercentHigh", "9,5"));
    expect(await ownTableValues(db)).toMatchObject([
      {
        table: "oil-content",
        row: "Oat",
        field: "oilPercentHigh",
        value: 9.5,
        reason: "measured here",
        source: "our notes",
      },
    ]);
    granted(await set("oil-content", "Oat", "oilPercentHigh", "10", "a second year"));
    const [own, more] = await ownTableValues(db);
    expect(own).toMatchObject({ value: 10, reason: "a second year" });
    expect(more).toBeUndefined();
    granted(await removeTableValue(db, owner, own?.id ?? ""));
    expect(await ownTableValues(db)).toEqual([]);
    const gone = await removeTableValue(db, owner, own?.id ?? "");
    expect(gone.ok ? "" : gone.refusals[0]?.code).toBe("unknown-own-value");
  });

  it("is undone from the history", async () => {
    const { db, set } = await tables();
    granted(await set("germination-conditions", "Pea", "temperatureC", "20-25"));
    const made = await db.read.changeSet.findFirstOrThrow({
      where: { changes: { some: { tableName: "TableOverride" } } },
    });
    expect(made.title).toBe("Own value for Pea: Warmth");
    granted(await undoChangeSet(db, owner, made.id));
    expect(await ownTableValues(db)).toEqual([]);
  });

  it.each([
    ["without a reason", ["oil-content", "Oat", "oilPercentHigh", "9", ""], "missing"],
    ["of another kind", ["oil-content", "Oat", "oilPercentHigh", "much"], "not-a-number"],
    ["in halves of a day", ["germination-conditions", "Pea", "finalCountDay", "8.5"], "not-a-number"],
    ["out of its range", ["vegetable-minima", "Pea", "minimumPercent", "101"], "out-of-range"],
    ["that makes no kernel", ["pollen-models", "maize-2dt", "b", "1"], "out-of-range"],
    ["with which pollen grows by distance", ["pollen-models", "radish-line", "b", "0.5"], "out-of-range"],
    ["below the other end", ["oil-content", "Oat", "oilPercentHigh", "3"], "range-crossed"],
    ["above the other end", ["germination-conditions", "Pea", "firstCountDay", "9"], "range-crossed"],
    [
      "in other words than are read",
      ["germination-conditions", "Pea", "temperatureC", "on the stove"],
      "not-written-so",
    ],
    ["of no table", ["moon", "Oat", "oilPercentHigh", "9"], "unknown-table"],
    ["of no row", ["oil-content", "Moss", "oilPercentHigh", "9"], "unknown-row"],
    ["of a field that the row has not", ["pollen-models", "maize-2dt", "cap", "0.5"], "unknown-field"],
  ] as const)("is refused %s", async (_what, [table, row, field, value, reason], code) => {
    const { db, set } = await tables();
    const outcome = await set(table, row, field, value, reason);
    expect(outcome.ok ? null : outcome.refusals[0]?.code).toBe(code);
    expect(await ownTableValues(db)).toEqual([]);
  });
});
