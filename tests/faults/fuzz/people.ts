import type { Database } from "@/lib/db";
import { memberRoles } from "@/lib/schemas/accounts/member-roles";

/** Somebody as the fuzz knows them: what they were told to sign in with, and what their browser keeps. */
export interface Person {
  readonly userId: string;
  passphrase: string;
  /** the cookies of their browser; of a session that may have been ended since */
  cookie: string;
}

/** A way in that the registry told once, as the fuzz heard it. */
export interface Code {
  readonly code: string;
  readonly invitationId: string;
}

interface AccountRow {
  readonly id: string;
  readonly username: string;
  readonly password: string;
  readonly role: string;
  readonly endedAt: string | null;
}

/** Who can come in by what the tables say, asked for by a statement of its own. */
export function accounts(db: Database): Promise<AccountRow[]> {
  return db.read.$queryRawUnsafe<AccountRow[]>(
    `SELECT u."id", u."username", a."password", m."role", m."endedAt" FROM "User" u
     JOIN "Account" a ON a."userId" = u."id" JOIN "Member" m ON m."userId" = u."id" ORDER BY u."id"`,
  );
}

/** What is wrong with the ways in, whatever was sent; empty where nothing is. */
export async function wrongWaysIn(db: Database, secrets: readonly string[]): Promise<string[]> {
  const wrong: string[] = [];
  const rows = await accounts(db);
  if (!rows.some((row) => row.role === "owner" && row.endedAt === null)) wrong.push("no owner is left");
  for (const row of rows) {
    if (!(memberRoles as readonly string[]).includes(row.role)) wrong.push(`somebody is "${row.role}"`);
    if (!/^scrypt:\d+:8:2:[\w-]+:[\w-]+$/.test(row.password)) wrong.push("a passphrase is stored in another way");
  }
  const ended = await db.read.$queryRawUnsafe<unknown[]>(
    `SELECT s."id" FROM "Session" s JOIN "Member" m ON m."userId" = s."userId" WHERE m."endedAt" IS NOT NULL`,
  );
  if (ended.length > 0) wrong.push("a session of somebody is left whose way in was ended");
  const doubled = await db.read.$queryRawUnsafe<unknown[]>(
    `SELECT lower("username") FROM "User" GROUP BY lower("username") HAVING count(*) > 1`,
  );
  if (doubled.length > 0) wrong.push("two people have one name to sign in with");
  wrong.push(...(await toldInTables(db, secrets)));
  return wrong;
}

/** Passphrases and codes that stand in a table as they were typed or told. */
async function toldInTables(db: Database, secrets: readonly string[]): Promise<string[]> {
  const tables = await db.read.$queryRawUnsafe<{ name: string }[]>(
    "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name <> 'Crop' AND name NOT LIKE 'Crossing%' ORDER BY name",
  );
  const wrong: string[] = [];
  for (const { name } of tables) {
    // The crop list stands in the first change sets of the history.
    const where = name === "Change" ? `WHERE "tableName" IN ('Member', 'MemberGrowOut', 'Invitation')` : "";
    const rows = await db.read.$queryRawUnsafe<Record<string, unknown>[]>(`SELECT * FROM "${name}" ${where}`);
    const text = JSON.stringify(rows, (_key, value) => (typeof value === "bigint" ? String(value) : value));
    for (const secret of secrets) if (text.includes(secret)) wrong.push(`a secret stands in ${name}`);
  }
  return wrong;
}
