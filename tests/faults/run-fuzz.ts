// npm run fuzz [-- COUNT [SEED]]: so many mangled folders and posted forms (20,000), three of ten of them folders, one of twenty a form about who may come
// in; and a spoilt backup to every two hundred. They are tried in portions of 2,000, each from a seed of its own (SEED, SEED + 1, ...), so that one can be tried again alone. Exit 1 where anything
// broke, was taken in wrongly or was refused and wrote all the same. At the end stands how often each kind of form was taken. KINROW_FUZZ_ONLY=N tries the folder N of the seed alone.
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
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
        KINROW_FUZZ_KINDS: path.join(folder, "kinds.jsonl"),
      },
    });
    if (run.status !== 0) failed.push(own);
  }
  const never = tellKinds(path.join(folder, "kinds.jsonl"));
  rmSync(folder, { recursive: true, force: true });
  console.log(
    JSON.stringify({ count, seed, portions: Math.ceil(count / portion), neverAccepted: never, failedSeeds: failed }),
  );
  process.exitCode = failed.length > 0 ? 1 : 0;
}

type Tried = Readonly<Record<"accepted" | "refused", number>>;

/** Writes how often each kind of form was taken and refused in all portions, the rarest first; gives those that were never taken. */
function tellKinds(file: string): string[] {
  const lines = existsSync(file) ? readFileSync(file, "utf8").trim().split("\n") : [];
  const kinds = new Map<string, Tried>();
  for (const line of lines)
    for (const [kind, { accepted, refused }] of Object.entries(JSON.parse(line) as Record<string, Tried>)) {
      const before = kinds.get(kind) ?? { accepted: 0, refused: 0 };
      kinds.set(kind, { accepted: before.accepted + accepted, refused: before.refused + refused });
    }
  const rarest = [...kinds].sort(([, left], [, right]) => left.accepted - right.accepted);
  console.log("accepted refused form");
  for (const [kind, { accepted, refused }] of rarest)
    console.log(`${String(accepted).padStart(8)} ${String(refused).padStart(7)} ${kind}`);
  return rarest.flatMap(([kind, { accepted }]) => (accepted === 0 ? [kind] : []));
}
