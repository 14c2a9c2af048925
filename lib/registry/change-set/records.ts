import type { Prisma } from "@/lib/db";

/** What the sign-in library keeps: hashes, tokens, devices. None of it goes through a change set. */
type Secret = "User" | "Session" | "Account" | "Verification" | "Passkey" | "RateLimit";

/** The tables that a change set may write: all but the change sets themselves and what is secret. */
export type TableName = Exclude<Prisma.ModelName, "ChangeSet" | "Change" | Secret>;

/** A stored row of a table. */
export type RowOf<T extends TableName> = Prisma.TypeMap["model"][T]["payload"]["scalars"];

type Inserted<T extends TableName> = Prisma.TypeMap["model"][T]["operations"]["createMany"]["args"]["data"];
/** A row to be stored; what the table gives by default may be left out. */
export type NewRowOf<T extends TableName> =
  Inserted<T> extends infer D ? (D extends readonly (infer R)[] ? R : D) : never;

export type PatchOf<T extends TableName> = Partial<Omit<RowOf<T>, "id">>;

/** The part of a model's delegate that works alike for every table. */
interface Delegate {
  findMany(args: { where: { id: { in: string[] } } }): Promise<({ id: string } & Record<string, unknown>)[]>;
  update(args: { where: { id: string }; data: Record<string, unknown> }): Promise<unknown>;
  deleteMany(args: { where: { id: { in: string[] } } }): Promise<unknown>;
}

/** The delegate of a table by its name. */
export function delegateOf(tx: Prisma.TransactionClient, table: TableName): Delegate {
  const name = (table.charAt(0).toLowerCase() + table.slice(1)) as keyof Prisma.TransactionClient;
  return tx[name] as unknown as Delegate;
}
