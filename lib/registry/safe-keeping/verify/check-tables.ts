import { brokenReferences, type Database, failedChecks, fileFaults, missingChecks } from "@/lib/db";
import { type Finding, fault } from "./finding";

/** What the file itself says: pages and indexes, on SQLite. */
export async function checkFile(db: Database): Promise<Finding[]> {
  return (await fileFaults(db)).map((line) =>
    fault("file", `The registry's file is damaged: ${line}. Bring the newest sound backup back.`),
  );
}

/** Every record that points to another points to one that is there. */
export async function checkReferences(db: Database): Promise<Finding[]> {
  return (await brokenReferences(db)).map(({ table, column, to, ids }) =>
    fault(
      "references",
      `${countOf(ids)} of ${table} name by ${column} a ${to} that is not there: ${ids.slice(0, 3).join(", ")}.`,
    ),
  );
}

/** Every value is one that its column may hold, and the database itself refuses any other. */
export async function checkRules(db: Database): Promise<Finding[]> {
  const failed = (await failedChecks(db)).map(({ table, name, ids }) =>
    fault("rules", `${countOf(ids)} of ${table} break the rule ${name}: ${ids.slice(0, 3).join(", ")}.`),
  );
  const missing = (await missingChecks(db)).map((name) =>
    fault("rules", `The database does not hold the rule ${name}.`),
  );
  return [...failed, ...missing];
}

function countOf(ids: readonly string[]): string {
  return ids.length === 1 ? "1 record" : ids.length >= 20 ? "20 records or more" : `${ids.length} records`;
}
