// npm test: types, lint and format, then every test (import table, units, both databases), then the browser tests on a fresh build.
// Each step says how long it took; the first one that fails stops the run with a sentence that says what to do.
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { build, prepare, quietly, stop } from "./steps.mjs";

const began = Date.now();
const reports = mkdtempSync(path.join(os.tmpdir(), "kinrow-reports-"));
let passed = 0;

async function step(title, args, whatToDo, env = {}) {
  const run = await quietly(title, process.execPath, args, {
    env: { ...process.env, NEXT_TELEMETRY_DISABLED: "1", ...env },
  });
  if (run.ok) return;
  console.error(run.output.trim().split("\n").slice(-120).join("\n"));
  console.log(`\n${passed} passed, 1 failed`);
  stop(whatToDo);
}

/** Runs test files and adds what passed; a run that executed no test has failed. */
async function tests(title, args, whatToDo, env = {}) {
  const report = path.join(reports, `${title.replace(/\W+/g, "-")}.json`);
  const all = [
    "node_modules/vitest/vitest.mjs",
    "run",
    ...args,
    "--reporter=default",
    "--reporter=json",
    `--outputFile.json=${report}`,
  ];
  await step(title, all, whatToDo, env);
  const counted = JSON.parse(readFileSync(report, "utf8"));
  if (counted.numPassedTests === 0) stop(`${title}: no test was run; look at the test files' names.`);
  passed += counted.numPassedTests;
}

await prepare();
await step(
  "Route types",
  ["node_modules/next/dist/bin/next", "typegen"],
  "Next's own types could not be made: mend the file named above.",
);
await step(
  "Types",
  ["node_modules/typescript/bin/tsc", "--noEmit"],
  "Mend the types named above (npm run types shows them again).",
);
await step(
  "Lint and format",
  ["node_modules/@biomejs/biome/bin/biome", "check", "."],
  "Run npm run format, then mend what is left.",
);
await tests(
  "Tests: architecture, science, registry on both databases",
  [],
  "Mend what the failing tests name (npx vitest run FILE runs one alone).",
);
await build();
await tests(
  "Tests in a browser",
  ["--config", "vitest.browser.config.ts"],
  "Mend what the failing browser tests name.",
);
rmSync(reports, { recursive: true, force: true });
console.log(`\nAll of it in ${Math.round((Date.now() - began) / 1000)} s.`);
console.log(`${passed} passed, 0 failed`);
