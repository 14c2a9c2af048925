import { Prisma } from "@/prisma/generated/sqlite/client";

/** Every table of the registry. */
export const tableNames = Object.values(Prisma.ModelName);

/** The columns of a table, in the order of the schema. */
export function columnNames(table: Prisma.ModelName): readonly string[] {
  return Object.keys(Prisma[`${table}ScalarFieldEnum`]);
}
