import { expect, test } from "vitest";
import { references, tableNames } from "@/lib/db";
import { ownership } from "@/lib/registry/ownership/rules";
import { hanging, notForThePublic, openToReaders, ownersTables } from "@/lib/registry/privacy/hidden-rows";
import { narrowingsOf } from "@/lib/registry/privacy/narrowing";
import { emptyRegistry } from "../../setup/registry";

const noChangeSet = ["ChangeSet", "Change", "User", "Session", "Account", "Verification", "Passkey", "RateLimit"];

test("every table that a change set can write has a rule of who may, along true links", async () => {
  const db = await emptyRegistry();
  expect(Object.keys(ownership).sort()).toEqual(tableNames.filter((table) => !noChangeSet.includes(table)).sort());
  const links = new Set(
    (await references(db.read, db.engine)).map((link) => `${link.table}.${link.column}>${link.to}`),
  );
  for (const [table, { through = {}, hands = [], registry, anybodyAdds, anybodyWrites }] of Object.entries(ownership)) {
    for (const [column, to] of Object.entries(through))
      if (column !== "id") expect(links, `${table}.${column}`).toContain(`${table}.${column}>${to}`);
    for (const column of hands) if (column !== "id") expect(links).toContain(`${table}.${column}>Steward`);
    const open = registry || anybodyAdds || anybodyWrites;
    expect(open || hands.length + Object.keys(through).length > 0, table).toBe(true);
  }
});

test("every table has a rule of who sees it, and every link to a row that can be hidden is followed", async () => {
  const db = await emptyRegistry();
  const { read } = narrowingsOf({ as: "member", stewardId: null, growOutIds: [] });
  const unruled = tableNames.filter((table) => !read.tables.has(table) && !openToReaders.includes(table));
  expect(unruled).toEqual([]);
  expect(openToReaders.filter((table) => read.tables.has(table))).toEqual([]);
  const hideable = new Set(read.sets.flatMap(({ name }) => (name.startsWith("hidden_") ? [name.slice(7)] : [])));
  for (const { table, column, to } of await references(db.read, db.engine)) {
    if (!hideable.has(to) || ownersTables.includes(table as never)) continue;
    const { hide = {}, blank = {} } = hanging[table as keyof typeof hanging] ?? {};
    expect(`${table}.${column}: ${hide[column] ?? blank[column]}`).toBe(`${table}.${column}: ${to}`);
  }
});

test("tables that hold contacts, hands and places are closed to the public whole", () => {
  const { read } = narrowingsOf({ as: "public", stewardId: null, growOutIds: [] });
  for (const table of notForThePublic) expect(read.tables.get(table), table).toContain("NOT (1 = 1)");
});
