// npm run fuzz [-- COUNT [SEED]]: so many mangled folders and posted forms (20,000), three of ten of them folders. Exit 1 where anything broke, was taken in
// wrongly or was refused and wrote all the same. KINROW_FUZZ_ONLY=N tries the folder N of the seed alone.
import { spawnSync } from "node:child_process";

const count = Number(process.argv[2] ?? 20_000);
const seed = Number(process.argv[3] ?? 20_261_127);

if (!Number.isInteger(count) || count < 10 || !Number.isInteger(seed)) {
  console.error("usage: npm run fuzz [-- COUNT [SEED]], with a count of 10 or more");
  process.exitCode = 2;
} else {
  const run = spawnSync(process.execPath, ["node_modules/vitest/vitest.mjs", "run", "tests/faults/fuzz"], {
    stdio: "inherit",
    env: { ...process.env, KINROW_FUZZ_CASES: String(count), KINROW_FUZZ_SEED: String(seed) },
  });
  process.exitCode = run.status ?? 1;
}
