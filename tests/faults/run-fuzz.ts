// npm run fuzz [-- COUNT [SEED]]: so many mangled folders and posted forms (20,000), three of ten of them folders, one of twenty a form about who may come
// in; and a spoilt backup to every two hundred. They are tried in portions of 2,000, each from a seed of its own (SEED, SEED + 1, ...), so that one can be tried again alone. Exit 1 where anything
// broke, was taken in wrongly or was refused and wrote all the same. KINROW_FUZZ_ONLY=N tries the folder N of the seed alone.
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";

const count = Number(process.argv[2] ?? 20_000);
const seed = Number(process.argv[3] ?? 20_261_127);
const portion = 2000;

if (!Number.isInteger(count) || count < 10 || !Number.isInteger(seed)) {
  console.error("usage: npm run fuzz [-- COUNT [SEED]], with a count of 10 or more");
  process.exitCode = 2;
} else {
  const folder = mkdtempSync(path.join(os.tmpdir(), "kinrow-fuzz-"));
  const failed: number[] = [];
  for (let done = 0; done < count; done += portion) {
    const own = seed + done / portion;
    const run = spawnSync(process.execPath, ["node_modules/vitest/vitest.mjs", "run", "tests/faults/fuzz"], {
      stdio: "inherit",
      env: {
        ...process.env,
        KINROW_FUZZ_CASES: String(Math.max(10, Math.min(portion, count - done))),
        KINROW_FUZZ_SEED: String(own),
        // What the forms ask for is learnt from their refusals; each portion begins with what the earlier ones know.
        KINROW_FUZZ_BOOK: path.join(folder, "learnt.json"),
      },
    });
    if (run.status !== 0) failed.push(own);
  }
  rmSync(folder, { recursive: true, force: true });
  console.log(JSON.stringify({ count, seed, portions: Math.ceil(count / portion), failedSeeds: failed }));
  process.exitCode = failed.length > 0 ? 1 : 0;
}
