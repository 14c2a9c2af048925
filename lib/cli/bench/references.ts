import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import type { BenchRow } from "./rows";

const root = fileURLToPath(new URL("../../..", import.meta.url));
const vitest = path.join(root, "node_modules/vitest/vitest.mjs");
const makeReferences = path.join(root, "tests/reference/make_references.py");

interface TestsRun {
  readonly testResults: readonly {
    readonly assertionResults: readonly { readonly fullName: string; readonly status: string }[];
  }[];
}

/**
 * So many random inputs of each calculation against the other program of tests/reference, and so many malformed ones, by the very tests that hold
 * 300 of each. The other program needs Python with NumPy, SciPy and mpmath, and takes some minutes for 10,000 of all, so `only` may name a few.
 */
export function benchReferences(count: number, seed: number, only: readonly string[]): BenchRow[] {
  const folder = mkdtempSync(path.join(os.tmpdir(), "kinrow-references-"));
  try {
    const names = only.length > 0 ? ["--only", ...only] : [];
    const made = spawnSync(
      "python3",
      [makeReferences, "--count", String(count), "--seed", String(seed), "--into", folder, "--quick", ...names],
      { encoding: "utf8" },
    );
    if (made.status !== 0) {
      const why = made.error?.message ?? made.stderr.trim().split("\n").at(-1) ?? "";
      return [{ what: "references", measured: why, bound: "Python 3 with NumPy, SciPy and mpmath", within: false }];
    }
    const report = path.join(folder, "report.json");
    spawnSync(
      process.execPath,
      [
        ...[vitest, "run", "tests/science", "tests/schemas/calculations/malformed.test.ts"],
        ...["-t", "agree|is refused by .* with a sentence", "--testTimeout=3600000"],
        ...["--reporter=json", `--outputFile.json=${report}`],
      ],
      { cwd: root, env: { ...process.env, KINROW_REFERENCES: folder, KINROW_MALFORMED: String(count) } },
    );
    const { testResults } = JSON.parse(readFileSync(report, "utf8")) as TestsRun;
    const ran = testResults
      .flatMap((file) => file.assertionResults)
      .filter(({ status }) => status !== "skipped" && status !== "pending");
    const bad = ran.filter(({ status }) => status !== "passed");
    return [
      {
        what: `${count} inputs a calculation, seed ${seed}`,
        measured: `${ran.length - bad.length} of ${ran.length} tests agree`,
        bound: "all, within the contract’s precision",
        within: ran.length > 0 && bad.length === 0,
      },
      ...bad.map(({ fullName }) => ({ what: fullName, measured: "does not agree", bound: "all", within: false })),
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
