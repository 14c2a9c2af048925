// Copies an SQLite file while others read and write it:  node lib/db/copy-program.mjs SOURCE TARGET
// A program of its own on purpose. Two copies of SQLite in one process drop each other's file locks when one of them closes the file; the
// registry's server holds the file through another driver. Node's and the driver's built-ins alone. The last line of its output is JSON:
// {"pages": n} or {"code": "SQLITE_FULL", "message": "..."}.
import sqlite3 from "sqlite3";

const [source, target] = process.argv.slice(2);

/** Calls a function of the driver that ends with a callback. */
function asked(object, name, ...given) {
  return new Promise((resolve, reject) => {
    object[name](...given, (error, answer) => (error ? reject(error) : resolve(answer)));
  });
}

function opened(file, mode) {
  return new Promise((resolve, reject) => {
    const db = new sqlite3.Database(file, mode, (error) => (error ? reject(error) : resolve(db)));
    db.configure("busyTimeout", 10_000);
  });
}

/** All pages in one step, so that the copy is the registry at one moment; writers go on meanwhile. */
async function copied() {
  const db = await opened(source, sqlite3.OPEN_READONLY);
  const copy = await new Promise((resolve, reject) => {
    const made = db.backup(target, (error) => (error ? reject(error) : resolve(made)));
  });
  try {
    while (!copy.completed) {
      if (copy.failed) throw Object.assign(new Error("the copy was broken off"), { code: "SQLITE_IOERR" });
      await asked(copy, "step", -1);
    }
    return copy.pageCount;
  } finally {
    await asked(copy, "finish");
    await asked(db, "close");
  }
}

try {
  const pages = await copied();
  // One file that needs no log beside it.
  const db = await opened(target, sqlite3.OPEN_READWRITE);
  await asked(db, "exec", "PRAGMA journal_mode = DELETE");
  await asked(db, "close");
  console.log(JSON.stringify({ pages }));
} catch (error) {
  console.log(JSON.stringify({ code: error.code ?? "UNKNOWN", message: String(error.message) }));
  process.exitCode = 1;
}
