export { insertRows, placeholders } from "./bulk";
export { checkConstraints, lockWrites, type Reference, references } from "./catalogue";
export { type Client, type Database, type OpenOptions, openDatabase, type Prisma, type Transaction } from "./client";
export { FolderHeldByAnother, type FolderHolder, type HeldFolder, holdFolder } from "./folder-lock";
export {
  dataFolder,
  demonstrationLocation,
  type Engine,
  type Location,
  registryLocation,
  removeDatabase,
} from "./location";
export { MigrationRefused, type MigrationState, migrate, migrationState, migrationStateOfFile } from "./migrate";
export { type Narrowing, narrowed } from "./narrowed";
export { copyWhileOpen, isOpenElsewhere, withoutLog } from "./online-copy";
export { type Gathered, joined, rawSql, readRows, readTogether, type Selection, type Sql, sql } from "./read-together";
export { brokenReferences, failedChecks, fileFaults, missingChecks, rowCounts } from "./soundness";
export { StorageFault, type StorageFaultKind, storageFaultOf } from "./storage-fault";
export { columnNames, tableNames } from "./tables";
