export { insertRows, placeholders } from "./bulk";
export { checkConstraints, lockWrites, type Reference, references } from "./catalogue";
export { type Client, type Database, type OpenOptions, openDatabase, type Prisma, type Transaction } from "./client";
export {
  dataFolder,
  demonstrationLocation,
  type Engine,
  type Location,
  registryLocation,
  removeDatabase,
} from "./location";
export { MigrationRefused, migrate } from "./migrate";
export { type Narrowing, narrowed } from "./narrowed";
export { joined, rawSql, readRows, readTogether, type Selection, type Sql, sql } from "./read-together";
export { columnNames, tableNames } from "./tables";
